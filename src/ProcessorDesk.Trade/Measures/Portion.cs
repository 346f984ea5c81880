namespace ProcessorDesk.Trade;

/// <summary>A part of a weight as a small scale can weigh it, worked exactly from the figure that was keyed.</summary>
internal static class Portion
{
    /// <summary>Down to the division.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The whole is below zero.</exception>
    public static Weight Down(Weight whole, Ratio part, ScaleDivision small) => small.FromCount(Exactly(whole, part, small).Down());

    /// <summary>To the nearest division, halves away from zero.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The whole is below zero.</exception>
    public static Weight Nearest(Weight whole, Ratio part, ScaleDivision small) =>
        small.FromCount(Exactly(whole, part, small).Nearest());

    private static Ratio Exactly(Weight whole, Ratio part, ScaleDivision small)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(whole, Weight.Zero);
        return KeyedFigure.InMilligrams(whole, WeightUnit.Pound) * part / KeyedFigure.MilligramsPerStep(small);
    }
}
