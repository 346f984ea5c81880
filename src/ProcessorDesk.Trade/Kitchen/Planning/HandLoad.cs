namespace ProcessorDesk.Trade.Kitchen.Planning;

/// <summary>One load as arranged by hand.</summary>
public sealed record HandLoad(IReadOnlyList<HandPiece> Pieces)
{
    /// <summary>The plan as if arranged by hand, for the hand to start from: its loads, batch after batch.</summary>
    public static IReadOnlyList<HandLoad> Of(DayPlan plan) =>
        [.. from batch in plan.Batches
            from load in batch.Division.Loads
            select new HandLoad([.. load.Pieces.Select(piece => new HandPiece(batch.Parts[piece.Part].Id, piece.Green))])];
}
