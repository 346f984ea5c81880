using System.Numerics;

namespace ProcessorDesk.Trade.Tests.Measures;

/// <summary>A fraction by the schoolbook, in whole numbers without bounds and never reduced: what Ratio is held against.</summary>
internal readonly record struct Fraction(BigInteger Above, BigInteger Below)
{
    public static Fraction Of(Ratio ratio) => new(ratio.Numerator, ratio.Denominator);

    public static Fraction Of(decimal value) => new(new BigInteger(value * 1_000_000_000_000m), 1_000_000_000_000);

    public static Fraction operator +(Fraction left, Fraction right) =>
        new(left.Above * right.Below + right.Above * left.Below, left.Below * right.Below);

    public static Fraction operator -(Fraction left, Fraction right) =>
        new(left.Above * right.Below - right.Above * left.Below, left.Below * right.Below);

    public static Fraction operator *(Fraction left, Fraction right) => new(left.Above * right.Above, left.Below * right.Below);

    public static Fraction operator /(Fraction left, Fraction right) =>
        new(left.Above * right.Below * right.Above.Sign, left.Below * BigInteger.Abs(right.Above));

    /// <summary>Whether it is the same number, and that one in lowest terms with the denominator above zero.</summary>
    public bool Is(Ratio ratio) =>
        Above * ratio.Denominator == ratio.Numerator * Below
        && ratio.Denominator.Sign > 0 && BigInteger.GreatestCommonDivisor(ratio.Numerator, ratio.Denominator).IsOne;

    public int CompareTo(Fraction other) => (Above * other.Below).CompareTo(other.Above * Below);

    /// <summary>Nearest whole number, halves away from zero.</summary>
    public BigInteger Nearest() => Above.Sign * ((BigInteger.Abs(Above) * 2 + Below) / (Below * 2));

    /// <summary>Largest whole number not above.</summary>
    public BigInteger Down() => Above.Sign < 0 ? -((-Above + Below - 1) / Below) : Above / Below;
}
