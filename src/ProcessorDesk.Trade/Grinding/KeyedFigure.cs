namespace ProcessorDesk.Trade.Grinding;

/// <summary>
/// The figure a person keyed, found again behind a weight. A weight is kept in whole milligrams, so 5 lb is 0.15 mg more
/// than it says; five such steps would no longer fit into 25 lb. The shortest decimal in one of the units that gives the
/// same milligrams is what was keyed.
/// </summary>
internal static class KeyedFigure
{
    private const int MostDecimals = 3;

    private static readonly WeightUnit[] Units = [WeightUnit.Pound, WeightUnit.Ounce, WeightUnit.Kilogram, WeightUnit.Gram];

    /// <summary>The keyed figure as an exact number of divisions; the division's own unit is tried first.</summary>
    public static Ratio InDivisions(Weight weight, ScaleDivision division)
    {
        if (weight.IsZero)
            return Ratio.Zero;
        for (var decimals = 0; decimals <= MostDecimals; decimals++)
        {
            if (Keyed(weight, division.Unit, decimals) is { } figure)
                return Ratio.FromDecimal(figure) / Ratio.FromDecimal(division.Step);
            foreach (var unit in Units)
            {
                if (Keyed(weight, unit, decimals) is { } other)
                    return Ratio.FromDecimal(other * UnitFactors.MilligramsPer(unit)) / MilligramsPerStep(division);
            }
        }

        return Ratio.Of(weight.Milligrams, 1) / MilligramsPerStep(division);
    }

    private static decimal? Keyed(Weight weight, WeightUnit unit, int decimals)
    {
        var figure = decimal.Round(weight.In(unit), decimals, MidpointRounding.AwayFromZero);
        return Weight.From(figure, unit) == weight ? figure : null;
    }

    private static Ratio MilligramsPerStep(ScaleDivision division) =>
        Ratio.FromDecimal(division.Step * UnitFactors.MilligramsPer(division.Unit));
}
