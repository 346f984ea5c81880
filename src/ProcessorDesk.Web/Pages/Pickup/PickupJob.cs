using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Trade.Pricing;

namespace ProcessorDesk.Web.Pages.Pickup;

/// <summary>What the pickup page shows of a job.</summary>
public sealed record PickupJob(
    int Id,
    int Number,
    string Owner,
    string Collector,
    bool IsAgreed,
    DateTime? HandedOverAt,
    string? HandedOverTo,
    JobCharges Charges,
    InvoiceTotal Reckoned,
    IReadOnlyList<Price> Extras,
    IReadOnlyList<PickupJob.Issued> Invoices,
    IReadOnlyList<PickupJob.Paid> Payments,
    IReadOnlyList<PickupJob.PartRow> Parts,
    IReadOnlyList<Hold> Holds)
{
    /// <summary>The invoice that stands; null where none was issued or it was credited.</summary>
    public Issued? Standing => Invoices.FirstOrDefault(invoice => invoice.Credits is null && Invoices.All(other => other.Credits != invoice.Number));

    public Money PaidSum => Money.Sum(Payments.Select(payment => payment.Amount));

    /// <summary>Invoices and credits less payments.</summary>
    public Money Balance => Money.Sum(Invoices.Select(invoice => invoice.Total)) - PaidSum;

    public static PickupJob? Read(RecordsContext records, ShopDay day, int id, IReadOnlyDictionary<int, int> extras)
    {
        var job = records.Jobs.AsNoTracking()
            .Where(one => one.Id == id)
            .Select(one => new
            {
                one.Number,
                one.OwnerId,
                Owner = one.Owner.Name,
                Collector = one.People.Where(person => person.Role == PersonRole.Collector).Select(person => person.Name).FirstOrDefault(),
                IsAgreed = one.SplitAgreedAt != null,
                one.HandedOverAt,
                one.HandedOverTo,
                Extras = one.PriceList.Prices.Where(price => price.For == PriceFor.Extra).OrderBy(price => price.Id).ToList(),
            })
            .AsSplitQuery()
            .SingleOrDefault();
        if (job is null)
            return null;
        var charges = records.ChargesOf(id, day.Settings, day.Today, extras);
        var payments = records.Payments.AsNoTracking().Where(payment => payment.JobId == id).OrderBy(payment => payment.Id)
            .Select(payment => new Paid(payment.At, payment.Amount, payment.Method, payment.IsDeposit, payment.Note)).ToList();
        return new PickupJob(
            id,
            job.Number,
            job.Owner,
            job.Collector ?? job.Owner,
            job.IsAgreed,
            job.HandedOverAt,
            job.HandedOverTo,
            charges,
            InvoiceTotal.Of(charges.Lines, [.. payments.Select(payment => payment.Amount)]),
            job.Extras,
            records.Invoices.AsNoTracking().Where(invoice => invoice.JobId == id).OrderBy(invoice => invoice.Number)
                .Select(invoice => new Issued(invoice.Id, invoice.Number, invoice.IssuedAt, invoice.Credits == null ? null : invoice.Credits.Number, invoice.Total)).ToList(),
            payments,
            records.Parts.AsNoTracking()
                .Where(part => part.Animal.Shares.Any(share => share.JobId == id))
                .OrderBy(part => part.Id)
                .Select(part => new PartRow(part.Id, part.Kind, part.Note, part.Animal.Tag, part.GivenAt, part.GivenTo)).ToList(),
            [.. records.Holds.AsNoTracking().Standing().OnJob(records, id).Include(hold => hold.Animal)]);
    }

    public sealed record Issued(int Id, int Number, DateTime At, int? Credits, Money Total);

    public sealed record Paid(DateTime At, Money Amount, PaymentMethod Method, bool IsDeposit, string? Note)
    {
        public string Words => IsDeposit ? "Deposit" : Amount.IsNegative ? "Refund" : "Payment";
    }

    public sealed record PartRow(int Id, PartKind Kind, string? Note, string? Tag, DateTime? GivenAt, string? GivenTo);
}
