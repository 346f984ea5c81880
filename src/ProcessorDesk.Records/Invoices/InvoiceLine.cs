using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>One line of an invoice, as printed. Never changed or deleted: the database refuses.</summary>
public sealed class InvoiceLine
{
    private InvoiceLine()
    {
    }

    /// <param name="ofId">Which animal (by its id) or product (by its allotment's id) it charges; null for what is charged as often as one likes.</param>
    public InvoiceLine(int position, PriceFor @for, int? ofId, string text, string quantity, string rate, Money amount, bool taxed, Money tax)
    {
        Position = position;
        For = @for;
        OfId = ofId;
        Text = text;
        Quantity = quantity;
        Rate = rate;
        Amount = amount;
        Taxed = taxed;
        Tax = tax;
    }

    public int InvoiceId { get; private set; }

    public int Position { get; private set; }

    public PriceFor For { get; private set; }

    public int? OfId { get; private set; }

    public string Text { get; private set; } = "";

    /// <summary>The printed quantity with its unit.</summary>
    public string Quantity { get; private set; } = "";

    /// <summary>The printed rate.</summary>
    public string Rate { get; private set; } = "";

    public Money Amount { get; private set; }

    public bool Taxed { get; private set; }

    public Money Tax { get; private set; }

    internal InvoiceLine Turned() => new(Position, For, OfId, Text, Quantity, Rate, -Amount, Taxed, -Tax);
}
