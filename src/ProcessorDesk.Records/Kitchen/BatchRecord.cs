using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>Keeping a batch's process record: its steps, its readings, its finished weight.</summary>
public static class BatchRecord
{
    /// <param name="pieces">Counted at the stuffing, by load; empty where nobody counted.</param>
    public static Outcome TakeStep(this RecordsContext records, int batchId, BatchStepKind kind, Act act, IReadOnlyDictionary<int, int>? pieces = null)
    {
        var batch = records.Batches.Single(one => one.Id == batchId);
        if (Over(batch) is { } over)
            return Outcome.Refused(over);
        if (batch.MixedAt is null)
            return Outcome.Refused(new Finding("", "Not every load is mixed yet. Mix them first."));
        if (records.BatchSteps.Any(step => step.BatchId == batchId && step.Kind == kind && step.UndoneAt == null))
            return Outcome.Refused(new Finding("", $"{Wording.Of(kind)}: that was noted before."));
        if (pieces is not null && pieces.Values.Any(count => count < 1))
            return Outcome.Refused(new Finding("Pieces", "Count at least one piece, or leave it empty."));
        var step = new BatchStep(batchId, kind, act.Now, act.Hand.Id);
        records.BatchSteps.Add(step);
        records.StuffedPieces.AddRange((pieces ?? new Dictionary<int, int>()).Select(one => new StuffedPieces(step, one.Key, one.Value)));
        return Outcome.Done(batchId);
    }

    public static Outcome UndoStep(this RecordsContext records, int stepId, string? because, Act act)
    {
        var step = records.BatchSteps.Include(one => one.Batch).Single(one => one.Id == stepId);
        if (Over(step.Batch) is { } over)
            return Outcome.Refused(over);
        if (step.UndoneAt is not null)
            return Outcome.Refused(new Finding("", "This was undone before."));
        if (string.IsNullOrWhiteSpace(because))
            return Outcome.Refused(new Finding("Because", "Say why it is undone."));
        step.Undo(because, act.Now, act.Hand.Id);
        return Outcome.Done(step.BatchId);
    }

    /// <summary>A reading may be typed late; it is never from the future.</summary>
    public static Outcome NoteReadings(this RecordsContext records, int batchId, IReadOnlyList<BatchReading> readings, Act act)
    {
        if (Over(records.Batches.Single(one => one.Id == batchId)) is { } over)
            return Outcome.Refused(over);
        if (readings.Count == 0)
            return Outcome.Refused(new Finding("", "Type at least one reading."));
        if (readings.Any(reading => reading.TakenAt > act.Now))
            return Outcome.Refused(new Finding("TakenAt", "That time is still to come. Type when the thermometer was read."));
        records.BatchReadings.AddRange(readings);
        return Outcome.Done(batchId);
    }

    public static Outcome StrikeReading(this RecordsContext records, int readingId, string? because, Act act)
    {
        var reading = records.BatchReadings.Single(one => one.Id == readingId);
        if (Over(records.Batches.Single(one => one.Id == reading.BatchId)) is { } over)
            return Outcome.Refused(over);
        if (reading.StruckAt is not null)
            return Outcome.Refused(new Finding("", "This reading was struck out before."));
        if (string.IsNullOrWhiteSpace(because))
            return Outcome.Refused(new Finding("Because", "Say why it is wrong."));
        reading.StrikeOut(because, act.Now, act.Hand.Id);
        return Outcome.Done(reading.BatchId);
    }

    /// <param name="loadId">The load weighed alone; null for all of them together. A batch is weighed the one way or the other.</param>
    /// <param name="pieces">Counted with it; null where nobody did. All of a batch is counted or nothing.</param>
    public static Outcome WeighFinished(this RecordsContext records, int batchId, int? loadId, Weight gross, Weight tare, Act act, int? pieces = null)
    {
        var batch = records.Batches.Include(one => one.Loads).Single(one => one.Id == batchId);
        if (Over(batch) is { } over)
            return Outcome.Refused(over);
        if (batch.MixedAt is null)
            return Outcome.Refused(new Finding("", "Not every load is mixed yet. Mix them first."));
        if (gross <= tare)
            return Outcome.Refused(new Finding("Weight", "Type what the scale shows with the product on it, more than its tare."));
        var before = records.WeighIns.AsNoTracking().Standing().Where(one => one.BatchId == batchId && one.Kind == WeighInKind.FinishedProduct)
            .Select(one => new { one.LoadId, IsCounted = one.Packs != null }).ToList();
        if (before.Count > 0 && before.Any(one => one.LoadId is null) != loadId is null)
            return Outcome.Refused(new Finding("Load", "The finished weight was begun the other way: load by load, or all together. Go on like that, or strike it out first."));
        if (pieces < 1)
            return Outcome.Refused(new Finding("Pieces", "Count at least one piece, or leave it empty."));
        if (before.Any(one => one.IsCounted != pieces is not null))
            return Outcome.Refused(new Finding("Pieces", "What was weighed before was " + (pieces is null ? "counted. Count the pieces of this too, or strike that out." : "not counted. Leave the pieces empty, or strike that out.")));
        if (loadId is { } one && batch.Loads.All(load => load.Id != one))
            return Outcome.Refused(new Finding("Load", "That load is not of this batch."));
        var division = records.Shop.AsNoTracking().Single().BenchDivision;
        records.WeighIns.Add(WeighIn.OfBatch(batchId, loadId, gross, tare, new Reading("bench", division, Packs: pieces), act.Now, act.Hand.Id));
        return Outcome.Done(batchId);
    }

    /// <summary>What stayed in grinder and stuffer; it goes into the batch's own balance and to nobody. Struck out as a finished weight is.</summary>
    public static Outcome WeighLeft(this RecordsContext records, int batchId, Weight weight, Act act)
    {
        var batch = records.Batches.Single(one => one.Id == batchId);
        if (Over(batch) is { } over)
            return Outcome.Refused(over);
        if (batch.MixedAt is null)
            return Outcome.Refused(new Finding("", "Not every load is mixed yet. Mix them first."));
        if (!weight.IsPositive)
            return Outcome.Refused(new Finding("Left", "Type what stayed in the machines, more than nothing, or leave it empty."));
        records.WeighIns.Add(WeighIn.LeftOf(batchId, weight, new Reading("bench", records.Shop.AsNoTracking().Single().BenchDivision), act.Now, act.Hand.Id));
        return Outcome.Done(batchId);
    }

    /// <summary>The smokehouse's stages as the shop writes them, a line each. The next batch of the product begins with them.</summary>
    public static Outcome WriteProgramme(this RecordsContext records, int batchId, string? programme, Act act)
    {
        var batch = records.Batches.Single(one => one.Id == batchId);
        if (Over(batch) is { } over)
            return Outcome.Refused(over);
        batch.Run(programme);
        return Outcome.Done(batchId);
    }

    /// <summary>A finished weight that is wrong; the right one is weighed anew.</summary>
    public static Outcome StrikeFinished(this RecordsContext records, int weighInId, string? because, Act act)
    {
        var weighIn = records.WeighIns.Include(one => one.Strike).Include(one => one.Batch).Single(one => one.Id == weighInId && one.BatchId != null);
        if (Over(weighIn.Batch!) is { } over)
            return Outcome.Refused(over);
        return weighIn.StrikeOut(because ?? "", act.Now, act.Hand.Id) is { } refusal ? Outcome.Refused(refusal) : Outcome.Done(weighIn.BatchId!.Value);
    }

    internal static Finding? Over(Batch batch) =>
        batch.EndedAt is not null ? new Finding("", $"Batch {batch.Number} is over: nothing of it changes any more.")
        : batch.ReleasedAt is not null ? new Finding("", $"Batch {batch.Number} is released: its record is closed.")
        : null;
}
