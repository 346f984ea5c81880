namespace ProcessorDesk.Trade.Formulas;

/// <summary>How many pieces a meat block takes.</summary>
/// <param name="Count">Whole ones, rounded up.</param>
public sealed record ScaledPieces(PieceLine Line, long Count);
