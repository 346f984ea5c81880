namespace ProcessorDesk.Trade.Yields;

/// <summary>What a carcass lost in chilling, held against what is published for its species. It warns and never blocks.</summary>
/// <param name="Lost">Hot less chilled; below zero where it gained.</param>
/// <param name="Part">The same as a part of the hot weight, exactly.</param>
/// <param name="Published">Null where nobody has published a figure for the species.</param>
/// <param name="Verdict">Inside the usual range, measured below it by the source itself (inside the extreme), outside, or no range.</param>
/// <param name="Standing">The verdict in a sentence that says what to look at.</param>
public sealed record ChillStatement(Weight Lost, Ratio Part, ChillLoss? Published, YieldVerdict Verdict, string Standing)
{
    public bool IsFlagged => Verdict == YieldVerdict.Outside;

    /// <param name="hot">Above zero.</param>
    /// <param name="chilled">Zero or more; the weight after the first day.</param>
    /// <exception cref="ArgumentOutOfRangeException">A weight is outside its range.</exception>
    public static ChillStatement Of(Species species, Weight hot, Weight chilled)
    {
        var part = ChillLoss.Measured(hot, chilled);
        var published = ChillLoss.For(species);
        var (verdict, standing) = published is null ? (YieldVerdict.NoRange, "No figure is published for this species.") : Judge(part, published);
        return new ChillStatement(hot - chilled, part, published, verdict, standing);
    }

    private static (YieldVerdict Verdict, string Standing) Judge(Ratio part, ChillLoss published)
    {
        var range = $"{published.PrintRange()} published for the first day ({published.Source})";
        if (part > published.High.ToRatio())
            return (YieldVerdict.Outside, $"This is more than the {range}: hung longer than a day, dry or moving air, or a wrong weight.");
        if (part >= published.Low.ToRatio())
            return (YieldVerdict.InsideUsual, $"This is inside the {range}.");
        if (published.LeastMeasured is { } least && part >= least.ToRatio())
            return (YieldVerdict.InsideExtreme, $"This is below the {range}, though as little was measured.");
        return (YieldVerdict.Outside, part.Sign < 0
            ? $"It weighs more chilled than hot, against the {range}: a wet carcass, or a wrong weight."
            : $"This is less than the {range}: weighed before it was chilled through, washed late, or a wrong weight.");
    }
}
