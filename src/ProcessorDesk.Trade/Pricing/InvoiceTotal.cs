namespace ProcessorDesk.Trade.Pricing;

/// <summary>The foot of an invoice. Every figure is a sum of printed cents; nothing is rounded here.</summary>
/// <param name="Subtotal">The lines without tax.</param>
/// <param name="TaxedSubtotal">The taxed lines without their tax.</param>
/// <param name="Tax">The tax of each line, added.</param>
/// <param name="Total">Subtotal and tax.</param>
/// <param name="Paid">Deposit and payments; a refund counts against them.</param>
/// <param name="Balance">Still owed; negative where the shop owes it back.</param>
public sealed record InvoiceTotal(Money Subtotal, Money TaxedSubtotal, Money Tax, Money Total, Money Paid, Money Balance)
{
    /// <param name="lines">The invoice's lines.</param>
    /// <param name="payments">Deposit and payments, each once; refunds below zero.</param>
    public static InvoiceTotal Of(IReadOnlyList<ChargeLine> lines, IReadOnlyList<Money> payments)
    {
        var subtotal = Money.Sum(lines.Select(line => line.Amount));
        var tax = Money.Sum(lines.Select(line => line.Tax));
        var paid = Money.Sum(payments);
        return new InvoiceTotal(
            subtotal, Money.Sum(lines.Where(line => line.Taxed).Select(line => line.Amount)), tax, subtotal + tax, paid, subtotal + tax - paid);
    }
}
