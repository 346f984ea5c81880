using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Trace;

/// <summary>A trace in the words that its page and its sheet share.</summary>
public sealed class TraceView(Records.Trace trace, ShopDay shop)
{
    private readonly Dictionary<int, TracedJob> _jobs = trace.Jobs.ToDictionary(job => job.Id);
    private readonly Dictionary<int, TracedAnimal> _animals = trace.Animals.ToDictionary(animal => animal.Id);
    private readonly Dictionary<int, TracedLug> _lugs = trace.Lugs.ToDictionary(lug => lug.Id);

    public Records.Trace Trace => trace;

    public ShopDay Shop => shop;

    public ScaleDivision Division => shop.Settings.BenchDivision;

    public string Title => trace.Start.Kind switch
    {
        TracedKind.Animal => Name(_animals[trace.Start.Id]),
        TracedKind.Job => Whose(trace.Start.Id),
        TracedKind.Lug => $"{Name(_lugs[trace.Start.Id])}, {Whose(_lugs[trace.Start.Id].JobId)}",
        TracedKind.Batch => Name(trace.In[0]),
        TracedKind.Box => Name(trace.Boxes[0]),
        TracedKind.IngredientLot => Name(trace.Lots[0]),
    };

    /// <summary>Lugs with an account on the page: those it starts from, and those that went into it.</summary>
    public IReadOnlyList<TracedLug> Lugs => [.. trace.OwnLugs.Concat(trace.LugsIn).DistinctBy(lug => lug.Id)];

    public IReadOnlyList<TracedBox> Here => [.. trace.BoxesOf.Where(box => box.IsHere)];

    public IReadOnlyList<TracedBox> Gone => [.. trace.BoxesOf.Where(box => box.LeftAt is not null)];

    /// <summary>Batches whose meat is still in the kitchen.</summary>
    public IReadOnlyList<TracedBatch> InKitchen => trace.Start.Kind == TracedKind.Box ? [] : [.. trace.In.Where(batch => batch is { ReleasedAt: null, EndedAt: null })];

    /// <summary>Lugs it starts from that were not said to be empty and hold something by their figures.</summary>
    public IReadOnlyList<TracedLug> StillFull => [.. trace.OwnLugs.Where(lug => lug.EmptiedAt is null && lug.Rest(Division).IsPositive)];

    /// <summary>What of it is here and in no box, a line each; what a batch is planned for can still be kept out.</summary>
    public IEnumerable<string> Still =>
        InKitchen.Select(batch => $"In the kitchen: {Name(batch)}. {State(batch)}")
            .Concat(StillFull.Select(lug => $"In {Name(lug)}: {Rest(lug)}"))
            .Concat(trace.Planned.Select(batch => $"Planned for {Name(batch)}, not in it yet: it can be kept out"))
            .Concat(Parts.Select(part => $"{Wording.Of(part.Kind)}: {(part.GivenAt is { } given ? $"given to {part.GivenTo}, {shop.Moment(given)}" : "here")}"));

    private IEnumerable<TracedPart> Parts => trace.Start.Kind == TracedKind.Animal ? trace.AnimalsIn.SelectMany(animal => animal.Parts) : [];

    public TracedJob Job(int id) => _jobs[id];

    public TracedLug Lug(int id) => _lugs[id];

    public string Whose(int jobId) => $"Job {_jobs[jobId].Number}, {_jobs[jobId].Owner}";

    public string Name(TracedAnimal animal) => animal.Tag is null ? $"{Wording.Of(animal.Species)}, no tag" : $"{Wording.Of(animal.Species)}, tag {animal.Tag}";

    public string Name(TracedLug lug) => $"Lug {lug.Number}, filled {shop.Date(lug.OpenedAt)}";

    public string Name(TracedBatch batch) => $"Batch {batch.Number}, {batch.Product}";

    public string Name(TracedBox box) => $"Box {box.Number} of {Whose(box.JobId).Replace("Job", "job", StringComparison.Ordinal)}";

    public static string Name(TracedLot lot) => $"{lot.Ingredient}, lot {lot.LotCode}";

    public string Print(Weight weight) => shop.Print(weight);

    /// <summary>The animals of a lug by their tags.</summary>
    public string Tags(TracedLug lug) => string.Join("; ", lug.AnimalIds.Select(id => _animals.TryGetValue(id, out var animal) ? Name(animal) : "an animal of another job"));

    /// <summary>The disease test as it stands, never shown as clear where it is not.</summary>
    public string Test(TracedAnimal animal) =>
        Wording.Of(animal.Test) + (animal.Sample is { } sample ? $", sample {sample}" : "") + (animal.ResultOn is { } on ? $", {shop.Date(on)}" : "");

    public IEnumerable<TracedJob> OwnersOf(TracedAnimal animal) => trace.Jobs.Where(job => job.AnimalIds.Contains(animal.Id));

    public string State(TracedBatch batch) => batch switch
    {
        { EndedAt: { } ended } => $"{(trace.DrawsInto(batch).Any(draw => draw.Stands) ? "Thrown out" : "Taken off the plan")} {shop.Moment(ended)}: {batch.EndedBecause}",
        { ReleasedAt: { } released } => $"Released {shop.Moment(released)}",
        { MixedAt: { } mixed } => $"Mixed {shop.Moment(mixed)}, not released",
        _ => $"Planned {shop.Moment(batch.PlannedAt)}, not all mixed",
    };

    public string Where(TracedBox box) =>
        box.UnpackedAt is { } unpacked ? $"Unpacked {shop.Moment(unpacked)}: {box.UnpackedBecause}"
        : box.LeftAt is { } left ? $"Handed over {shop.Moment(left)} to {box.LeftWith}"
        : $"Here: {box.Place ?? "no place noted"}";

    public static string What(TracedBox box) => string.Join("; ", box.Contents.Select(packs => $"{packs.Name}, {(packs.Count == 1 ? "1 pack" : $"{packs.Count} packs")}"));

    /// <summary>"3 boxes here, 1 gone".</summary>
    public string BoxesOf(TracedJob job)
    {
        var (here, gone) = (Here.Count(box => box.JobId == job.Id), Gone.Count(box => box.JobId == job.Id));
        return (here, gone) switch
        {
            (0, 0) => "No box",
            (_, 0) => $"{here} here",
            (0, _) => $"{gone} handed over",
            _ => $"{gone} handed over, {here} here",
        };
    }

    /// <summary>What of a lug's lean was not drawn, and what that means.</summary>
    public string Rest(TracedLug lug)
    {
        var rest = lug.Rest(Division);
        return rest.IsNegative ? $"{Print(-rest)} more drawn than weighed in"
            : lug.EmptiedAt is null ? $"{Print(rest)} still in it"
            : $"{Print(rest)} thaw, drip and the difference of two scales; empty since {shop.Date(lug.EmptiedAt.Value)}";
    }

    /// <summary>"12.00 lb into batch 3", with what is odd about it.</summary>
    public string Went(TracedDraw draw) => $"{Print(draw.Weighed)} into batch {draw.BatchNumber}, load {draw.LoadNumber}{Odd(draw)}";

    public string Odd(TracedDraw draw) =>
        (draw.EntryId is null ? "; no place in that batch" : "")
        + (draw.AlreadyInBecause is { } because ? $"; was in already: {because}" : "")
        + (draw.StruckAt is { } struck ? $"; struck out {shop.Moment(struck)}: {draw.StruckBecause}" : "");

    /// <summary>Where a lot came from.</summary>
    public string From(TracedLot lot) => string.Join(", ", new[]
    {
        lot.Supplier ?? "supplier not noted", lot.Establishment is { } establishment ? $"establishment {establishment}" : null, $"received {shop.Date(lot.ReceivedOn)}",
        lot.StruckBecause is { } because ? $"struck out: {because}" : null,
    }.OfType<string>());

    /// <summary>Meat and fat as the bench weighs, all else as the small scale does; casings by the piece.</summary>
    public string Amount(TracedLot lot, Weight amount, int pieces) =>
        lot.GoesByPiece ? $"{pieces} pieces"
        : lot.Kind == IngredientKind.Meat ? Print(amount)
        : shop.Settings.CureDivision.Print(amount) + (amount >= Weight.FromPounds(1m) ? $" ({Print(amount)})" : "");

    /// <summary>"200.0 g into batch 3, load 1", with what is odd about it.</summary>
    public string Went(TracedLot lot, TracedUse use) =>
        $"{Amount(lot, use.Amount, use.Pieces)} into batch {use.BatchNumber}, load {use.LoadNumber}" + (use.StruckAt is { } struck ? $"; struck out {shop.Moment(struck)}: {use.StruckBecause}" : "");

    /// <summary>What became of what was in the mixer, for the page and the sheet; the lines after the first sum to it once all is weighed.</summary>
    public IReadOnlyList<(string Label, string Value)> Account(TracedBatch batch) =>
    [
        ("In the mixer", Print(Trace.Mixed(batch, Division))),
        .. batch.Left.IsPositive ? [("Stayed in grinder and stuffer", Print(batch.Left))] : Array.Empty<(string, string)>(),
        .. Trace.Lost(batch, Division) is { } lost ? [("Lost on the way", Print(lost))] : Array.Empty<(string, string)>(),
        .. batch.Finished is { } finished ? [(batch.IsWeighed ? "Finished" : "Finished so far", Print(finished))] : Array.Empty<(string, string)>(),
    ];

    /// <summary>What a lot held, what of it was noted in batches, and what is left by that.</summary>
    public IReadOnlyList<(string Label, string Value)> Account(TracedLot lot) =>
    [
        ("Received", Amount(lot, lot.Amount, lot.Pieces)),
        ("Noted in batches", Amount(lot, lot.Used, lot.PiecesUsed)),
        (lot.UsedUpAt is { } usedUp ? $"Not noted; used up {shop.Date(usedUp)}" : "Left by the book", Amount(lot, lot.Rest, lot.PiecesLeft)),
    ];
}
