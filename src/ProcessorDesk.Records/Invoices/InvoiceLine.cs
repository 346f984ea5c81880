using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>One line of an invoice, as printed. Never changed or deleted: the database refuses.</summary>
public sealed class InvoiceLine
{
    private InvoiceLine()
    {
    }

    public InvoiceLine(int position, string text, string quantity, string rate, Money amount, bool taxed, Money tax)
    {
        Position = position;
        Text = text;
        Quantity = quantity;
        Rate = rate;
        Amount = amount;
        Taxed = taxed;
        Tax = tax;
    }

    public int InvoiceId { get; private set; }

    public int Position { get; private set; }

    public string Text { get; private set; } = "";

    /// <summary>The printed quantity with its unit.</summary>
    public string Quantity { get; private set; } = "";

    /// <summary>The printed rate.</summary>
    public string Rate { get; private set; } = "";

    public Money Amount { get; private set; }

    public bool Taxed { get; private set; }

    public Money Tax { get; private set; }

    internal InvoiceLine Turned() => new(Position, Text, Quantity, Rate, -Amount, Taxed, -Tax);
}
