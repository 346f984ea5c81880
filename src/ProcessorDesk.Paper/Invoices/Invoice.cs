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
/// <param name="Balance">What is left: "$137.45"; below zero where more was paid than is billed here, "-$12.55".</param>
/// <param name="TaxWords">What the shop says about tax; may be empty.</param>
/// <param name="Note">Terms of payment; may be empty.</param>
/// <param name="Yield">The yield statement; null for a credit note or where nothing was weighed.</param>
/// <param name="Account">
/// What the job owed and had paid before, for a later invoice of the same job: it is printed in the place of Payments and Balance, so
/// that a deposit stands on the first invoice alone. Null for a job's first invoice.
/// </param>
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
    YieldAccount? Yield,
    JobAccount? Account = null)
{
    /// <summary>One PDF, each invoice from a page of its own.</summary>
    public static byte[] Draw(IReadOnlyList<Invoice> invoices) => InvoicePaper.Draw(invoices);
}

/// <summary>The job's account on a later invoice of it. Payments that an earlier invoice showed are in what is brought forward, and not shown again.</summary>
/// <param name="BroughtForward">What the account stood at before: "Brought forward: invoice 3007, Fri 18 Dec 2026", "$0.00".</param>
/// <param name="PaymentsSince">"Check, Mon 21 Dec 2026", "-$20.00".</param>
/// <param name="Balance">What it stands at with this invoice, in words that fit its sign: "To pay", "$53.40"; "In your favour", "$6.60".</param>
public sealed record JobAccount(Fact BroughtForward, IReadOnlyList<Fact> PaymentsSince, Fact Balance);

/// <summary>A line: "Summer sausage, cured and smoked", "20.13 lb", "$4.25 / lb", "$85.55", "T" where taxed.</summary>
public sealed record InvoiceLine(string Text, string Quantity, string Rate, string Amount, string Tax = "");
