namespace ProcessorDesk.Records;

/// <summary>What a batch's record says of its loads: when each was mixed, into how many pieces it was stuffed, what dripped off its meat, who weighed its cure again.</summary>
internal static class BatchLoadLines
{
    public static IQueryable<BatchLineRow> MixedIn(this RecordsContext records, int batchId) =>
        records.Loads.Where(load => load.BatchId == batchId && load.MixedAt != null).Select(load => new BatchLineRow
        {
            Kind = (int)BatchLineKind.Mixed,
            Id = load.Id,
            What = load.Number,
            LoadId = (int?)load.Id,
            Probe = 0,
            Amount = 0L,
            Pieces = (int?)null,
            TakenAt = load.MixedAt!.Value,
            At = load.MixedAt!.Value,
            By = records.Staff.Where(staff => staff.Id == load.MixedById).Select(staff => staff.Initials).First(),
            StruckAt = (DateTime?)null,
            StruckBy = (string?)null,
            Because = load.AlreadyInBecause,
        });

    public static IQueryable<BatchLineRow> StuffedIn(this RecordsContext records, int batchId) =>
        records.StuffedPieces.Where(one => one.Step.BatchId == batchId).Select(one => new BatchLineRow
        {
            Kind = (int)BatchLineKind.StuffedPieces,
            Id = one.StepId,
            What = 0,
            LoadId = (int?)one.LoadId,
            Probe = 0,
            Amount = 0L,
            Pieces = (int?)one.Pieces,
            TakenAt = one.Step.At,
            At = one.Step.At,
            By = records.Staff.Where(staff => staff.Id == one.Step.ById).Select(staff => staff.Initials).First(),
            StruckAt = one.Step.UndoneAt,
            StruckBy = (string?)null,
            Because = (string?)null,
        });

    /// <summary>
    /// A lug that was emptied lacks what thawed and dripped off since it was weighed: its standing lean less all that was drawn from it, by
    /// whichever batch. It is the batch's that emptied it, by the draw of that moment.
    /// </summary>
    public static IQueryable<BatchLineRow> DripIn(this RecordsContext records, int batchId) =>
        records.Draws.Where(draw => draw.Load.BatchId == batchId && draw.StruckAt == null && draw.Filling.EmptiedAt == draw.At).Select(draw => new BatchLineRow
        {
            Kind = (int)BatchLineKind.Drip,
            Id = draw.Id,
            What = 0,
            LoadId = (int?)draw.LoadId,
            Probe = 0,
            Amount = records.WeighIns.Where(one => one.FillingId == draw.FillingId && one.Kind == WeighInKind.LeanTrim && !records.Strikes.Any(strike => strike.WeighInId == one.Id)).Sum(one => one.Net.Milligrams)
                - records.Draws.Where(one => one.FillingId == draw.FillingId && one.StruckAt == null).Sum(one => one.Weighed.Milligrams),
            Pieces = (int?)null,
            TakenAt = draw.At,
            At = draw.At,
            By = records.Staff.Where(staff => staff.Id == draw.ById).Select(staff => staff.Initials).First(),
            StruckAt = (DateTime?)null,
            StruckBy = (string?)null,
            Because = (string?)null,
        });

    /// <summary>Second weighings of the cure, with whose hand they were; they were noted with the mixing.</summary>
    public static IQueryable<BatchLineRow> CuredAgainIn(this RecordsContext records, int batchId) =>
        from load in records.Loads
        where load.BatchId == batchId && load.MixedAt != null
        join line in records.LoadIngredients on load.Id equals line.LoadId
        where line.AgainById != null
        select new BatchLineRow
        {
            Kind = (int)BatchLineKind.CureAgain,
            Id = load.Id,
            What = line.Position,
            LoadId = (int?)load.Id,
            Probe = 0,
            Amount = line.WeighedAgain!.Value.Milligrams,
            Pieces = (int?)null,
            TakenAt = load.MixedAt!.Value,
            At = load.MixedAt!.Value,
            By = records.Staff.Where(staff => staff.Id == line.AgainById).Select(staff => staff.Initials).First(),
            StruckAt = (DateTime?)null,
            StruckBy = (string?)null,
            Because = (string?)null,
        };
}
