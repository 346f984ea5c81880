namespace ProcessorDesk.Trade;

/// <summary>
/// The figure a person keyed, found again behind a weight. A weight is kept in whole milligrams, so 5 lb is 0.15 mg more
/// than it says; five such steps would no longer fit into 25 lb. The shortest decimal in one of the units that gives the
/// same milligrams is what was keyed; it is never more than half a milligram away.
/// </summary>
internal static class KeyedFigure
{
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

        // It ends with three decimals at the latest: that many of a gram are whole milligrams.
        for (var scale = 1; ; scale *= 10)
        {
            if (Keyed(weight, likely, scale) is { } first)
                return first;
            foreach (var unit in Units)
            {
                if (unit != likely && Keyed(weight, unit, scale) is { } exact)
                    return exact;
            }
        }
    }

    /// <summary>Milligrams in one division, exactly.</summary>
    public static Ratio MilligramsPerStep(ScaleDivision division)
    {
        var (milligrams, divisions) = division.Whole;
        return Ratio.Of(milligrams, divisions);
    }

    private static Ratio? Keyed(Weight weight, WeightUnit unit, long scale)
    {
        var (milligrams, units) = UnitFactors.WholeMilligramsPer(unit);
        var figure = (long)Rounding.Divide(Math.BigMul(weight.Milligrams, units * scale), milligrams);
        return Rounding.Divide(Math.BigMul(figure, milligrams), units * scale) == weight.Milligrams
            ? Ratio.Of(figure, scale) * Ratio.Of(milligrams, units)
            : null;
    }
}
