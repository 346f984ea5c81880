using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>Letting a batch go to its owners, or throwing it out.</summary>
public static class Releasing
{
    /// <summary>Only with the record its way of making needs, and with nothing held. Writes the shares of the finished weight.</summary>
    /// <param name="writtenSupport">The shop's own written process, for what the published tables do not reach; else null.</param>
    public static Outcome ReleaseBatch(this RecordsContext records, int batchId, string? writtenSupport, Act act)
    {
        var batch = records.Batches
            .Include(one => one.Product)
            .Include(one => one.Entries)
            .Include(one => one.Loads).ThenInclude(load => load.Draws)
            .Include(one => one.Loads).ThenInclude(load => load.Parts)
            .Include(one => one.Loads).ThenInclude(load => load.Ingredients)
            .AsSplitQuery()
            .Single(one => one.Id == batchId);
        if (BatchRecord.Over(batch) is { } over)
            return Outcome.Refused(over);
        if (Texts.OrNull(writtenSupport) is { } support)
            batch.SupportBy(support);
        List<Finding> findings = [.. records.StoppingBatch(batchId, HeldAct.Release)];
        foreach (var jobId in batch.Entries.Select(entry => entry.JobId).Distinct())
            findings.AddRange(records.Stopping(jobId, HeldAct.Release));
        findings.AddRange(records.MissingFrom(batch));
        if (findings.Count > 0)
            return Outcome.Refused(findings);

        batch.Release(act.Now, act.Hand.Id);
        records.FinishedShares.AddRange(records.SharesOf(batch));
        records.SaveChanges();
        CloseJobs(records, batch, act);
        return Outcome.Done(batchId);
    }

    /// <summary>Thrown out: nothing of it goes to its owners, who have to be told.</summary>
    public static Outcome DiscardBatch(this RecordsContext records, int batchId, string? because, Act act)
    {
        var batch = records.Batches.Include(one => one.Entries).Single(one => one.Id == batchId);
        if (BatchRecord.Over(batch) is { } over)
            return Outcome.Refused(over);
        if (string.IsNullOrWhiteSpace(because))
            return Outcome.Refused(new Finding("Because", "Say why it is thrown out, and who told the owners."));
        batch.End(act.Now, act.Hand.Id, because);
        records.SaveChanges();
        CloseJobs(records, batch, act);
        return Outcome.Done(batchId);
    }

    /// <summary>
    /// The finished weight by green weight: of each load weighed alone among those with meat in it, or of all loads among all. Batch with
    /// entries, loads and parts must have been loaded.
    /// </summary>
    public static IReadOnlyList<FinishedShare> SharesOf(this RecordsContext records, Batch batch)
    {
        var division = records.Shop.AsNoTracking().Single().BenchDivision;
        var weighed = records.WeighIns.AsNoTracking().Standing().Where(one => one.BatchId == batch.Id).Select(one => new { one.LoadId, one.Net }).ToList();
        var shares = new List<FinishedShare>();
        foreach (var part in weighed.GroupBy(one => one.LoadId))
        {
            var parts = batch.Loads.Where(load => part.Key is null || load.Id == part.Key).SelectMany(load => load.Parts)
                .GroupBy(one => one.EntryId)
                .Select(entry => (entry.Key, Green: division.CountOf(division.Sum(entry.Select(one => one.Green)))))
                .OrderBy(entry => entry.Key)
                .ToList();
            var weights = division.Split(division.Sum(part.Select(one => one.Net)), [.. parts.Select(one => one.Green)]);
            shares.AddRange(parts.Select((one, i) => new FinishedShare(one.Key, part.Key, weights[i])));
        }

        return shares;
    }

    /// <summary>Jobs of the batch whose last product this was are made.</summary>
    private static void CloseJobs(RecordsContext records, Batch batch, Act act)
    {
        foreach (var jobId in batch.Entries.Select(entry => entry.JobId).Distinct())
        {
            var isToMake = records.GrindAllotments.Where(one => one.Green.Milligrams > 0
                    && records.AgreedSplits.Any(split => split.Id == one.AgreedSplitId && split.JobId == jobId && split.WithdrawnAt == null))
                .Any(one => !records.BatchEntries.Any(entry => entry.AllotmentId == one.Id && entry.LeftAt == null
                    && (entry.Batch.ReleasedAt != null || entry.Batch.EndedAt != null)));
            if (!isToMake)
                records.Jobs.Single(job => job.Id == jobId).Made(act.Now);
        }
    }
}
