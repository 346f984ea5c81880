using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>Whether a job may come under the knife.</summary>
public static class KnifeQueries
{
    /// <summary>Jobs that hang or lie on the table: not cut to the end, not handed over.</summary>
    public static IQueryable<Job> ToCut(this IQueryable<Job> jobs) =>
        jobs.Where(job => job.CuttingDoneAt == null && job.HandedOverAt == null);

    /// <summary>Why cutting may not start, in words; empty where the way is free.</summary>
    public static IReadOnlyList<Finding> StoppingKnife(this RecordsContext records, int jobId) =>
        [.. Unready(records, records.Jobs.Where(job => job.Id == jobId))[jobId], .. records.Stopping(jobId, HeldAct.Cut)];

    /// <summary>The same for many jobs at once, by the job's id; jobs without an entry are free.</summary>
    public static ILookup<int, Finding> StoppingKnife(this RecordsContext records, IQueryable<Job> jobs)
    {
        var ids = jobs.Select(job => job.Id);
        var holds = records.Holds.AsNoTracking().Standing()
            .Where(hold => records.HoldRules.Any(rule => rule.Reason == hold.Reason && rule.Act == HeldAct.Cut && rule.Stops));
        var held =
            from job in records.Jobs.AsNoTracking()
            from hold in holds
            where ids.Contains(job.Id)
                && (job.Id == hold.JobId || records.Shares.Any(share => share.JobId == job.Id && share.AnimalId == hold.AnimalId))
            select new { JobId = job.Id, hold.Reason };
        return Unready(records, jobs)
            .SelectMany(job => job.Select(finding => (JobId: job.Key, Finding: finding)))
            .Concat(held.AsEnumerable().Select(hold => (hold.JobId, Finding: new Finding("", $"On hold: {Wording.Of(hold.Reason)}."))))
            .ToLookup(one => one.JobId, one => one.Finding);
    }

    private static ILookup<int, Finding> Unready(RecordsContext records, IQueryable<Job> jobs)
    {
        var ids = jobs.Select(job => job.Id);
        var details = jobs.AsNoTracking().Select(job => new { job.Id, job.DetailsComplete, HasAnimal = job.Shares.Any() }).ToList();
        var shares = records.Shares.AsNoTracking()
            .Where(share => ids.Contains(share.JobId))
            .SelectMany(
                share => records.Shares.Where(other => other.AnimalId == share.AnimalId),
                (share, other) => new { share.JobId, share.AnimalId, share.Animal.Tag, other.Numerator, other.Denominator })
            .AsEnumerable()
            .GroupBy(share => (share.JobId, share.AnimalId, share.Tag));
        var findings = new List<(int JobId, Finding Finding)>();
        foreach (var job in details.Where(job => !job.DetailsComplete))
            findings.Add((job.Id, new Finding("", "The details of this job are not complete. Finish the drop-off first.")));
        foreach (var job in details.Where(job => !job.HasAnimal))
            findings.Add((job.Id, new Finding("", "No animal belongs to this job. Add it at the counter.")));
        foreach (var animal in shares)
        {
            var sum = animal.Aggregate(Ratio.Zero, (total, share) => total + Ratio.Of(share.Numerator, share.Denominator));
            if (sum != Ratio.One)
                findings.Add((animal.Key.JobId, ShareFinding(animal.Key.Tag, sum)));
        }

        return findings.ToLookup(one => one.JobId, one => one.Finding);
    }

    private static Finding ShareFinding(string? tag, Ratio sum) =>
        new("", $"The shares of the animal {(tag is null ? "without a tag" : "with tag " + tag)} come to {sum}, not to 1. Settle them at the counter before the first knife.",
            sum.ToString(), "1");
}
