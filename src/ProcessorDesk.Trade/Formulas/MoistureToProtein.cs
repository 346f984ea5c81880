namespace ProcessorDesk.Trade.Formulas;

/// <summary>Moisture to protein of sausage, by analysis. Source: as quoted in several texts (mark B).</summary>
public static class MoistureToProtein
{
    /// <summary>Semi-dry sausage has at most so much moisture to one of protein: 3.1.</summary>
    public static Ratio MostSemiDry { get; } = Ratio.Of(31, 10);

    /// <summary>Dry sausage has at most so much moisture to one of protein: 1.9.</summary>
    public static Ratio MostDry { get; } = Ratio.Of(19, 10);

    /// <summary>What a sausage may be called; compared exactly, a figure on the line counting as the drier.</summary>
    /// <exception cref="DivideByZeroException">There is no protein.</exception>
    public static Dryness Of(Proportion moisture, Proportion protein) => (moisture.ToRatio() / protein.ToRatio()) switch
    {
        var ratio when ratio <= MostDry => Dryness.Dry,
        var ratio when ratio <= MostSemiDry => Dryness.SemiDry,
        _ => Dryness.Moist,
    };
}
