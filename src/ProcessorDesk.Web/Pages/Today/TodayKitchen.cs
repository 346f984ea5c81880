using ProcessorDesk.Records;
using ProcessorDesk.Web.Hosting;
using ProcessorDesk.Web.Pages.Kitchen;

namespace ProcessorDesk.Web.Pages.Today;

/// <summary>What lies open in the kitchen: batches with their next step and the rest that runs, and what waits for a batch.</summary>
/// <param name="address">Where a line leads: page, what the page calls its thing, the thing, and the job where the page is closed to the hand.</param>
/// <param name="toBatch">Where a batch is, by its id and number.</param>
internal sealed class TodayKitchen(TodayFacts facts, ShopDay shop, Func<string, string, int, int, string> address, Func<int, int, string> toBatch)
{
    /// <summary>With something to do now; what is held stands among the holds.</summary>
    public TodaySection Batches => OfBatches("batches", "open in the kitchen", "no batch open", next => next is not (NextInKitchen.Held or NextInKitchen.Rest));

    /// <summary>Nothing to do with it but wait, and for how long.</summary>
    public TodaySection Resting => OfBatches("resting", "at rest", "nothing at rest", next => next == NextInKitchen.Rest);

    private TodaySection OfBatches(string id, string title, string noneOf, Func<NextInKitchen, bool> which) => new(id, title, noneOf, "Kitchen",
    [
        .. facts.Batches.Select(batch => (Batch: batch, Next: batch.Progress.NextAt(shop.Now))).Where(one => which(one.Next))
            .Select(one => new TodayLine(
                toBatch(one.Batch.Id, one.Batch.Number),
                $"Batch {one.Batch.Number}, {one.Batch.Product}",
                $"{KitchenWords.Next(one.Batch.Progress, [], shop)}{Left(one.Batch.Progress, one.Next)}. {string.Join(", ", one.Batch.Whose)}, {shop.Print(one.Batch.Green)} green.",
                one.Batch.Pooling == Pooling.Pooled ? "Pooled" : one.Next == NextInKitchen.Rest ? "Resting" : "",
                one.Next == NextInKitchen.Rest ? "good" : ""))
    ]);

    /// <summary>What is held comes first: it waits for somebody to see to it.</summary>
    public TodaySection Waiting => new("waiting", "waiting for a batch", "nothing waiting for a batch", "Kitchen",
    [
        .. facts.Waiting.Select(one => (Waits: one, Held: facts.HoldOn(one.JobId)?.Reason)).OrderByDescending(one => one.Held is not null).Select(one => new TodayLine(
            address("/Grind/Split", "id", one.Waits.JobId, one.Waits.JobId), $"{one.Waits.Product}, {shop.Print(one.Waits.Green)}",
            $"Job {one.Waits.JobNumber}, {one.Waits.Owner}. {Wording.Of(one.Waits.Pooling)}. {(one.Waits.Promised is { } day ? $"Promised {shop.Date(day)}." : "No day promised.")}",
            one.Held is { } reason ? $"On hold: {Wording.Of(reason)}" : one.Waits.NoPork ? "No pork" : "",
            one.Held is null ? "warn" : "hold"))
    ]);

    private string Left(BatchProgress progress, NextInKitchen next)
    {
        if (next != NextInKitchen.Rest)
            return "";
        var left = progress.RestedAt!.Value - shop.Now;
        return left < TimeSpan.FromHours(1)
            ? FormattableString.Invariant($", {Math.Max(1, (int)left.TotalMinutes)} min to go")
            : FormattableString.Invariant($", {(int)left.TotalHours} h {left.Minutes} min to go");
    }
}
