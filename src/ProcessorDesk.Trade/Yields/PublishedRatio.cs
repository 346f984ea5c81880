namespace ProcessorDesk.Trade.Yields;

/// <summary>A published rule from one state of a carcass to another: factor times weight, plus an offset.</summary>
/// <param name="Id">Lasting name; a shop's own figure names the one it stands for.</param>
/// <param name="Species">The species it is used for.</param>
/// <param name="Variant">Empty for the rule that is used unasked; else which animals or cutting it is for.</param>
/// <param name="Factor">Exact.</param>
/// <param name="Offset">Added after the factor; may be negative.</param>
/// <param name="Usual">The range most results fall in; null where none is published.</param>
/// <param name="Extreme">The widest range published; null where none is.</param>
/// <param name="Source">Who published it.</param>
/// <param name="Mark">
/// A read in an official, university or published text; B read as quoted elsewhere; C secondary, for ranges only; M from
/// memory; "–" for common practice without a source.
/// </param>
public sealed record PublishedRatio(
    string Id, IReadOnlyList<Species> Species, CarcassState From, CarcassState To, string Variant,
    Ratio Factor, Weight Offset, Spread? Usual, Spread? Extreme, string Source, string Mark)
{
    /// <summary>What the rule gives for a weight; null where that is not above zero, below the weights it was made for.</summary>
    /// <param name="weight">Zero or more. Every figure is rounded once, to the milligram.</param>
    public YieldForecast? Forecast(Weight weight)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(weight.Milligrams);
        var exact = Factor * Milligrams(weight) + Milligrams(Offset);
        return exact.Sign <= 0
            ? null
            : new YieldForecast(
                Rounded(exact),
                End(Usual?.Low, Usual, exact, weight), End(Usual?.High, Usual, exact, weight),
                End(Extreme?.Low, Extreme, exact, weight), End(Extreme?.High, Extreme, exact, weight),
                Source, Mark);
    }

    private static Weight? End(Ratio? factor, Spread? spread, Ratio typical, Weight from) =>
        factor is { } of && spread is not null ? Rounded(of * (spread.OfTypical ? typical : Milligrams(from))) : null;

    private static Ratio Milligrams(Weight weight) => Ratio.Of(weight.Milligrams, 1);

    private static Weight Rounded(Ratio milligrams) =>
        Weight.FromMilligrams((long)Rounding.Divide(milligrams.Numerator, milligrams.Denominator));
}
