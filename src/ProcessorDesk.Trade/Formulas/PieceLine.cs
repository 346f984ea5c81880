namespace ProcessorDesk.Trade.Formulas;

/// <summary>What goes by the piece: casings, bags, sticks.</summary>
/// <param name="EachHolds">Green weight one of them holds; above zero.</param>
public sealed record PieceLine(string Name, Weight EachHolds)
{
    /// <summary>What one of them costs; null where nobody said.</summary>
    public Money? Price { get; init; }

    /// <summary>Cents for the pieces a pound of green weight takes, parts of pieces counted; null where a price is not known.</summary>
    internal Ratio? CentsPerPound => Price is { } price
        ? Ratio.Of(price.Cents, 1) * KeyedFigure.InMilligrams(Weight.FromPounds(1m), WeightUnit.Pound) / KeyedFigure.InMilligrams(EachHolds, WeightUnit.Pound)
        : null;

    /// <summary>Pieces for so much green weight as weighed, up to whole ones.</summary>
    public long CountFor(Weight green) => CountFor(KeyedFigure.InMilligrams(green, WeightUnit.Pound));

    /// <summary>Pieces for so much green weight, up to whole ones.</summary>
    /// <param name="greenMilligrams">Exactly.</param>
    internal long CountFor(Ratio greenMilligrams)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(EachHolds, Weight.Zero);
        return -(-(greenMilligrams / KeyedFigure.InMilligrams(EachHolds, WeightUnit.Pound))).Down();
    }
}
