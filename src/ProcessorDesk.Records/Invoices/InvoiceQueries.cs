using Microsoft.EntityFrameworkCore;

namespace ProcessorDesk.Records;

public static class InvoiceQueries
{
    /// <summary>Invoices that stand: not a credit, and not credited.</summary>
    public static IQueryable<Invoice> Standing(this IQueryable<Invoice> invoices) =>
        invoices.Where(invoice => invoice.CreditsInvoiceId == null && !invoices.Any(credit => credit.CreditsInvoiceId == invoice.Id));

    /// <summary>Two queries.</summary>
    public static JobMoney MoneyOf(this RecordsContext records, int jobId) => new(
        records.Invoices.AsNoTracking().Where(invoice => invoice.JobId == jobId).OrderBy(invoice => invoice.Number)
            .Select(invoice => new JobMoney.Bill(invoice.Id, invoice.Number, invoice.IssuedAt, invoice.CreditsInvoiceId, invoice.Total)).ToList(),
        records.Payments.AsNoTracking().Where(payment => payment.JobId == jobId).OrderBy(payment => payment.Id)
            .Select(payment => new JobMoney.Paid(payment.Id, payment.At, payment.Amount, payment.Method, payment.IsDeposit, payment.Note)).ToList());
}
