namespace ProcessorDesk.Trade;

/// <summary>
/// The figure a person keyed, found again behind a weight. A weight is kept in whole milligrams, so 5 lb is 0.15 mg more
/// than it says; five such steps would no longer fit into 25 lb. The shortest decimal in one of the units that gives the
/// same milligrams is what was keyed; it is never more than half a milligram away.
/// </summary>
internal static class KeyedFigure
{
    private const int MostDecimals = 3;

    private static readonly WeightUnit[] Units = [WeightUnit.Pound, WeightUnit.Ounce, WeightUnit.Kilogram, WeightUnit.Gram];

    /// <summary>The keyed figure as an exact number of divisions; the division's own unit is tried first.</summary>
    public static Ratio InDivisions(Weight weight, ScaleDivision division) =>
        InMilligrams(weight, division.Unit) / MilligramsPerStep(division);

    /// <summary>The keyed figure as an exact number of milligrams.</summary>
    /// <param name="likely">The unit tried first.</param>
    public static Ratio InMilligrams(Weight weight, WeightUnit likely)
    {
        if (weight.IsZero)
            return Ratio.Zero;
        for (var decimals = 0; decimals <= MostDecimals; decimals++)
        {
            if (Keyed(weight, likely, decimals) is { } first)
                return first;
            foreach (var unit in Units)
            {
                if (Keyed(weight, unit, decimals) is { } exact)
                    return exact;
            }
        }

        return Ratio.Of(weight.Milligrams, 1);
    }

    /// <summary>Milligrams in one division, exactly.</summary>
    public static Ratio MilligramsPerStep(ScaleDivision division) =>
        Ratio.FromDecimal(division.Step * UnitFactors.MilligramsPer(division.Unit));

    private static Ratio? Keyed(Weight weight, WeightUnit unit, int decimals)
    {
        var figure = decimal.Round(weight.In(unit), decimals, MidpointRounding.AwayFromZero);
        return Weight.From(figure, unit) == weight ? Ratio.FromDecimal(figure * UnitFactors.MilligramsPer(unit)) : null;
    }
}
