using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>Holds on a batch, and whom they touch.</summary>
public static class BatchHolds
{
    public static Outcome HoldBatch(this RecordsContext records, int batchId, HoldReason reason, string? note, Act act)
    {
        if (records.Batches.Any(batch => batch.Id == batchId && batch.EndedAt != null))
            return Outcome.Refused(new Finding("", "This batch is over: there is nothing left to hold."));
        if (records.Holds.Standing().Any(hold => hold.BatchId == batchId && hold.Reason == reason))
            return Outcome.Refused(new Finding("", $"Held for this already: {Wording.Of(reason)}."));
        records.Holds.Add(Hold.OnBatch(batchId, reason, note, act.Now, act.Hand.Id));
        return Outcome.Done(batchId);
    }

    /// <summary>By the manager alone.</summary>
    public static Outcome ReleaseBatchHold(this RecordsContext records, int holdId, string? because, Act act)
    {
        var hold = records.Holds.Single(one => one.Id == holdId && one.BatchId != null);
        if (hold.ReleasedAt is not null)
            return Outcome.Refused(new Finding("", "This hold was released before."));
        if (!records.IsManager(act.Hand))
            return Outcome.Refused(new Finding("", "Only the manager releases a batch from hold."));
        if (string.IsNullOrWhiteSpace(because))
            return Outcome.Refused(new Finding("Because", "Say why the hold is released."));
        hold.Release(act.Now, act.Hand.Id, because);
        return Outcome.Done(hold.BatchId!.Value);
    }

    /// <summary>Standing holds on the batch itself that stop the act, as findings; empty where the way is free.</summary>
    public static IReadOnlyList<Finding> StoppingBatch(this RecordsContext records, int batchId, HeldAct act) =>
    [
        .. records.Holds.AsNoTracking().Standing()
            .Where(hold => hold.BatchId == batchId && records.HoldRules.Any(rule => rule.Reason == hold.Reason && rule.Act == act && rule.Stops))
            .Select(hold => new { hold.Reason, hold.Batch!.Number })
            .AsEnumerable()
            .Select(hold => new Finding("", $"Batch {hold.Number} is on hold: {Wording.Of(hold.Reason)}. The manager releases it."))
    ];

    /// <summary>Every job whose meat is or may be in the batch: those planned, and those whose lugs were drawn by mistake.</summary>
    public static IQueryable<Job> TouchedBy(this RecordsContext records, int batchId) =>
        records.Jobs.Where(job =>
            records.BatchEntries.Any(entry => entry.BatchId == batchId && entry.LeftAt == null && entry.JobId == job.Id)
            || records.Draws.Any(draw => draw.Load.BatchId == batchId && draw.StruckAt == null && draw.Filling.JobId == job.Id));
}
