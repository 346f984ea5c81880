using System.Numerics;

namespace ProcessorDesk.Trade;

/// <summary>
/// Splits a whole count by shares so that the parts sum to it: each part rounded down, the remainders given out one by
/// one to the largest fractions, the earlier share first where fractions are equal.
/// </summary>
public static class LargestRemainder
{
    /// <param name="total">Zero or more.</param>
    /// <param name="shares">Zero or more each, not all zero.</param>
    /// <exception cref="ArgumentException">No share, a share below zero, or all zero.</exception>
    public static long[] Split(long total, IReadOnlyList<long> shares) =>
        Split(total, [.. shares.Select(share => new BigInteger(share))]);

    /// <inheritdoc cref="Split(long, IReadOnlyList{long})"/>
    internal static long[] Split(long total, IReadOnlyList<Ratio> shares)
    {
        var common = shares.Aggregate(BigInteger.One, (product, share) =>
            product / BigInteger.GreatestCommonDivisor(product, share.Denominator) * share.Denominator);
        return Split(total, [.. shares.Select(share => share.Numerator * (common / share.Denominator))]);
    }

    private static long[] Split(long total, BigInteger[] shares)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(total);
        if (shares.Any(share => share.Sign < 0) || shares.All(share => share.IsZero))
            throw new ArgumentException("Shares are zero or more and at least one is above zero.", nameof(shares));
        var whole = shares.Aggregate(BigInteger.Zero, (sum, share) => sum + share);
        var parts = new long[shares.Length];
        var remainders = new BigInteger[shares.Length];
        for (var i = 0; i < parts.Length; i++)
            parts[i] = (long)BigInteger.DivRem(total * shares[i], whole, out remainders[i]);
        var left = total - parts.Sum();
        foreach (var i in Enumerable.Range(0, parts.Length).OrderByDescending(i => remainders[i]).Take((int)left))
            parts[i]++;
        return parts;
    }
}
