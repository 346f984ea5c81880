using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Kitchen;
using ProcessorDesk.Trade.Kitchen.Planning;

namespace ProcessorDesk.Records;

/// <summary>Putting allotments into a batch and taking a batch off the plan.</summary>
public static class BatchPlanning
{
    /// <summary>
    /// One batch of allotments of one product, divided into mixer loads. Refused where something is held, where owners who did not
    /// all agree to pooling would meet, or where the formula lacks its cure. Its result is the batch's id.
    /// </summary>
    public static Outcome PlanBatch(this RecordsContext records, IReadOnlyList<int> allotmentIds, Act act) => records.PlanBatch(new BatchOrder(allotmentIds), act);

    /// <summary>All the batches of a day, or none: what one of them is refused for keeps back the others too.</summary>
    public static Outcome PlanDay(this RecordsContext records, IReadOnlyList<BatchOrder> batches, Act act)
    {
        if (batches.Count == 0)
            return Outcome.Refused(new Finding("Allotments", "Nothing is planned for today. Put something into a load first."));
        foreach (var batch in batches)
        {
            if (records.PlanBatch(batch, act) is { IsDone: false } refused)
                return refused;
        }

        return Outcome.Done(batches.Count);
    }

    /// <inheritdoc cref="PlanBatch(RecordsContext, IReadOnlyList{int}, Act)"/>
    public static Outcome PlanBatch(this RecordsContext records, BatchOrder order, Act act)
    {
        var allotmentIds = order.Allotments;
        var allotments = records.GrindAllotments
            .Include(one => one.Product)
            .Include(one => one.FormulaVersion).ThenInclude(formula => formula.Ingredients)
            .Where(one => allotmentIds.Contains(one.Id))
            .AsSplitQuery()
            .ToList();
        if (allotments.Count == 0)
            return Outcome.Refused(new Finding("Allotments", "Tick what goes into the batch."));
        if (allotments.Count < allotmentIds.Distinct().Count())
            return Outcome.Refused(new Finding("Allotments", "One of these is not there any more. Look at the list again."));
        var splitIds = allotments.Select(one => one.AgreedSplitId).Distinct().ToList();
        var jobs = records.AgreedSplits.AsNoTracking()
            .Where(split => split.WithdrawnAt == null && splitIds.Contains(split.Id))
            .Join(records.Jobs, split => split.JobId, job => job.Id, (split, job) => new { SplitId = split.Id, Job = job })
            .ToDictionary(one => one.SplitId, one => one.Job);
        var shop = records.Shop.AsNoTracking().Single();
        var division = shop.BenchDivision;
        if (Refusals(records, allotments, jobs, shop) is { Count: > 0 } findings)
            return Outcome.Refused(findings);

        var ordered = allotments.OrderBy(one => jobs[one.AgreedSplitId].Number).ThenBy(one => one.Position).ToList();
        var pooling = jobs.Values.Select(job => job.OwnerId).Distinct().Count() > 1 ? Pooling.Pooled : Pooling.Own;
        List<BatchPart> parts = ordered.ConvertAll(one => new BatchPart(one.Lean, one.AddedFat, one.Green));
        if (order.Loads is { } loads && !IsAsItWaits(loads, ordered, shop))
            return Outcome.Refused(new Finding("Allotments", "What waits, or the mixer, has changed since the day was planned. Look at the plan again."));
        var plan = order.Loads is { } arranged
            ? MixerLoads.Arrange(parts, [.. arranged.Select(load => load.Pieces.Select(piece => (ordered.FindIndex(one => one.Id == piece.Allotment), piece.Green)).ToList())], division)
            : pooling == Pooling.Pooled ? PooledLoads.Divide(parts, shop.MixerCapacity, shop.SmallestFill, division).Loads
            : MixerLoads.Plan(parts, shop.MixerCapacity, division);
        var entries = ordered.ConvertAll(one => new BatchEntry(one.Id, jobs[one.AgreedSplitId].Id));
        var batch = new Batch(act.NextBatchNumber(), ordered[0].FormulaVersion, pooling, act.Now, act.Hand.Id);
        batch.Run(records.LastProgramme(batch.ProductId));
        batch.Take(entries, plan.Select((load, i) => new Load(i + 1, load, entries)));
        records.Batches.Add(batch);
        records.SaveChanges();
        act.NewTicket(TicketKind.Batch, batch.Id);
        return Outcome.Done(batch.Id);
    }

    /// <summary>The smokehouse's stages as they were written for the newest batch of the product; null where there are none.</summary>
    private static string? LastProgramme(this RecordsContext records, int productId) =>
        records.Batches.AsNoTracking().Where(batch => batch.ProductId == productId).OrderByDescending(batch => batch.Id).Select(batch => batch.Programme).FirstOrDefault();

    /// <summary>Only before any meat is in; the allotments are free again.</summary>
    public static Outcome TakeOffPlan(this RecordsContext records, int batchId, string? because, Act act)
    {
        var batch = records.Batches.Include(one => one.Entries).Single(one => one.Id == batchId);
        if (batch.EndedAt is not null || batch.ReleasedAt is not null)
            return Outcome.Refused(new Finding("", $"Batch {batch.Number} is over: nothing of it changes any more."));
        if (records.Draws.Any(draw => draw.Load.BatchId == batchId && draw.StruckAt == null))
            return Outcome.Refused(new Finding("", "Meat is in it already. Strike out what was drawn, or go on with the batch."));
        if (string.IsNullOrWhiteSpace(because))
            return Outcome.Refused(new Finding("Because", "Say why the batch is taken off the plan."));
        foreach (var entry in batch.Entries)
            entry.Leave(act.Now);
        batch.End(act.Now, act.Hand.Id, because);
        return Outcome.Done(batchId);
    }

    private static bool IsAsItWaits(IReadOnlyList<HandLoad> loads, List<GrindAllotment> allotments, ShopSettings shop)
    {
        var division = shop.BenchDivision;
        return loads.All(load => Count(load.Pieces) <= division.CountDown(shop.MixerCapacity))
            && allotments.All(one => Count(loads.SelectMany(load => load.Pieces).Where(piece => piece.Allotment == one.Id)) == division.CountOf(one.Green));

        long Count(IEnumerable<HandPiece> pieces) => pieces.Sum(piece => division.CountOf(piece.Green));
    }

    private static List<Finding> Refusals(
        RecordsContext records, List<GrindAllotment> allotments, Dictionary<int, Job> jobs, ShopSettings shop)
    {
        var ids = allotments.ConvertAll(one => one.Id);
        var findings = new List<Finding>();
        if (allotments.Any(one => !jobs.ContainsKey(one.AgreedSplitId)))
            findings.Add(new Finding("Allotments", "A split was withdrawn meanwhile. Look at the list again."));
        if (records.BatchEntries.Any(entry => entry.LeftAt == null && ids.Contains(entry.AllotmentId)))
            findings.Add(new Finding("Allotments", "Somebody planned one of these meanwhile. Look at the list again."));
        if (jobs.Values.FirstOrDefault(job => job.HandedOverAt is not null) is { } gone)
            findings.Add(new Finding("Allotments", $"Job {gone.Number} was handed over, so nothing more is made for it."));
        if (shop.BenchDivision.CountDown(shop.MixerCapacity) < 1)
            findings.Add(new Finding("", $"The mixer is set to hold {shop.BenchDivision.Print(shop.MixerCapacity)}. Let the office put that right first."));
        if (allotments.Any(one => shop.BenchDivision.CountOf(one.Green) <= 0))
            findings.Add(new Finding("Allotments", "One of these has no meat in it."));
        if (allotments.Select(one => one.ProductId).Distinct().Count() > 1)
            findings.Add(new Finding("Allotments", "A batch is of one product. Take these in several batches."));
        else if (allotments.Select(one => one.FormulaVersionId).Distinct().Count() > 1)
            findings.Add(new Finding("Allotments", "These were agreed at different versions of the formula. Make a batch of each version."));
        if (jobs.Values.Select(job => job.OwnerId).Distinct().Count() > 1)
            findings.AddRange(jobs.Values.Where(job => job.Pooling == Pooling.Own).Select(job => new Finding("Allotments", $"The owner of job {job.Number} did not agree to pooling. Make a batch of that job alone.")));
        foreach (var job in jobs.Values)
            findings.AddRange(records.Stopping(job.Id, HeldAct.Batch).Select(finding => finding with { Field = "Allotments", Text = $"Job {job.Number}: {finding.Text}" }));
        findings.AddRange(allotments[0].FormulaVersion.ToTrade().Check().Select(finding => finding with { Field = "Allotments" }));
        return findings;
    }
}
