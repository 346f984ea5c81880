namespace ProcessorDesk.Records;

public static class InvoiceQueries
{
    /// <summary>Invoices that stand: not a credit, and not credited.</summary>
    public static IQueryable<Invoice> Standing(this IQueryable<Invoice> invoices) =>
        invoices.Where(invoice => invoice.CreditsInvoiceId == null && !invoices.Any(credit => credit.CreditsInvoiceId == invoice.Id));
}
