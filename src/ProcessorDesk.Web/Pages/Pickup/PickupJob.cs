using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Trade.Pricing;

namespace ProcessorDesk.Web.Pages.Pickup;

/// <summary>What the pickup page shows of a job.</summary>
/// <param name="People">Who may come for it: the owner, and the people around the job.</param>
public sealed record PickupJob(
    PickupJob.JobFacts Facts,
    IReadOnlyList<string> People,
    IReadOnlyList<PickupJob.Held> Holds,
    IReadOnlyList<PickupJob.Gone> HandOvers,
    JobMoney Money,
    JobGoods Goods,
    MissingGoods Missing,
    JobCharges Charges,
    IReadOnlyList<Price> Extras)
{
    public int Id => Facts.Id;

    /// <summary>What the charges come to, before anything paid.</summary>
    public InvoiceTotal Reckoned => InvoiceTotal.Of(Charges.Lines, []);

    /// <summary>It is all here or gone, with nothing to tick: only to be closed.</summary>
    public bool IsOnlyToClose => Facts is { HandedOverAt: null, BoxedAt: not null } && !Goods.BoxesHere.Any() && !Goods.PartsHere.Any();

    /// <summary>Four queries.</summary>
    public static PickupJob? Read(RecordsContext records, ShopDay day, int id, IReadOnlyDictionary<int, int> extras)
    {
        var holds = records.Touching(id);
        var found = records.Jobs.AsNoTracking().Where(job => job.Id == id)
            .Select(job => new
            {
                Facts = new JobFacts(
                    job.Id, job.Number, job.Owner.Name, job.Owner.Phone, job.PromisedFor, job.CuttingDoneAt, job.SplitAgreedAt, job.BoxedAt, job.HandedOverAt, job.HandedOverTo,
                    records.WeighIns.Any(one => one.JobId == id && one.Kind == WeighInKind.CutPack && one.Strike == null)),
                People = records.JobPeople.Where(person => person.JobId == job.Id && person.JobId == id).Select(person => new { person.Id, person.Role, person.Name }).ToList(),
                Holds = holds.Where(one => one.JobId == job.Id).OrderBy(one => one.Hold.PlacedAt)
                    .Select(one => new
                    {
                        one.Hold.Id,
                        one.Hold.Reason,
                        one.Hold.Note,
                        one.Hold.PlacedAt,
                        IsAnimal = one.Hold.AnimalId != null,
                        Tag = one.Hold.Animal == null ? null : one.Hold.Animal.Tag,
                        Batch = one.Hold.Batch == null ? (int?)null : one.Hold.Batch.Number,
                        Stops = records.HoldRules.Any(rule => rule.Reason == one.Hold.Reason && rule.Act == HeldAct.HandOver && rule.Stops),
                    })
                    .ToList(),
                HandOvers = records.HandOvers.Where(one => one.JobId == job.Id && one.JobId == id).OrderBy(one => one.Id)
                    .Select(one => new Gone(one.Id, one.To, one.At, one.Owing, records.Staff.Where(staff => staff.Id == one.ById).Select(staff => staff.Initials).First())).ToList(),
                Bills = records.Invoices.Where(invoice => invoice.JobId == job.Id && invoice.JobId == id).OrderBy(invoice => invoice.Number)
                    .Select(invoice => new JobMoney.Bill(invoice.Id, invoice.Number, invoice.IssuedAt, invoice.CreditsInvoiceId, invoice.Total)).ToList(),
                Payments = records.Payments.Where(payment => payment.JobId == job.Id && payment.JobId == id).OrderBy(payment => payment.Id)
                    .Select(payment => new JobMoney.Paid(payment.Id, payment.At, payment.Amount, payment.Method, payment.IsDeposit, payment.Note)).ToList(),
            })
            .AsSingleQuery()
            .SingleOrDefault();
        if (found is null)
            return null;
        var made = records.MadeOf(id);
        var goods = records.GoodsOf(id);
        var prices = records.PricesOf(id, day.Today);
        return new PickupJob(
            found.Facts,
            [.. found.People.OrderByDescending(person => person.Role == PersonRole.Collector).Select(person => person.Name).Append(found.Facts.Owner).Distinct()],
            found.Holds.ConvertAll(hold => new Held(
                hold.Batch is { } batch ? $"Batch {batch}" : !hold.IsAnimal ? "The whole job" : hold.Tag is { } tag ? $"The animal with tag {tag}" : "An animal without a tag",
                Wording.Of(hold.Reason), hold.Note, hold.PlacedAt, hold.Stops)),
            found.HandOvers,
            new JobMoney(found.Bills, found.Payments),
            goods,
            new MissingGoods(found.Facts.CuttingDoneAt, found.Facts.SplitAgreedAt, found.Facts.HasCuts, found.Facts.BoxedAt, made, goods),
            Invoicing.ChargesOf(prices, goods.Animals, made, day.Settings, extras),
            [.. prices.Extras]);
    }

    public sealed record JobFacts(
        int Id, int Number, string Owner, string Phone, DateOnly? PromisedFor, DateTime? CuttingDoneAt, DateTime? SplitAgreedAt, DateTime? BoxedAt,
        DateTime? HandedOverAt, string? HandedOverTo, bool HasCuts)
    {
        public bool IsAgreed => SplitAgreedAt is not null;
    }

    /// <param name="Stops">Nothing of it leaves while it stands.</param>
    public sealed record Held(string Whose, string Reason, string? Note, DateTime Since, bool Stops);

    public sealed record Gone(int Id, string To, DateTime At, bool Owing, string By);
}
