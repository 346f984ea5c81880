namespace ProcessorDesk.Trade.Yields;

/// <summary>Pounds as an exact fraction, from the figure that was keyed and not from its whole milligrams.</summary>
internal static class ExactPounds
{
    public static Ratio Of(Weight weight) =>
        KeyedFigure.InMilligrams(weight, WeightUnit.Pound) / Ratio.FromDecimal(UnitFactors.MilligramsPerPound);

    /// <summary>"6 lb", "1.5 lb": as keyed, to four decimals at most.</summary>
    public static string Print(Weight weight) => FormattableString.Invariant($"{Of(weight).ToDecimal():0.####} lb");
}
