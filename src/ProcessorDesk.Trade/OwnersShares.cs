namespace ProcessorDesk.Trade;

/// <summary>
/// How an animal is divided among its owners: exact fractions in a fixed order. Weights are divided in scale divisions and money in
/// cents, by largest remainder, the earlier owner first where they tie, so that the parts sum to the whole, as printed and exactly.
/// </summary>
/// <remarks>Range: any number of owners; the fractions come to one, or to less while a part of the animal is nobody's yet.</remarks>
public sealed class OwnersShares
{
    private OwnersShares(IReadOnlyList<Ratio> fractions, Ratio unshared) => (Fractions, Unshared) = (fractions, unshared);

    /// <summary>One owner of the whole.</summary>
    public static OwnersShares Whole { get; } = Of([Ratio.One]);

    public IReadOnlyList<Ratio> Fractions { get; }

    /// <summary>What is nobody's yet; zero once the animal is wholly shared.</summary>
    public Ratio Unshared { get; }

    /// <param name="fractions">Zero or more each, one at most together.</param>
    /// <exception cref="ArgumentException">No fraction, one below zero, or more than one together.</exception>
    public static OwnersShares Of(IReadOnlyList<Ratio> fractions)
    {
        var left = fractions.Aggregate(Ratio.One, (rest, fraction) => rest - fraction);
        if (fractions.Count == 0 || fractions.Any(fraction => fraction < Ratio.Zero) || left < Ratio.Zero)
            throw new ArgumentException("Owners' fractions are zero or more, and one at most together.", nameof(fractions));
        return new OwnersShares([.. fractions], left);
    }

    /// <summary>Each owner's part of a weight, in the order of the owners: on the division as printed, and to the milligram.</summary>
    /// <param name="whole">Below zero only for what an animal gained.</param>
    /// <param name="division">The division the parts are printed at.</param>
    public IReadOnlyList<Weight> Divide(Weight whole, ScaleDivision division) => whole.IsNegative
        ? [.. Divide(-whole, division).Select(part => -part)]
        : [.. division.Parts(whole, Counts(division.CountOf(whole))).Take(Fractions.Count)];

    /// <summary>Each owner's part of an amount, in whole cents; below zero for a credit.</summary>
    public IReadOnlyList<Money> Divide(Money whole) => whole.IsNegative
        ? [.. Divide(-whole).Select(part => -part)]
        : [.. Counts(whole.Cents).Take(Fractions.Count).Select(Money.FromCents)];

    /// <summary>One whole number for each owner, and one more for what is nobody's yet; together the count.</summary>
    private long[] Counts(long count)
    {
        var fractions = Unshared.IsZero ? Fractions : Fractions.Append(Unshared);
        Ratio[] exact = [.. fractions.Select(fraction => fraction * Ratio.Of(count, 1))];
        var counts = Array.ConvertAll(exact, part => part.Down());
        var left = count - counts.Sum();
        foreach (var i in Enumerable.Range(0, counts.Length).OrderByDescending(i => exact[i] - Ratio.Of(counts[i], 1)).Take((int)left))
            counts[i]++;
        return counts;
    }
}
