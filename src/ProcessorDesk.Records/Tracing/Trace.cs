using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>
/// What went into a thing and where it went: backwards to animals and owners, forwards to batches, boxes and owners. A batch is traced as a
/// whole: its loads share grinder, stuffer and smokehouse, so whatever was in one is taken to be in all of it.
/// </summary>
/// <param name="Batches">Those its meat is in, and those it is planned for and not mixed yet.</param>
/// <param name="Lugs">Those it starts from, and those drawn into the batches; of an ingredient's lot only those whose meat had no place there.</param>
/// <param name="Jobs">By number.</param>
/// <param name="Animals">All that the jobs have a share of.</param>
/// <param name="Boxes">With packs of the batches, or with cuts of what it starts from; unpacked ones too.</param>
/// <param name="Lots">The one it starts from, or those used in the batches.</param>
public sealed record Trace(
    TraceStart Start,
    IReadOnlyList<TracedBatch> Batches,
    IReadOnlyList<TracedLug> Lugs,
    IReadOnlyList<TracedJob> Jobs,
    IReadOnlyList<TracedAnimal> Animals,
    IReadOnlyList<TracedBox> Boxes,
    IReadOnlyList<TracedLot> Lots)
{
    /// <summary>The lugs it starts from: of an animal or a job those its meat lay in, of a lug itself.</summary>
    public IReadOnlyList<TracedLug> OwnLugs => [.. Lugs.Where(lug => Start.Kind switch
    {
        TracedKind.Animal => lug.AnimalIds.Contains(Start.Id),
        TracedKind.Job => lug.JobId == Start.Id,
        TracedKind.Lug => lug.Id == Start.Id,
        TracedKind.Batch or TracedKind.Box or TracedKind.IngredientLot => false,
    })];

    /// <summary>The batches it is in; of a box, those its packs were made in.</summary>
    public IReadOnlyList<TracedBatch> In => [.. Batches.Where(batch => Start.Kind switch
    {
        TracedKind.Animal or TracedKind.Job or TracedKind.Lug => OwnLugs.SelectMany(lug => lug.Draws).Any(draw => draw.Stands && draw.BatchId == batch.Id),
        TracedKind.Batch or TracedKind.Box or TracedKind.IngredientLot => true,
    })];

    /// <summary>Batches it is planned for and not in yet: it can still be kept out of them.</summary>
    public IReadOnlyList<TracedBatch> Planned => [.. Batches.ExceptBy(In.Select(batch => batch.Id), batch => batch.Id)];

    /// <summary>Backwards: the lugs whose meat is in it. Of an animal none: it is the beginning.</summary>
    public IReadOnlyList<TracedLug> LugsIn => Start.Kind switch
    {
        TracedKind.Batch or TracedKind.Box => [.. Lugs.Where(IsIn)],
        TracedKind.Job => [.. Lugs.Where(lug => lug.JobId == Start.Id || IsIn(lug))],
        TracedKind.Lug => OwnLugs,
        TracedKind.Animal or TracedKind.IngredientLot => [],
    };

    /// <summary>Backwards: the animals whose meat is in it.</summary>
    public IReadOnlyList<TracedAnimal> AnimalsIn
    {
        get
        {
            var ids = LugsIn.SelectMany(lug => lug.AnimalIds).ToHashSet();
            if (Start.Kind == TracedKind.Animal)
                ids.Add(Start.Id);
            if (Start.Kind == TracedKind.Job || (Start.Kind == TracedKind.Box && Boxes.Any(box => box.Contents.Any(packs => packs.AllotmentId is null))))
                ids.UnionWith(OwnJobs.SelectMany(job => job.AnimalIds));
            return [.. Animals.Where(animal => ids.Contains(animal.Id))];
        }
    }

    /// <summary>Backwards: the lots of what was weighed in beside the meat; of an animal or a lug none.</summary>
    public IReadOnlyList<TracedLot> LotsIn => Start.Kind switch
    {
        TracedKind.Batch or TracedKind.Box or TracedKind.Job => [.. Lots.Where(lot => lot.Uses.Any(use => use.Stands && In.Any(batch => batch.Id == use.BatchId)))],
        TracedKind.IngredientLot => Lots,
        TracedKind.Animal or TracedKind.Lug => [],
    };

    /// <summary>Forwards: the boxes with its meat in them. An unpacked one is no box any more, and is shown as such.</summary>
    public IReadOnlyList<TracedBox> BoxesOf
    {
        get
        {
            var allotments = In.SelectMany(batch => batch.Places).Select(place => (int?)place.AllotmentId).ToHashSet();
            return Start.Kind == TracedKind.Box ? Boxes : [.. Boxes.Where(box => box.Contents.Any(packs => packs.AllotmentId is null ? HasCutsOf(box) : allotments.Contains(packs.AllotmentId)))];
        }
    }

    /// <summary>The jobs whose owners have to be told: whose it is, and everybody whose meat was in a batch with it or was planned for that.</summary>
    public IReadOnlyList<TracedJob> ToTell
    {
        get
        {
            var ids = OwnJobs.Select(job => job.Id).ToHashSet();
            if (Start.Kind != TracedKind.Box)
            {
                ids.UnionWith(In.SelectMany(batch => batch.Places).Select(place => place.JobId));
                ids.UnionWith(Lugs.Where(IsIn).Select(lug => lug.JobId));
            }

            return [.. Jobs.Where(job => ids.Contains(job.Id))];
        }
    }

    /// <summary>Whose the thing itself is; empty for a batch and a lot.</summary>
    public IReadOnlyList<TracedJob> OwnJobs => [.. Jobs.Where(job => Start.Kind switch
    {
        TracedKind.Animal => job.AnimalIds.Contains(Start.Id),
        TracedKind.Job => job.Id == Start.Id,
        TracedKind.Lug => Lugs.Any(lug => lug.Id == Start.Id && lug.JobId == job.Id),
        TracedKind.Box => Boxes.Any(box => box.Id == Start.Id && box.JobId == job.Id),
        TracedKind.Batch or TracedKind.IngredientLot => false,
    })];

    /// <summary>The thing it was asked by was found.</summary>
    internal bool IsThere => Start.Kind switch
    {
        TracedKind.Animal => Animals.Any(animal => animal.Id == Start.Id),
        TracedKind.Job => Jobs.Any(job => job.Id == Start.Id),
        TracedKind.Lug => Lugs.Any(lug => lug.Id == Start.Id),
        TracedKind.Batch => Batches.Any(batch => batch.Id == Start.Id),
        TracedKind.Box => Boxes.Any(box => box.Id == Start.Id),
        TracedKind.IngredientLot => Lots.Any(lot => lot.Id == Start.Id),
    };

    /// <summary>Meat in a batch, the struck draws too; in the order it was drawn.</summary>
    public IReadOnlyList<TracedDraw> DrawsInto(TracedBatch batch) => [.. Lugs.SelectMany(lug => lug.Draws).Where(draw => draw.BatchId == batch.Id).OrderBy(draw => draw.Id)];

    /// <summary>What was in the mixer: meat, fat and all else, each rounded as printed, so that it adds up on paper.</summary>
    public Weight Mixed(TracedBatch batch, ScaleDivision division) => Meat(batch, division) + division.Round(batch.Fat) + division.Round(batch.Added);

    /// <summary>Mixed, less what stayed in the machines and what was finished, each as printed; null until all of it was weighed. Below zero where more came out than went in.</summary>
    public Weight? Lost(TracedBatch batch, ScaleDivision division) =>
        batch is { IsWeighed: true, Finished: { } finished } ? Mixed(batch, division) - division.Round(batch.Left) - division.Round(finished) : null;

    /// <summary>The meat in it, added up as printed; struck draws left out.</summary>
    public Weight Meat(TracedBatch batch, ScaleDivision division) => division.Sum(DrawsInto(batch).Where(draw => draw.Stands).Select(draw => draw.Weighed));

    private bool IsIn(TracedLug lug) => lug.Draws.Any(draw => draw.Stands && In.Any(batch => batch.Id == draw.BatchId));

    private bool HasCutsOf(TracedBox box) => Start.Kind switch
    {
        TracedKind.Animal or TracedKind.Job => OwnJobs.Any(job => job.Id == box.JobId),
        TracedKind.Lug => OwnLugs.Any(lug => lug.HasCuts && lug.JobId == box.JobId),
        TracedKind.Batch or TracedKind.Box or TracedKind.IngredientLot => false,
    };
}
