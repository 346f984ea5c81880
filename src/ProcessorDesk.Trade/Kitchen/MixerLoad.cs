namespace ProcessorDesk.Trade.Kitchen;

/// <summary>One filling of the mixer as planned: pieces of the parts of the batch.</summary>
public sealed record MixerLoad(IReadOnlyList<LoadPiece> Pieces)
{
    public Weight Lean => Sum(piece => piece.Lean);

    public Weight AddedFat => Sum(piece => piece.AddedFat);

    public Weight Green => Sum(piece => piece.Green);

    /// <summary>Lean and added fat: what cure, salt and spice are weighed against.</summary>
    public Weight MeatBlock => Lean + AddedFat;

    private Weight Sum(Func<LoadPiece, Weight> of) => Pieces.Aggregate(Weight.Zero, (sum, piece) => sum + of(piece));
}

/// <summary>What of one part goes into one load.</summary>
/// <param name="Part">Its place among the parts of the batch.</param>
public sealed record LoadPiece(int Part, Weight Lean, Weight AddedFat, Weight Green);
