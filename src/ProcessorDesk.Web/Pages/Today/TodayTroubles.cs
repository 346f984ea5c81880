using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Today;

/// <summary>What is wrong: holds on animals, jobs and batches, and weights that were struck out today.</summary>
/// <param name="address">Where a line leads: page, what the page calls its thing, the thing, and the job where the page is closed to the hand.</param>
/// <param name="toBatch">Where a batch is, by its id and number.</param>
internal sealed class TodayTroubles(TodayFacts facts, TodayWork work, ShopDay shop, Func<string, string, int, int, string> address, Func<int, int, string> toBatch)
{
    public TodaySection Holds => new("holds", "on hold", "nothing on hold", "",
        [.. facts.Troubles.Where(one => one.Reason is not null).Select(Held).OfType<TodayLine>()]);

    public TodaySection Struck => new("struck", "struck out today", "no weight struck out", "",
        [.. facts.Troubles.Where(one => one.Kind is not null).Select(one => (Struck: one, Job: work.JobOf(one))).Select(one => new TodayLine(
            one.Struck.BatchId is { } batch ? toBatch(batch, one.Struck.BatchNumber!.Value) : one.Job is { } job ? address("/Find/Job", "id", job.Id, job.Id) : "/Today",
            $"{Wording.Of(one.Struck.Kind!.Value)}, {shop.Print(one.Struck.Net)}",
            $"{(one.Struck.BatchNumber is { } number ? $"Batch {number}" : one.Job is { } whose ? TodayWords.Whose(whose) : "A job that left")}: {one.Struck.Words}"))]);

    private TodayLine? Held(TodayFacts.Trouble hold)
    {
        var chip = $"On hold: {Wording.Of(hold.Reason!.Value)}";
        var note = hold.Words is { } words ? $" {words.TrimEnd('.')}." : "";
        if (hold.BatchId is { } batchId)
        {
            var batch = facts.Batches.FirstOrDefault(one => one.Id == batchId);
            var what = batch is null ? $"Batch {hold.BatchNumber}" : $"Batch {batch.Number}, {batch.Product}";
            var strange = facts.Jobs.FirstOrDefault(job => job.Id == hold.StrangeJobId) is { } other ? $" Meat of job {other.Number}, {other.Owner}, is in it." : "";
            return new TodayLine(
                toBatch(batchId, hold.BatchNumber!.Value), what, $"{(batch is null ? "" : string.Join(", ", batch.Whose) + ", ")}since {shop.Moment(hold.At)}.{strange}{note}", chip, "hold");
        }

        return work.JobOf(hold) is { } job
            ? new TodayLine(
                address("/Find/Job", "id", job.Id, job.Id),
                hold.Species is { } species ? TodayWords.Name(species, hold.Tag) : $"Job {job.Number}",
                $"{TodayWords.Whose(job)}, since {shop.Moment(hold.At)}.{note}", chip, "hold")
            : null;
    }
}
