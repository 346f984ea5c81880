using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>A lot and what was noted of its use.</summary>
/// <param name="IsOpen">Neither used up nor struck out.</param>
public sealed record LotOnHand(
    int Id, int IngredientId, string LotCode, string? Supplier, DateOnly ReceivedOn, Weight Amount, Weight Used, int Pieces, int PiecesUsed, Proportion Nitrite, Proportion Nitrate, bool IsOpen)
{
    /// <summary>Received less used; below zero where more was noted than came in.</summary>
    public Weight Left => Amount - Used;

    public int PiecesLeft => Pieces - PiecesUsed;
}
