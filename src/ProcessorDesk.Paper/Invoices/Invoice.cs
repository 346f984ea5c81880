using ProcessorDesk.Trade.Yields;

namespace ProcessorDesk.Paper;

/// <summary>An invoice or a credit note, Letter. Everything as printed: the figures are the ones that were issued.</summary>
/// <param name="Shop">The head as it was when issued.</param>
/// <param name="Number">"1042".</param>
/// <param name="Date">The day of issue.</param>
/// <param name="JobNumber">The job's number.</param>
/// <param name="Credits">The number of the invoice this one credits; null for an invoice.</param>
/// <param name="Owner">Who is billed.</param>
/// <param name="OwnerLines">Postal address, one line each.</param>
/// <param name="Lines">What is charged.</param>
/// <param name="Totals">Above the total: "Subtotal", "Sales tax 6.25 %".</param>
/// <param name="Total">"$187.45".</param>
/// <param name="Payments">"Deposit, Fri 27 Nov 2026, cash", "-$50.00".</param>
/// <param name="Balance">What is left: "$137.45".</param>
/// <param name="TaxWords">What the shop says about tax; may be empty.</param>
/// <param name="Note">Terms of payment; may be empty.</param>
/// <param name="Yield">The yield statement; null for a credit note or where nothing was weighed.</param>
public sealed record Invoice(
    ShopHeader Shop,
    string Number,
    DateOnly Date,
    string JobNumber,
    string? Credits,
    string Owner,
    IReadOnlyList<string> OwnerLines,
    IReadOnlyList<InvoiceLine> Lines,
    IReadOnlyList<Fact> Totals,
    string Total,
    IReadOnlyList<Fact> Payments,
    string Balance,
    string TaxWords,
    string Note,
    YieldAccount? Yield)
{
    /// <summary>One PDF, each invoice from a page of its own.</summary>
    public static byte[] Draw(IReadOnlyList<Invoice> invoices) => InvoicePaper.Draw(invoices);
}

/// <summary>A line: "Summer sausage, cured and smoked", "20.13 lb", "$4.25 / lb", "$85.55", "T" where taxed.</summary>
public sealed record InvoiceLine(string Text, string Quantity, string Rate, string Amount, string Tax = "");
