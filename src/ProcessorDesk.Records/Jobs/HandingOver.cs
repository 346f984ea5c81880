using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>What leaves the shop: the order itself, and the parts that go back as themselves.</summary>
public static class HandingOver
{
    /// <param name="to">Who takes it and signs.</param>
    /// <param name="owing">The clerk hands over although money is owed.</param>
    public static Outcome HandOver(this RecordsContext records, int jobId, string? to, bool owing, Act act)
    {
        var job = records.Jobs.Single(one => one.Id == jobId);
        List<Finding> findings = [.. records.Stopping(jobId, HeldAct.HandOver)];
        if (job.HandedOverAt is not null)
            findings.Add(new Finding("", "This job was handed over before."));
        if (!job.DetailsComplete)
            findings.Add(new Finding("", "The details of this job are not complete, so it can't be closed. Finish the drop-off first."));
        if (!job.AsksLocked)
            findings.Add(new Finding("", "The split is not agreed yet: there is nothing to hand over."));
        if (!records.Invoices.Standing().Any(invoice => invoice.JobId == jobId))
            findings.Add(new Finding("", "No invoice stands for this job. Issue it first."));
        if (string.IsNullOrWhiteSpace(to))
            findings.Add(new Finding("To", "Write who takes it."));
        if (records.BalanceOf(jobId) is { Cents: > 0 } balance && !owing)
            findings.Add(new Finding("Owing", $"{balance.Print()} is still owed. Take the payment, or tick that it goes out owing."));
        if (findings.Count > 0)
            return Outcome.Refused(findings);
        job.HandOver(act.Now, act.Hand.Id, to!);
        return Outcome.Done(jobId);
    }

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
        return Outcome.Done(partId);
    }
}
