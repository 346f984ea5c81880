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
        var held =
            from hold in records.Holds.AsNoTracking().Standing()
            where records.HoldRules.Any(rule => rule.Reason == hold.Reason && rule.Act == HeldAct.Cut && rule.Stops)
            from share in records.Shares.Where(share => share.AnimalId == hold.AnimalId).DefaultIfEmpty()
            select new { JobId = hold.JobId ?? (int?)share.JobId ?? 0, hold.Reason };
        return Unready(records, jobs)
            .SelectMany(job => job.Select(finding => (JobId: job.Key, Finding: finding)))
            .Concat(held.AsEnumerable().Select(hold => (hold.JobId, Finding: new Finding("", $"On hold: {Wording.Of(hold.Reason)}."))))
            .ToLookup(one => one.JobId, one => one.Finding);
    }

    /// <summary>One query: each job with its animals, and with all shares of each animal.</summary>
    private static ILookup<int, Finding> Unready(RecordsContext records, IQueryable<Job> jobs)
    {
        var rows =
            from job in jobs.AsNoTracking()
            from share in records.Shares.Where(share => share.JobId == job.Id).DefaultIfEmpty()
            from each in records.Shares.Where(each => each.AnimalId == share.AnimalId).DefaultIfEmpty()
            select new { job.Id, job.DetailsComplete, AnimalId = (int?)share.AnimalId, share.Animal.Tag, Numerator = (long?)each.Numerator, Denominator = (long?)each.Denominator };
        var findings = new List<(int JobId, Finding Finding)>();
        foreach (var job in rows.AsEnumerable().GroupBy(row => (row.Id, row.DetailsComplete)))
        {
            if (!job.Key.DetailsComplete)
                findings.Add((job.Key.Id, new Finding("", "The details of this job are not complete. Finish the drop-off first.")));
            if (job.Any(row => row.AnimalId is null))
                findings.Add((job.Key.Id, new Finding("", "No animal belongs to this job. Add it at the counter.")));
            foreach (var animal in job.Where(row => row.AnimalId is not null).GroupBy(row => (row.AnimalId, row.Tag)))
            {
                var sum = animal.Aggregate(Ratio.Zero, (total, share) => total + Ratio.Of(share.Numerator!.Value, share.Denominator!.Value));
                if (sum != Ratio.One)
                    findings.Add((job.Key.Id, ShareFinding(animal.Key.Tag, sum)));
            }
        }

        return findings.ToLookup(one => one.JobId, one => one.Finding);
    }

    private static Finding ShareFinding(string? tag, Ratio sum) =>
        new("", $"The shares of the animal {(tag is null ? "without a tag" : "with tag " + tag)} come to {sum}, not to 1. Settle them at the counter before the first knife.",
            sum.ToString(), "1");
}
