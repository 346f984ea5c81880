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
        var parts = records.PartsOf(order.JobId).Where(part => part.GivenAt == null).ToList();
        var going = boxes.Where(box => order.BoxIds.Contains(box.Id)).ToList();
        var given = parts.Where(part => order.PartIds.Contains(part.Id)).ToList();
        List<Finding> findings = [.. Stopping(records, job, going)];
        if (going.Count == 0 && given.Count == 0 && (job.BoxedAt is null || boxes.Count > 0 || parts.Count > 0))
            findings.Add(new Finding("Boxes", "Tick or scan what goes out."));
        if (going.Count < order.BoxIds.Distinct().Count() || given.Count < order.PartIds.Distinct().Count())
            findings.Add(new Finding("Boxes", "Something of this left meanwhile, or is another job's. Look at the list again."));
        if (going.Count > 0 && NotInvoiced(records, job, going) is { } notInvoiced)
            findings.Add(notInvoiced);
        if (string.IsNullOrWhiteSpace(order.To))
            findings.Add(new Finding("To", "Write who takes it."));
        if (records.BalanceOf(job.Id) is { Cents: > 0 } balance && !order.Owing)
            findings.Add(new Finding("Owing", $"{balance.Print()} is still owed. Take the payment, or tick that it goes out owing."));
        if (findings.Count > 0)
            return Outcome.Refused(findings);

        var handOver = new HandOver(job.Id, order.To!, order.Owing, act.Now, act.Hand.Id);
        records.HandOvers.Add(handOver);
        foreach (var box in going)
            box.Leave(handOver);
        foreach (var part in given)
            part.Give(order.To!, act.Now, act.Hand.Id, handOver);
        records.SaveChanges();
        records.CloseIfAllLeft(job, act.Now, act.Hand.Id, order.To!);
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
        var brought = records.Shares.Where(share => share.AnimalId == part.AnimalId).OrderBy(share => share.Id).Select(share => share.Job).FirstOrDefault();
        if (brought is not null)
            records.CloseIfAllLeft(brought, act.Now, act.Hand.Id, to);
        return Outcome.Done(partId);
    }

    /// <summary>Closes a job of which everything is said to be boxed, something left by a hand-over, and nothing is here any more.</summary>
    internal static void CloseIfAllLeft(this RecordsContext records, Job job, DateTime at, int byId, string to)
    {
        var isHere = records.Boxes.Here().Any(box => box.JobId == job.Id) || records.PartsOf(job.Id).Any(part => part.GivenAt == null);
        if (job is { HandedOverAt: null, BoxedAt: not null } && !isHere && records.HandOvers.Any(one => one.JobId == job.Id))
            job.HandOver(at, byId, to);
    }

    private static IEnumerable<Finding> Stopping(RecordsContext records, Job job, List<Box> going)
    {
        if (job.HandedOverAt is not null)
            yield return new Finding("", "All of this job was handed over before.");
        if (!job.DetailsComplete)
            yield return new Finding("", "The details of this job are not complete, so nothing of it leaves. Finish the drop-off first.");
        foreach (var finding in records.Stopping(job.Id, HeldAct.HandOver))
            yield return finding;
        var allotments = going.SelectMany(box => box.Contents).Select(content => content.AllotmentId).OfType<int>().ToList();
        var batches = records.BatchEntries.Where(entry => entry.LeftAt == null && allotments.Contains(entry.AllotmentId)).Select(entry => entry.BatchId).Distinct().ToList();
        foreach (var finding in batches.SelectMany(batchId => records.StoppingBatch(batchId, HeldAct.HandOver)))
            yield return finding;
    }

    /// <summary>The work on the animals and what was made of them are charged before they leave; what no price list has is not asked for.</summary>
    private static Finding? NotInvoiced(RecordsContext records, Job job, List<Box> going)
    {
        var boxed = going.SelectMany(box => box.Contents).Select(content => content.AllotmentId).ToHashSet();
        // Only whether its own list has a price counts here, so no day's list is asked for.
        var prices = records.PricesOf(job.Id, DateOnly.MinValue);
        List<string> names =
        [
            .. records.GoodsOf(job.Id).Animals.Where(animal => !animal.IsInvoiced && prices.Charge(animal)).Select(animal => animal.Charged.Name),
            .. records.MadeOf(job.Id).Where(product => boxed.Contains(product.AllotmentId) && !product.IsInvoiced).Select(product => product.Name),
        ];
        return names.Count == 0 ? null : new Finding("", $"Not on an invoice yet: {string.Join(", ", names)}. Issue one first.");
    }
}
