using System.Numerics;

namespace ProcessorDesk.Trade;

/// <summary>
/// Sums, products and quotients: in 64 bits where both fit, with the products in between in 128, which they cannot leave; else
/// in whole numbers without bounds.
/// </summary>
public readonly partial record struct Ratio
{
    public static Ratio operator +(Ratio left, Ratio right)
    {
        if (left._wide is not null || right._wide is not null)
            return Of(left.Numerator * right.Denominator + right.Numerator * left.Denominator, left.Denominator * right.Denominator);
        var common = CommonDivisor(left.Below, right.Below);
        var (leftBelow, rightBelow) = (left.Below / common, right.Below / common);
        var above = Math.BigMul(left._numerator, rightBelow) + Math.BigMul(right._numerator, leftBelow);
        if (common == 1)
            return InLowestTerms(above, Math.BigMul(leftBelow, rightBelow));

        // What the sum still shares with the product of both denominators, it shares with their common divisor.
        var shared = CommonDivisor((long)(above % common), common);
        return InLowestTerms(above / shared, Math.BigMul(leftBelow, right.Below / shared));
    }

    public static Ratio operator -(Ratio left, Ratio right) => left + -right;

    public static Ratio operator -(Ratio ratio) =>
        ratio._wide is null ? new Ratio(-ratio._numerator, ratio.Below) : InLowestTerms(-ratio.Numerator, ratio.Denominator);

    public static Ratio operator *(Ratio left, Ratio right)
    {
        if (left._wide is not null || right._wide is not null)
            return Of(left.Numerator * right.Numerator, left.Denominator * right.Denominator);
        var first = CommonDivisor(left._numerator, right.Below);
        var second = CommonDivisor(right._numerator, left.Below);
        return InLowestTerms(
            Math.BigMul(left._numerator / first, right._numerator / second), Math.BigMul(left.Below / second, right.Below / first));
    }

    /// <exception cref="DivideByZeroException">The divisor is zero.</exception>
    public static Ratio operator /(Ratio left, Ratio right) => left * Turned(right);

    private static Ratio Turned(Ratio ratio)
    {
        if (ratio.IsZero)
            throw new DivideByZeroException();
        if (ratio._wide is not null)
            return InLowestTerms(ratio.Denominator * ratio.Sign, BigInteger.Abs(ratio.Numerator));
        return new Ratio(ratio.Below * ratio.Sign, Math.Abs(ratio._numerator));
    }

    private static Ratio InLowestTerms(Int128 numerator, Int128 denominator) =>
        Int128.Abs(numerator) <= long.MaxValue && denominator <= long.MaxValue
            ? new Ratio((long)numerator, (long)denominator)
            : new Ratio(new WideFraction((BigInteger)numerator, (BigInteger)denominator));

    private static Ratio InLowestTerms(BigInteger numerator, BigInteger denominator) =>
        BigInteger.Abs(numerator) <= long.MaxValue && denominator <= long.MaxValue
            ? new Ratio((long)numerator, (long)denominator)
            : new Ratio(new WideFraction(numerator, denominator));

    /// <summary>The greatest common divisor, of either sign; the second is above zero.</summary>
    private static long CommonDivisor(long some, long positive)
    {
        var (larger, smaller) = (positive, Math.Abs(some));
        while (smaller > 1)
            (larger, smaller) = (smaller, larger % smaller);
        return smaller == 1 ? 1 : larger;
    }
}
