using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>What leaves the shop at one time.</summary>
/// <param name="To">Who takes it and signs.</param>
/// <param name="Owing">The clerk hands over although money is owed.</param>
public sealed record HandOverOrder(int JobId, IReadOnlyList<int> BoxIds, IReadOnlyList<int> PartIds, string? To, bool Owing);

/// <summary>Handing boxes and parts over, in one go or in several.</summary>
public static class HandingOver
{
    /// <summary>
    /// Refused while something is held, where what goes out is not invoiced, or where money is owed and nobody said it may go. The last
    /// hand-over closes the job. Its result is the hand-over's id.
    /// </summary>
    public static Outcome HandOver(this RecordsContext records, HandOverOrder order, Act act)
    {
        var job = records.Jobs.Single(one => one.Id == order.JobId);
        var boxes = records.Boxes.Here().Include(box => box.Contents).Where(box => box.JobId == order.JobId).ToList();
        var parts = records.Parts.Include(part => part.Animal).Where(part => part.GivenAt == null && part.Animal.Shares.Any(share => share.JobId == order.JobId)).ToList();
        var going = boxes.Where(box => order.BoxIds.Contains(box.Id)).ToList();
        var given = parts.Where(part => order.PartIds.Contains(part.Id)).ToList();
        if (Refusals(records, job, order, boxes, parts, going, given) is { Count: > 0 } findings)
            return Outcome.Refused(findings);

        var handOver = new HandOver(job.Id, order.To!, order.Owing, act.Now, act.Hand.Id);
        records.HandOvers.Add(handOver);
        foreach (var box in going)
            box.Leave(handOver);
        foreach (var part in given)
            part.Give(order.To!, act.Now, act.Hand.Id, handOver);
        records.SaveChanges();
        CloseIfAllLeft(records, job, order.To!, act);
        return Outcome.Done(handOver.Id);
    }

    /// <summary>A part alone: the cape to the taxidermist, the head to the laboratory.</summary>
    public static Outcome GivePart(this RecordsContext records, int partId, string? to, Act act)
    {
        var part = records.Parts.Include(one => one.Animal).Single(one => one.Id == partId);
        if (string.IsNullOrWhiteSpace(to))
            return Outcome.Refused(new Finding("PartTo", "Write who takes the part."));
        if (part.GivenAt is not null)
            return Outcome.Refused(new Finding("", "This part was given out before."));
        // The head may leave for the laboratory while the rest of the animal waits.
        var heldAct = part.Kind == PartKind.Head && part.Animal.DiseaseTest == DiseaseTest.Pending ? HeldAct.SendToLaboratory : HeldAct.HandOver;
        if (records.StoppingAnimal(part.AnimalId, heldAct) is { Count: > 0 } findings)
            return Outcome.Refused(findings);
        part.Give(to, act.Now, act.Hand.Id);
        records.SaveChanges();
        foreach (var job in records.Jobs.Where(job => job.HandedOverAt == null && job.Shares.Any(share => share.AnimalId == part.AnimalId)).ToList())
            CloseIfAllLeft(records, job, to, act);
        return Outcome.Done(partId);
    }

    /// <summary>Boxes of the job that are here.</summary>
    public static IQueryable<Box> Here(this IQueryable<Box> boxes) => boxes.Where(box => box.UnpackedAt == null && box.HandOverId == null);

    private static void CloseIfAllLeft(RecordsContext records, Job job, string to, Act act)
    {
        var isHere = records.Boxes.Here().Any(box => box.JobId == job.Id)
            || records.Parts.Any(part => part.GivenAt == null && part.Animal.Shares.Any(share => share.JobId == job.Id));
        if (job.BoxedAt is not null && !isHere && records.HandOvers.Any(one => one.JobId == job.Id))
            job.HandOver(act.Now, act.Hand.Id, to);
    }

    private static List<Finding> Refusals(
        RecordsContext records, Job job, HandOverOrder order, List<Box> boxes, List<Part> parts, List<Box> going, List<Part> given)
    {
        List<Finding> findings = [.. records.Stopping(job.Id, HeldAct.HandOver)];
        if (job.HandedOverAt is not null)
            findings.Add(new Finding("", "All of this job was handed over before."));
        if (!job.DetailsComplete)
            findings.Add(new Finding("", "The details of this job are not complete, so nothing of it leaves. Finish the drop-off first."));
        if (going.Count == 0 && given.Count == 0 && (job.BoxedAt is null || boxes.Count > 0 || parts.Count > 0))
            findings.Add(new Finding("Boxes", "Tick or scan what goes out."));
        if (going.Count < order.BoxIds.Distinct().Count() || given.Count < order.PartIds.Distinct().Count())
            findings.Add(new Finding("Boxes", "Something of this left meanwhile, or is another job's. Look at the list again."));
        foreach (var batchId in BatchesIn(records, going))
            findings.AddRange(records.StoppingBatch(batchId, HeldAct.HandOver));
        if (going.Count > 0)
            findings.AddRange(NotInvoiced(records, job.Id, going));
        if (string.IsNullOrWhiteSpace(order.To))
            findings.Add(new Finding("To", "Write who takes it."));
        if (records.BalanceOf(job.Id) is { Cents: > 0 } balance && !order.Owing)
            findings.Add(new Finding("Owing", $"{balance.Print()} is still owed. Take the payment, or tick that it goes out owing."));
        return findings;
    }

    private static List<int> BatchesIn(RecordsContext records, List<Box> boxes)
    {
        var allotments = boxes.SelectMany(box => box.Contents).Select(content => content.AllotmentId).OfType<int>().ToList();
        return [.. records.BatchEntries.Where(entry => entry.LeftAt == null && allotments.Contains(entry.AllotmentId)).Select(entry => entry.BatchId).Distinct()];
    }

    private static IEnumerable<Finding> NotInvoiced(RecordsContext records, int jobId, List<Box> boxes)
    {
        var charged = records.Invoices.Standing().Where(invoice => invoice.JobId == jobId).SelectMany(invoice => invoice.Lines)
            .Where(line => line.For == PriceFor.Product).Select(line => line.OfId).ToList();
        if (!records.Invoices.Standing().Any(invoice => invoice.JobId == jobId))
            return [new Finding("", "No invoice stands for this job. Issue it first.")];
        return boxes.SelectMany(box => box.Contents).Where(content => content.AllotmentId is { } id && !charged.Contains(id))
            .Select(content => content.Name).Distinct()
            .Select(name => new Finding("", $"{name} is not on any invoice yet. Issue one for it first."));
    }
}
