using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>One lot of an ingredient as it was received. What is left of it is worked out from what was used.</summary>
public sealed class IngredientLot
{
    private IngredientLot()
    {
    }

    public IngredientLot(LotReceipt receipt, DateTime at, int byId)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(receipt.LotCode);
        IngredientId = receipt.IngredientId;
        Supplier = Texts.OrNull(receipt.Supplier);
        LotCode = receipt.LotCode.Trim();
        Establishment = Texts.OrNull(receipt.Establishment);
        ReceivedOn = receipt.ReceivedOn;
        (Amount, Pieces) = (receipt.Amount, receipt.Pieces);
        (Nitrite, Nitrate) = (receipt.Nitrite, receipt.Nitrate);
        Note = Texts.OrNull(receipt.Note);
        (At, ById) = (at, byId);
    }

    public int Id { get; private set; }

    public int IngredientId { get; private set; }

    public Ingredient Ingredient { get; private set; } = null!;

    public string? Supplier { get; private set; }

    /// <summary>As the maker printed it, or as the shop named it.</summary>
    public string LotCode { get; private set; } = "";

    /// <summary>Number of the inspected establishment, for meat bought in; null where there is none.</summary>
    public string? Establishment { get; private set; }

    public DateOnly ReceivedOn { get; private set; }

    /// <summary>Received by weight; zero for casings.</summary>
    public Weight Amount { get; private set; }

    /// <summary>Received by the piece; zero for all else.</summary>
    public int Pieces { get; private set; }

    public Proportion Nitrite { get; private set; }

    public Proportion Nitrate { get; private set; }

    public string? Note { get; private set; }

    public DateTime At { get; private set; }

    public int ById { get; private set; }

    /// <summary>Nothing of it is on the shelf any more, whatever was noted of its use.</summary>
    public DateTime? UsedUpAt { get; private set; }

    public int? UsedUpById { get; private set; }

    /// <summary>It was written down wrongly, and never used.</summary>
    public DateTime? StruckAt { get; private set; }

    public int? StruckById { get; private set; }

    public string? StruckBecause { get; private set; }

    internal void UseUp(DateTime at, int byId) => (UsedUpAt, UsedUpById) = (at, byId);

    internal void FoundMore() => (UsedUpAt, UsedUpById) = (null, null);

    internal void StrikeOut(string because, DateTime at, int byId) => (StruckBecause, StruckAt, StruckById) = (because.Trim(), at, byId);
}
