namespace ProcessorDesk.Trade.Yields;

/// <summary>How far a yield strays: two factors, of the starting weight or of the typical result.</summary>
/// <param name="Low">Exact factor of the low end.</param>
/// <param name="High">Exact factor of the high end.</param>
/// <param name="OfTypical">Whether the factors are of the typical result rather than of the starting weight.</param>
public sealed record Spread(Ratio Low, Ratio High, bool OfTypical)
{
    /// <summary>So many percent either way of the typical result.</summary>
    public static Spread Around(decimal percent) =>
        new(Ratio.FromDecimal(1m - percent / 100m), Ratio.FromDecimal(1m + percent / 100m), OfTypical: true);

    /// <summary>Between two factors of the starting weight.</summary>
    public static Spread Between(decimal low, decimal high) =>
        new(Ratio.FromDecimal(low), Ratio.FromDecimal(high), OfTypical: false);
}
