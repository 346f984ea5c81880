using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>What went of one lot into one load. Never changed; a wrong one is struck.</summary>
public sealed class LotUse
{
    private LotUse()
    {
    }

    /// <param name="position">The line of the formula it is for; null for the added fat and for casings.</param>
    /// <param name="amount">By weight; zero for casings.</param>
    /// <param name="pieces">By the piece; zero for all else.</param>
    public LotUse(int loadId, int lotId, int? position, Weight amount, int pieces, DateTime at, int byId)
    {
        LoadId = loadId;
        LotId = lotId;
        Position = position;
        (Amount, Pieces) = (amount, pieces);
        (At, ById) = (at, byId);
    }

    public int Id { get; private set; }

    public int LoadId { get; private set; }

    public Load Load { get; private set; } = null!;

    public int LotId { get; private set; }

    public IngredientLot Lot { get; private set; } = null!;

    public int? Position { get; private set; }

    public Weight Amount { get; private set; }

    public int Pieces { get; private set; }

    public DateTime At { get; private set; }

    public int ById { get; private set; }

    public DateTime? StruckAt { get; private set; }

    public int? StruckById { get; private set; }

    public string? StruckBecause { get; private set; }

    internal void StrikeOut(string because, DateTime at, int byId) => (StruckBecause, StruckAt, StruckById) = (because.Trim(), at, byId);
}
