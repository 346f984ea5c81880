namespace ProcessorDesk.Trade.Kitchen.Planning;

/// <summary>One load as arranged by hand.</summary>
/// <param name="Number">What it is called; it stays the same while meat is moved about.</param>
public sealed record HandLoad(int Number, IReadOnlyList<HandPiece> Pieces)
{
    /// <summary>The plan as if arranged by hand, for the hand to start from: its loads, batch after batch, numbered from one.</summary>
    public static IReadOnlyList<HandLoad> Of(DayPlan plan) =>
        [.. plan.Batches.SelectMany(batch => batch.Division.Loads, (batch, load) => (batch.Parts, load.Pieces))
            .Select((load, i) => new HandLoad(i + 1, [.. load.Pieces.Select(piece => new HandPiece(load.Parts[piece.Part].Id, piece.Green))]))];
}
