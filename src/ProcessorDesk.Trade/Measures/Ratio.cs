using System.Globalization;
using System.Numerics;

namespace ProcessorDesk.Trade;

/// <summary>An exact fraction: a published limit such as 1/6400, an owner's share such as 1/3.</summary>
/// <remarks>
/// Range: unbounded. Granularity: exact; kept in lowest terms with the denominator above zero. Equality and order are
/// those of the number. The default is zero.
/// </remarks>
public readonly record struct Ratio : IComparable<Ratio>
{
    private readonly BigInteger _denominatorLessOne;

    private Ratio(BigInteger numerator, BigInteger denominator)
    {
        Numerator = numerator;
        _denominatorLessOne = denominator - 1;
    }

    public BigInteger Numerator { get; }

    public BigInteger Denominator => _denominatorLessOne + 1;

    public static Ratio Zero => default;

    public static Ratio One => Of(1, 1);

    public bool IsZero => Numerator.IsZero;

    public int Sign => Numerator.Sign;

    /// <exception cref="DivideByZeroException">The denominator is zero.</exception>
    public static Ratio Of(BigInteger numerator, BigInteger denominator)
    {
        if (denominator.IsZero)
            throw new DivideByZeroException();
        var common = BigInteger.GreatestCommonDivisor(numerator, denominator) * denominator.Sign;
        return new Ratio(numerator / common, denominator / common);
    }

    /// <summary>Exactly the decimal.</summary>
    public static Ratio FromDecimal(decimal value)
    {
        var scale = value.Scale;
        var digits = value;
        for (var i = 0; i < scale; i++)
            digits *= 10m;
        return Of(new BigInteger(digits), BigInteger.Pow(10, scale));
    }

    /// <summary>One weight over another; the second is not zero.</summary>
    public static Ratio Of(Weight part, Weight whole) => Of(part.Milligrams, whole.Milligrams);

    /// <summary>Nearest decimal to ten places, halves away from zero.</summary>
    public decimal ToDecimal() => (decimal)Rounding.Divide(Numerator * 10_000_000_000, Denominator) / 10_000_000_000m;

    public decimal PartsPerMillion => (this * Of(1_000_000, 1)).ToDecimal();

    /// <summary>This part of the weight, to the nearest milligram, halves away from zero.</summary>
    public Weight Times(Weight weight) =>
        Weight.FromMilligrams((long)Rounding.Divide(Numerator * weight.Milligrams, Denominator));

    /// <summary>This part of the weight, down to the whole milligram.</summary>
    public Weight TimesDown(Weight weight) =>
        Weight.FromMilligrams((long)Rounding.Floor(Numerator * weight.Milligrams, Denominator));

    /// <summary>This part of the amount, rounded once to the cent, halves away from zero.</summary>
    public Money Times(Money money) => Money.FromCents((long)Rounding.Divide(Numerator * money.Cents, Denominator));

    public static Ratio operator +(Ratio left, Ratio right) =>
        Of(left.Numerator * right.Denominator + right.Numerator * left.Denominator, left.Denominator * right.Denominator);

    public static Ratio operator -(Ratio left, Ratio right) => left + -right;

    public static Ratio operator -(Ratio ratio) => new(-ratio.Numerator, ratio.Denominator);

    public static Ratio operator *(Ratio left, Ratio right) =>
        Of(left.Numerator * right.Numerator, left.Denominator * right.Denominator);

    public static Ratio operator /(Ratio left, Ratio right) =>
        Of(left.Numerator * right.Denominator, left.Denominator * right.Numerator);

    public static bool operator <(Ratio left, Ratio right) => left.CompareTo(right) < 0;

    public static bool operator >(Ratio left, Ratio right) => left.CompareTo(right) > 0;

    public static bool operator <=(Ratio left, Ratio right) => left.CompareTo(right) <= 0;

    public static bool operator >=(Ratio left, Ratio right) => left.CompareTo(right) >= 0;

    public static Ratio Min(Ratio left, Ratio right) => left < right ? left : right;

    public static Ratio Sum(IEnumerable<Ratio> ratios) => ratios.Aggregate(Zero, (sum, ratio) => sum + ratio);

    public int CompareTo(Ratio other) =>
        (Numerator * other.Denominator).CompareTo(other.Numerator * Denominator);

    /// <summary>"41.3 %": the fraction as a percent to one decimal, halves away from zero.</summary>
    public string PrintPercent() =>
        ((decimal)Rounding.Divide(Numerator * 1000, Denominator) / 10m).ToString("0.0", CultureInfo.InvariantCulture) + " %";

    /// <summary>"1/3"; a whole number without its denominator.</summary>
    public override string ToString() => Denominator.IsOne ? $"{Numerator}" : $"{Numerator}/{Denominator}";
}
