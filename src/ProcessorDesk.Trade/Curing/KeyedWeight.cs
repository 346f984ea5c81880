namespace ProcessorDesk.Trade.Curing;

/// <summary>A weight exactly as it was keyed: 4.0001 oz is not a whole number of milligrams, and a cure is worked from what was keyed.</summary>
public sealed record KeyedWeight
{
    private KeyedWeight(Ratio milligrams, Weight kept)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(kept, Weight.Zero);
        (Milligrams, Kept) = (milligrams, kept);
    }

    /// <summary>Milligrams, exactly.</summary>
    public Ratio Milligrams { get; }

    /// <summary>As it is kept: to the nearest milligram, halves away from zero.</summary>
    public Weight Kept { get; }

    /// <summary>A figure as typed, exactly.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is below zero.</exception>
    public static KeyedWeight Of(decimal figure, WeightUnit unit) =>
        new(Ratio.FromDecimal(figure) * Ratio.FromDecimal(UnitFactors.MilligramsPer(unit)), Weight.From(figure, unit));

    /// <summary>The figure found again behind a weight that was kept.</summary>
    /// <param name="likely">The unit it was probably keyed in.</param>
    /// <exception cref="ArgumentOutOfRangeException">It is below zero.</exception>
    public static KeyedWeight Of(Weight kept, WeightUnit likely = WeightUnit.Pound) => new(KeyedFigure.InMilligrams(kept, likely), kept);
}
