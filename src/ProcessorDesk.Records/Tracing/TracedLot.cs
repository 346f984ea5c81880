using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>A lot of an ingredient, or of fat or meat bought in, and what went of it into the batches of a trace.</summary>
/// <param name="Amount">Received, by weight; zero for casings.</param>
/// <param name="Pieces">Received, by the piece; zero for all else.</param>
/// <param name="Uses">Of a trace by this lot all there were; otherwise those in the batches of the trace. Struck ones too.</param>
public sealed record TracedLot(
    int Id, string Ingredient, IngredientKind Kind, string LotCode, string? Supplier, string? Establishment, DateOnly ReceivedOn, Weight Amount, int Pieces,
    DateTime? UsedUpAt, string? StruckBecause, IReadOnlyList<TracedUse> Uses)
{
    public bool GoesByPiece => Kind == IngredientKind.Casing;

    /// <summary>Noted and not struck, exactly.</summary>
    public Weight Used => Uses.Where(use => use.Stands).Aggregate(Weight.Zero, (sum, use) => sum + use.Amount);

    public int PiecesUsed => Uses.Where(use => use.Stands).Sum(use => use.Pieces);

    /// <summary>What was received less all that was noted: on the shelf, or never noted where it is used up. Of a trace by this lot alone.</summary>
    public Weight Rest => Amount - Used;

    public int PiecesLeft => Pieces - PiecesUsed;
}

/// <summary>What of a lot went into a load.</summary>
public sealed record TracedUse(int Id, int LotId, int BatchId, int BatchNumber, int LoadNumber, Weight Amount, int Pieces, DateTime? StruckAt, string? StruckBecause)
{
    public bool Stands => StruckAt is null;
}
