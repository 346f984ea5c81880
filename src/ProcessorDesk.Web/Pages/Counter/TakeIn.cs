using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Counter;

/// <summary>Everything of a drop-off that was read.</summary>
/// <param name="Order">Null where there is none yet.</param>
/// <param name="IsWhole">False for "ticket now, details after".</param>
public sealed record DropOffFacts(
    OwnerInput Owner, IReadOnlyList<JobPerson> People, IReadOnlyList<AnimalFacts> Animals, OrderFacts? Order, Money Deposit, PaymentMethod Method,
    bool IsWhole = true);

/// <summary>Saves drop-offs: each inside one act.</summary>
internal static class TakeIn
{
    /// <summary>A new job with all that belongs to it; its result is the job's id.</summary>
    public static Outcome NewJob(RecordsContext records, ShopDay day, Act act, DropOffFacts facts)
    {
        var (job, refusal) = StartJob(records, day.Today, act, facts.Owner);
        if (job is null)
            return Outcome.Refused(refusal!);
        job.PutPeople(facts.People);
        if (facts.Order?.WriteOn(job) is { Count: > 0 } findings)
            return Outcome.Refused(findings);
        if (facts.IsWhole)
            job.CompleteDetails();
        var animals = facts.Animals.Select(animal => animal.TakeIn(records, day, job, act)).ToList();
        if (!facts.Deposit.IsZero)
            records.Payments.Add(new Payment(job, facts.Deposit, facts.Method, isDeposit: true, null, act.Now, act.Hand.Id));
        records.SaveChanges();
        act.NewTicket(TicketKind.Claim, job.Id);
        TicketEach(act, animals);
        return Outcome.Done(job.Id);
    }

    /// <summary>More animals for a job whose split is not agreed; its result is the job's id.</summary>
    public static Outcome JoinJob(RecordsContext records, ShopDay day, Act act, int jobId, IReadOnlyList<AnimalFacts> facts)
    {
        var job = records.Jobs.SingleOrDefault(one => one.Id == jobId);
        if (job is null)
            return Outcome.Refused(new Finding("", "This job is not there any more. Start a new drop-off."));
        if (job.AsksLocked)
            return Outcome.Refused(new Finding("", "The split of this job is agreed, so no animal can join it. Take it in as a new job of the same owner."));
        job.ReopenCutting();
        job.ReviseSheet();
        var animals = facts.Select(animal => animal.TakeIn(records, day, job, act)).ToList();
        records.SaveChanges();
        TicketEach(act, animals);
        return Outcome.Done(job.Id);
    }

    /// <summary>A job without animals yet, at the prices in force; null, with the reason, where it can't be.</summary>
    public static (Job? Job, Finding? Refusal) StartJob(RecordsContext records, DateOnly today, Act act, OwnerInput typed)
    {
        if (typed.Of(records) is not { } owner)
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
