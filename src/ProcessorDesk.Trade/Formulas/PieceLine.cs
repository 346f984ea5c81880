namespace ProcessorDesk.Trade.Formulas;

/// <summary>What goes by the piece: casings, bags, sticks.</summary>
/// <param name="EachHolds">Green weight one of them holds; above zero.</param>
public sealed record PieceLine(string Name, Weight EachHolds)
{
    /// <summary>Pieces for so much green weight, up to whole ones.</summary>
    /// <param name="greenMilligrams">Exactly.</param>
    internal long CountFor(Ratio greenMilligrams)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(EachHolds, Weight.Zero);
        return -(-(greenMilligrams / KeyedFigure.InMilligrams(EachHolds, WeightUnit.Pound))).Down();
    }
}
