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
        var (quotient, remainder) = DivRem(numerator, denominator);
        var left = Math.Abs(remainder);
        return left < denominator - left ? quotient : quotient + Int128.Sign(numerator);
    }

    /// <inheritdoc cref="Floor(BigInteger, BigInteger)"/>
    public static Int128 Floor(Int128 numerator, long denominator)
    {
        var (quotient, remainder) = DivRem(numerator, denominator);
        return remainder < 0 ? quotient - 1 : quotient;
    }

    /// <summary>Largest whole not above numerator / denominator; the denominator is above zero.</summary>
    public static BigInteger Floor(BigInteger numerator, BigInteger denominator)
    {
        var quotient = BigInteger.DivRem(numerator, denominator, out var remainder);
        return remainder.Sign < 0 ? quotient - 1 : quotient;
    }

    /// <summary>The processor divides 64 bits many times as fast as 128.</summary>
    private static (Int128 Quotient, long Remainder) DivRem(Int128 numerator, long denominator)
    {
        if (numerator >= long.MinValue && numerator <= long.MaxValue)
            return Math.DivRem((long)numerator, denominator);
        var (quotient, remainder) = Int128.DivRem(numerator, denominator);
        return (quotient, (long)remainder);
    }
}
