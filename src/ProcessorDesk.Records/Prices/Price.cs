using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>One price of a list. A rate by the pound is in cents per pound, anything else an amount each.</summary>
public sealed class Price
{
    private Price()
    {
    }

    public Price(PriceFor @for, string text, ChargeBasis basis, int cents, bool taxed, Species? species = null, ArrivalState? arrivalState = null, int? productId = null)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(cents);
        For = @for;
        Text = text.Trim();
        Basis = basis;
        Cents = cents;
        Taxed = taxed;
        Species = species;
        ArrivalState = arrivalState;
        ProductId = productId;
    }

    public int Id { get; private set; }

    public int PriceListId { get; private set; }

    public PriceFor For { get; private set; }

    /// <summary>What the invoice line says.</summary>
    public string Text { get; private set; } = "";

    public ChargeBasis Basis { get; private set; }

    public int Cents { get; private set; }

    public bool Taxed { get; private set; }

    public Species? Species { get; private set; }

    /// <summary>Null for any.</summary>
    public ArrivalState? ArrivalState { get; private set; }

    public int? ProductId { get; private set; }

    public bool IsByPound => Basis != ChargeBasis.Each;

    public Money Each => Money.FromCents(Cents);

    public PricePerPound Rate => PricePerPound.FromCents(Cents);
}
