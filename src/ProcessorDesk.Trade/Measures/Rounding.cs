using System.Numerics;

namespace ProcessorDesk.Trade;

/// <summary>The project's one rule of rounding to a whole: nearest, halves away from zero.</summary>
internal static class Rounding
{
    public static long ToLong(decimal value) =>
        decimal.ToInt64(decimal.Round(value, 0, MidpointRounding.AwayFromZero));

    /// <summary>Nearest whole of numerator / denominator; the denominator is above zero.</summary>
    public static BigInteger Divide(BigInteger numerator, BigInteger denominator)
    {
        var doubled = BigInteger.Abs(numerator) * 2 + denominator;
        return numerator.Sign * BigInteger.Divide(doubled, denominator * 2);
    }

    /// <inheritdoc cref="Divide(BigInteger, BigInteger)"/>
    public static Int128 Divide(Int128 numerator, long denominator)
    {
        var (quotient, remainder) = Int128.DivRem(numerator, denominator);
        var left = Int128.Abs(remainder);
        return left < denominator - left ? quotient : quotient + Int128.Sign(numerator);
    }

    /// <inheritdoc cref="Floor(BigInteger, BigInteger)"/>
    public static Int128 Floor(Int128 numerator, long denominator)
    {
        var (quotient, remainder) = Int128.DivRem(numerator, denominator);
        return Int128.IsNegative(remainder) ? quotient - 1 : quotient;
    }

    /// <summary>Largest whole not above numerator / denominator; the denominator is above zero.</summary>
    public static BigInteger Floor(BigInteger numerator, BigInteger denominator)
    {
        var quotient = BigInteger.DivRem(numerator, denominator, out var remainder);
        return remainder.Sign < 0 ? quotient - 1 : quotient;
    }
}
