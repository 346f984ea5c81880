namespace ProcessorDesk.Trade.Kitchen.Planning;

/// <summary>What the hand puts of one allotment into one load.</summary>
/// <param name="Allotment">Its number.</param>
/// <param name="Green">Counted in divisions of the bench scale.</param>
public sealed record HandPiece(int Allotment, Weight Green);
