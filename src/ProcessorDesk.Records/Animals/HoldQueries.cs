using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>What stands in the way of an act.</summary>
public static class HoldQueries
{
    public static IQueryable<Hold> Standing(this IQueryable<Hold> holds) => holds.Where(hold => hold.ReleasedAt == null);

    /// <summary>Standing holds on a job or on any animal with meat in it.</summary>
    public static IQueryable<Hold> OnJob(this IQueryable<Hold> holds, RecordsContext records, int jobId) =>
        holds.Where(hold => hold.JobId == jobId
            || records.Shares.Where(share => share.JobId == jobId).Select(share => (int?)share.AnimalId).Contains(hold.AnimalId));

    /// <summary>Standing holds on an animal or on any job that has a share of it.</summary>
    public static IQueryable<Hold> OnAnimal(this IQueryable<Hold> holds, RecordsContext records, int animalId) =>
        holds.Where(hold => hold.AnimalId == animalId
            || records.Shares.Where(share => share.AnimalId == animalId).Select(share => (int?)share.JobId).Contains(hold.JobId));

    /// <summary>Standing holds that touch a job: on it, on an animal with meat in it, on a batch its meat stands in.</summary>
    public static IQueryable<JobHold> Touching(this RecordsContext records, int jobId)
    {
        var animals = records.Shares.Where(share => share.JobId == jobId).Select(share => (int?)share.AnimalId);
        var batches = records.BatchEntries.Where(entry => entry.JobId == jobId && entry.LeftAt == null).Select(entry => (int?)entry.BatchId);
        return
            from job in records.Jobs
            from hold in records.Holds.Standing()
            where job.Id == jobId && (hold.JobId == jobId || animals.Contains(hold.AnimalId) || batches.Contains(hold.BatchId))
            select new JobHold { JobId = job.Id, Hold = hold };
    }

    /// <summary>Standing holds that stop the act for a job, as findings; empty where the way is free.</summary>
    public static IReadOnlyList<Finding> Stopping(this RecordsContext records, int jobId, HeldAct act) =>
        Findings(records, records.Holds.AsNoTracking().Standing().OnJob(records, jobId), act);

    /// <summary>Standing holds that stop the act for one animal alone.</summary>
    public static IReadOnlyList<Finding> StoppingAnimal(this RecordsContext records, int animalId, HeldAct act) =>
        Findings(records, records.Holds.AsNoTracking().Standing().Where(hold => hold.AnimalId == animalId), act);

    private static List<Finding> Findings(RecordsContext records, IQueryable<Hold> holds, HeldAct act) =>
    [
        .. holds
            .Where(hold => records.HoldRules.Any(rule => rule.Reason == hold.Reason && rule.Act == act && rule.Stops))
            .Select(hold => new { hold.Reason, Tag = hold.Animal == null ? null : hold.Animal.Tag })
            .AsEnumerable()
            .Select(hold => new Finding("", hold.Tag is null
                ? $"On hold: {Wording.Of(hold.Reason)}. The manager releases it."
                : $"Animal with tag {hold.Tag} is on hold: {Wording.Of(hold.Reason)}. The manager releases it."))
    ];
}
