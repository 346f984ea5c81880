using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Process;

namespace ProcessorDesk.Records;

/// <summary>Letting a batch go to its owners, or throwing it out.</summary>
public static class Releasing
{
    /// <summary>Only with the record its way of making needs, and with nothing held. Writes the shares of the finished weight.</summary>
    /// <param name="writtenSupport">The shop's own written process, named by the manager for what the published tables do not reach; else null.</param>
    public static Outcome ReleaseBatch(this RecordsContext records, int batchId, string? writtenSupport, Act act)
    {
        var batch = records.ReadBatch(batchId) ?? throw new ArgumentOutOfRangeException(nameof(batchId));
        if (BatchRecord.Over(batch) is { } over)
            return Outcome.Refused(over);
        // The cure is checked by the labels of the lots it came from.
        records.LotUses.Where(use => use.Load.BatchId == batchId).Include(use => use.Lot).Load();
        if (batch.Product.Needs().HasFlag(ProcessNeeds.WrittenSupport) && Texts.OrNull(writtenSupport) is { } support)
        {
            if (!records.IsManager(act.Hand))
                return Outcome.Refused(new Finding("WrittenSupport", "Only the manager names the written process. Fetch the manager."));
            batch.SupportBy(support);
        }

        var jobs = batch.Placed().Select(entry => entry.JobId).Distinct().ToList();
        var lines = records.LinesOf(batchId);
        var division = records.Shop.AsNoTracking().Single().BenchDivision;
        var shares = batch.SharesOf(lines, division);
        List<Finding> findings =
        [
            .. records.StoppingBatch(batchId, HeldAct.Release),
            .. jobs.SelectMany(jobId => records.Stopping(jobId, HeldAct.Release)),
            .. batch.MissingFrom(lines, records.DispositionsOf(batchId), division),
        ];
        if (lines.Finished.Any(one => shares.All(share => share.LoadId != one.LoadId)))
            findings.Add(new Finding("", "What was weighed holds none of the meat planned for it, so it goes back to nobody. Throw it out, or strike out the weight."));
        if (findings.Count > 0)
            return Outcome.Refused(findings);

        batch.Release(act.Now, act.Hand.Id);
        records.FinishedShares.AddRange(shares);
        records.SaveChanges();
        CloseJobs(records, jobs, act);
        return Outcome.Done(batchId);
    }

    /// <summary>Thrown out, by the manager alone: nothing of it goes to its owners, who have been told.</summary>
    public static Outcome DiscardBatch(this RecordsContext records, int batchId, string? because, Act act)
    {
        var batch = records.Batches.Include(one => one.Entries).Single(one => one.Id == batchId);
        if (BatchRecord.Over(batch) is { } over)
            return Outcome.Refused(over);
        if (!records.IsManager(act.Hand))
            return Outcome.Refused(new Finding("", "Only the manager throws a batch out."));
        if (!records.Draws.Any(draw => draw.Load.BatchId == batchId && draw.StruckAt == null))
            return Outcome.Refused(new Finding("", "No meat is in it yet. Take it off the plan instead."));
        if (string.IsNullOrWhiteSpace(because))
            return Outcome.Refused(new Finding("Because", "Say why it is thrown out."));
        if (!records.Dispositions.Any(one => one.BatchId == batchId && one.Kind == DispositionKind.OwnersTold))
            return Outcome.Refused(new Finding("", "The owners have to know first. Tell them, and write down who told them and when."));
        batch.End(act.Now, act.Hand.Id, because);
        records.SaveChanges();
        CloseJobs(records, batch.Entries.Select(entry => entry.JobId).Distinct(), act);
        return Outcome.Done(batchId);
    }

    /// <summary>Jobs of the batch whose last product this was are made.</summary>
    private static void CloseJobs(RecordsContext records, IEnumerable<int> jobIds, Act act)
    {
        foreach (var jobId in jobIds)
        {
            var allotments =
                from split in records.AgreedSplits
                where split.JobId == jobId && split.WithdrawnAt == null
                join one in records.GrindAllotments on split.Id equals one.AgreedSplitId
                where one.Green.Milligrams > 0
                select one;
            var isToMake = allotments.Any(one => !records.BatchEntries.Any(entry => entry.AllotmentId == one.Id && entry.LeftAt == null
                && (entry.Batch.ReleasedAt != null || entry.Batch.EndedAt != null)));
            if (!isToMake)
                records.Jobs.Single(job => job.Id == jobId).Made(act.Now);
        }
    }
}
