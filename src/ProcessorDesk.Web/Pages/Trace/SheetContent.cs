using System.Globalization;
using ProcessorDesk.Paper;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Safety;

namespace ProcessorDesk.Web.Pages.Trace;

/// <summary>Lays a trace out for its sheet.</summary>
internal static class SheetContent
{
    private static readonly Caution s_agencyFirst = new(
        "Your agency first",
        "This shows what was written down. Before meat is called back, moved or thrown out, ask your agency and follow it; it goes before everything here. Keep what is traced apart and on hold meanwhile.");

    public static TraceSheet Of(TraceView view, string by)
    {
        var (trace, shop) = (view.Trace, view.Shop);
        var isLot = trace.Start.Kind == TracedKind.IngredientLot;
        return new TraceSheet(
            new ShopHeader(shop.Settings.Name, [.. new[] { shop.Settings.Address, shop.Settings.Phone }.OfType<string>()]),
            view.Title,
            PrintedDate.Of(shop.Local(shop.Now)),
            by,
            [.. Holds(view)],
            [
                new Fact("Owners told", $"{trace.ToTell.Count(job => job.IsTold)} of {trace.ToTell.Count}"), new Fact("Batches it is in", Count(trace.In.Count)),
                new Fact("Boxes here", Count(view.Here.Count)), new Fact("Boxes handed over", Count(view.Gone.Count)),
            ],
            [
                .. trace.ToTell.Select(job => new OwnerToTell(
                    job.Owner, Count(job.Number), job.Phone, view.BoxesOf(job),
                    string.Join('\n', job.Calls.Select(call => $"{Wording.Of(call.Outcome)}, {shop.Moment(call.At)}, {call.By}: {call.Words}")), job.IsTold))
            ],
            [.. view.Still],
            [.. trace.BoxesOf.Select(box => new BoxTraced(view.Name(box), box.Ticket?.Print() ?? "", TraceView.What(box), view.Print(box.Net), WhereWithPhone(view, box)))],
            trace.BoxesOf.Count == 0 ? [] : [Sum("Here", view, view.Here), Sum("Handed over", view, view.Gone)],
            [
                .. trace.AnimalsIn.Select(animal => new AnimalTraced(
                    view.Name(animal), string.Join("\n", view.OwnersOf(animal).Select(job => $"{job.Owner}, job {job.Number}")),
                    shop.Date(animal.ArrivedAt) + (animal.Area is { } area ? $", from {area}" : ""),
                    string.Join('\n', animal.Holds.Select(hold => $"On hold: {Wording.Of(hold)}").Prepend(view.Test(animal)))))
            ],
            [
                .. view.Lugs.Select(lug => new LugTraced(
                    view.Name(lug), view.Whose(lug.JobId), view.Tags(lug), view.Print(lug.Lean), string.Join('\n', lug.Draws.Select(view.Went).Append(view.Rest(lug)))))
            ],
            [
                .. trace.LotsIn.Select(lot => new LotTraced(
                    TraceView.Name(lot), view.From(lot),
                    string.Join('\n', isLot ? view.Account(lot).Select(line => $"{line.Label}: {line.Value}") : lot.Uses.Select(use => view.Went(lot, use)))))
            ],
            [.. trace.In.Select(batch => isLot ? LotsBatch(view, batch) : Batch(view, batch))],
            [s_agencyFirst, .. SafetyCautions.For(trace.AnimalsIn.Select(animal => animal.Species)).Select(caution => new Caution(caution.Heading, caution.AtHome, caution.Source))]);
    }

    private static IEnumerable<HoldNotice> Holds(TraceView view) =>
        view.Trace.In.SelectMany(batch => batch.Holds.Select(hold => new HoldNotice($"{view.Name(batch)}: {Wording.Of(hold.Reason)}", hold.Note ?? "Nothing of it leaves.")))
            .Concat(view.Trace.AnimalsIn.SelectMany(animal => animal.Holds.Select(hold => new HoldNotice($"{view.Name(animal)}: {Wording.Of(hold)}", "Nothing of it leaves."))));

    private static BatchTraced Batch(TraceView view, TracedBatch batch)
    {
        var (trace, division) = (view.Trace, view.Division);
        return new BatchTraced(
            view.Name(batch),
            $"{(batch.Pooling == Pooling.Pooled ? "Pooled" : "One owner's meat alone")}. {view.State(batch)}",
            [
                .. trace.DrawsInto(batch).Select(draw => new Fact(
                    $"Lug {view.Lug(draw.LugId).Number}, {view.Whose(view.Lug(draw.LugId).JobId)}{view.Odd(draw)}", draw.Stands ? view.Print(draw.Weighed) : $"({view.Print(draw.Weighed)})")),
                new Fact("Added fat", view.Print(batch.Fat)), new Fact("Everything else weighed in", view.Print(batch.Added)),
            ],
            [.. view.Account(batch).Select(line => new Fact(line.Label, line.Value))],
            batch.ReleasedAt is null
                ? []
                : [
                    .. batch.Places.Select(place => new Fact(view.Whose(place.JobId), view.Print(place.Back ?? Weight.Zero))),
                    new Fact("Together", view.Print(division.Sum(batch.Places.Select(place => place.Back ?? Weight.Zero)))),
                ]);
    }

    /// <summary>Of a batch on a lot's sheet: what of the lot is in it, and whose it is.</summary>
    private static BatchTraced LotsBatch(TraceView view, TracedBatch batch)
    {
        var lot = view.Trace.Lots[0];
        return new BatchTraced(
            view.Name(batch), view.State(batch), [.. lot.Uses.Where(use => use.BatchId == batch.Id).Select(use => new Fact(view.Went(lot, use), ""))], [],
            [.. batch.Places.Select(place => new Fact(view.Whose(place.JobId), place.Back is { } back ? view.Print(back) : "–"))]);
    }

    private static Fact Sum(string where, TraceView view, IReadOnlyList<TracedBox> boxes) =>
        new($"{where}, {(boxes.Count == 1 ? "1 box" : $"{boxes.Count} boxes")}", view.Print(view.Division.Sum(boxes.Select(box => box.Net))));

    private static string WhereWithPhone(TraceView view, TracedBox box) => box.LeftAt is null ? view.Where(box) : $"{view.Where(box)}; {view.Job(box.JobId).Phone}";

    private static string Count(int count) => count.ToString(CultureInfo.InvariantCulture);
}
