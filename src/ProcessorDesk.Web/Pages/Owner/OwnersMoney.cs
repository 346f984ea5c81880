using Microsoft.EntityFrameworkCore;

namespace ProcessorDesk.Web.Pages.OwnersPage;

/// <summary>Invoices and payments of a job in the order they came.</summary>
public sealed record OwnersMoney(IReadOnlyList<OwnersMoney.Entry> Entries)
{
    /// <summary>Owed where more than zero; paid ahead where less.</summary>
    public Money Balance => Money.Sum(Entries.Select(entry => entry.Owed));

    public bool IsInvoiced => Entries.Any(entry => entry.Invoice is not null && Entries.All(other => other.Credits != entry.Invoice) && entry.Credits is null);

    /// <summary>One query.</summary>
    public static OwnersMoney Of(RecordsContext records, int jobId)
    {
        var invoices = records.Invoices.AsNoTracking().Where(invoice => invoice.JobId == jobId).Select(invoice => new
        {
            At = invoice.IssuedAt,
            Invoice = (int?)invoice.Number,
            Credits = invoice.Credits == null ? null : (int?)invoice.Credits.Number,
            invoice.Total.Cents,
            IsDeposit = false,
        });
        var payments = records.Payments.AsNoTracking().Where(payment => payment.JobId == jobId).Select(payment => new
        {
            payment.At,
            Invoice = (int?)null,
            Credits = (int?)null,
            payment.Amount.Cents,
            payment.IsDeposit,
        });
        return new OwnersMoney(
        [
            .. invoices.Concat(payments).AsEnumerable().OrderBy(one => one.At)
                .Select(one => new Entry(DateTime.SpecifyKind(one.At, DateTimeKind.Utc), one.Invoice, one.Credits, Money.FromCents(one.Cents), one.IsDeposit))
        ]);
    }

    /// <param name="Invoice">Its number; null for a payment.</param>
    /// <param name="Credits">The number of the invoice it takes back; null otherwise.</param>
    public sealed record Entry(DateTime At, int? Invoice, int? Credits, Money Amount, bool IsDeposit)
    {
        public Money Owed => Invoice is null ? -Amount : Amount;

        public string Words => (Invoice, Credits) switch
        {
            ({ } number, null) => $"Invoice {number}",
            ({ } number, { } credited) => $"Credit {number}, takes back invoice {credited}",
            _ when IsDeposit => "Deposit paid",
            _ => Amount.IsNegative ? "Paid back to you" : "Paid",
        };
    }
}
