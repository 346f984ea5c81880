namespace ProcessorDesk.Trade.Yields;

/// <summary>What a weight will probably give: the typical figure and its ranges, to the milligram.</summary>
/// <param name="Typical">By the published rule.</param>
/// <param name="UsualLow">Low end of the range most results fall in; null where none is published.</param>
/// <param name="UsualHigh">High end of it.</param>
/// <param name="ExtremeLow">Low end of the widest published range; null where none is published.</param>
/// <param name="ExtremeHigh">High end of it.</param>
/// <param name="Source">Who published the rule.</param>
/// <param name="Mark">How the source was read: A, B, C, M, or "–".</param>
public sealed record YieldForecast(
    Weight Typical, Weight? UsualLow, Weight? UsualHigh, Weight? ExtremeLow, Weight? ExtremeHigh, string Source, string Mark)
{
    /// <summary>Estimates are printed to a tenth of a pound: more would claim what no ratio knows.</summary>
    public static ScaleDivision PrintedAt { get; } = ScaleDivision.Of(WeightUnit.Pound, 0.1m);

    /// <summary>Low end of the widest range there is; null where none is published.</summary>
    public Weight? Low => ExtremeLow ?? UsualLow;

    /// <summary>High end of the widest range there is; null where none is published.</summary>
    public Weight? High => ExtremeHigh ?? UsualHigh;

    /// <summary>"107.8 lb, usually 102.4 to 113.1, at the extremes 91.6 to 123.9".</summary>
    public string Print()
    {
        var division = PrintedAt;
        var text = division.Print(Typical);
        if (UsualLow is { } usualLow && UsualHigh is { } usualHigh)
            text += $", usually {division.PrintFigure(usualLow)} to {division.PrintFigure(usualHigh)}";
        if (ExtremeLow is { } low && ExtremeHigh is { } high)
            text += $", at the extremes {division.PrintFigure(low)} to {division.PrintFigure(high)}";
        return text;
    }
}
