using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>Takes animals in, each drop-off inside one act.</summary>
public static class TakingIn
{
    /// <summary>A new job with all that belongs to it; its result is the job's id.</summary>
    /// <param name="today">The shop's day.</param>
    public static Outcome TakeIn(this RecordsContext records, DropOff dropOff, DateOnly today, Act act)
    {
        var (job, refusal) = records.StartJob(dropOff.Owner, today, act);
        if (job is null)
            return Outcome.Refused(refusal!);
        job.PutPeople(dropOff.People);
        if (dropOff.Order?.WriteOn(job) is { Count: > 0 } findings)
            return Outcome.Refused(findings);
        if (dropOff.IsWhole)
            job.CompleteDetails();
        var shop = records.Shop.AsNoTracking().Single();
        var animals = dropOff.Animals.Select(animal => animal.TakeIn(records, shop, today, job, act)).ToList();
        if (!dropOff.Deposit.IsZero)
            records.Payments.Add(new Payment(job, dropOff.Deposit, dropOff.Method, isDeposit: true, null, act.Now, act.Hand.Id));
        records.SaveChanges();
        act.NewTicket(TicketKind.Claim, job.Id);
        TicketEach(act, animals);
        return Outcome.Done(job.Id);
    }

    /// <summary>More animals for a job whose split is not agreed; its result is the job's id.</summary>
    public static Outcome JoinJob(this RecordsContext records, int jobId, IReadOnlyList<TakenAnimal> taken, DateOnly today, Act act)
    {
        var job = records.Jobs.SingleOrDefault(one => one.Id == jobId);
        if (job is null)
            return Outcome.Refused(new Finding("", "This job is not there any more. Start a new drop-off."));
        if (job.AsksLocked)
            return Outcome.Refused(new Finding("", "The split of this job is agreed, so no animal can join it. Take it in as a new job of the same owner."));
        if (job.HandedOverAt is not null)
            return Outcome.Refused(new Finding("", "This job is handed over. Take the animal in as a new job of the same owner."));
        job.ReopenCutting();
        job.ReviseSheet();
        var shop = records.Shop.AsNoTracking().Single();
        var animals = taken.Select(animal => animal.TakeIn(records, shop, today, job, act)).ToList();
        records.SaveChanges();
        TicketEach(act, animals);
        return Outcome.Done(job.Id);
    }

    /// <summary>A job without animals yet, at the prices in force; null, with the reason, where it can't be.</summary>
    public static (Job? Job, Finding? Refusal) StartJob(this RecordsContext records, TakenOwner taken, DateOnly today, Act act)
    {
        if (taken.Of(records) is not { } owner)
            return (null, new Finding("Owner.Search", "This owner is not there any more. Find the owner again."));
        if (records.PriceLists.InForceOn(today).SingleOrDefault() is not { } prices)
            return (null, new Finding("", "There is no price list in force today. The manager makes one in the office."));
        prices.Use(act.Now);
        var job = new Job(act.NextJobNumber(), owner, act.Now, act.Hand.Id, prices.Id);
        records.Jobs.Add(job);
        return (job, null);
    }

    private static void TicketEach(Act act, IReadOnlyList<Animal> animals)
    {
        foreach (var animal in animals)
        {
            act.NewTicket(TicketKind.Carcass, animal.Id);
            foreach (var part in animal.Parts)
                act.NewTicket(TicketKind.Part, part.Id);
        }
    }
}
