using System.Globalization;
using System.Numerics;

namespace ProcessorDesk.Trade;

/// <summary>An exact fraction: a published limit such as 1/6400, an owner's share such as 1/3.</summary>
/// <remarks>
/// Range: unbounded. Granularity: exact; kept in lowest terms with the denominator above zero. Equality and order are
/// those of the number. The default is zero.
/// </remarks>
public readonly partial record struct Ratio : IComparable<Ratio>
{
    private const long TenPlaces = 10_000_000_000;

    // Nearly every figure of a shop fits into 64 bits either side of the line, where arithmetic is many times as fast.
    // One that does not is kept wide, and never otherwise, so that equal figures are equal field by field.
    private readonly long _numerator;
    private readonly long _denominatorLessOne;
    private readonly WideFraction? _wide;

    private Ratio(long numerator, long denominator) => (_numerator, _denominatorLessOne) = (numerator, denominator - 1);

    private Ratio(WideFraction wide) => _wide = wide;

    public BigInteger Numerator => _wide?.Numerator ?? _numerator;

    public BigInteger Denominator => _wide?.Denominator ?? Below;

    public static Ratio Zero => default;

    public static Ratio One => new(1, 1);

    public bool IsZero => Sign == 0;

    public int Sign => _wide?.Numerator.Sign ?? Math.Sign(_numerator);

    /// <summary>The denominator where it fits.</summary>
    private long Below => _denominatorLessOne + 1;

    /// <exception cref="DivideByZeroException">The denominator is zero.</exception>
    public static Ratio Of(BigInteger numerator, BigInteger denominator)
    {
        if (denominator.IsZero)
            throw new DivideByZeroException();
        var common = BigInteger.GreatestCommonDivisor(numerator, denominator) * denominator.Sign;
        return InLowestTerms(numerator / common, denominator / common);
    }

    /// <inheritdoc cref="Of(BigInteger, BigInteger)"/>
    public static Ratio Of(long numerator, long denominator)
    {
        if (denominator <= 0 || numerator == long.MinValue)
            return Of((BigInteger)numerator, denominator);
        var common = CommonDivisor(numerator, denominator);
        return new Ratio(numerator / common, denominator / common);
    }

    /// <summary>Exactly the decimal.</summary>
    public static Ratio FromDecimal(decimal value)
    {
        var (digits, power) = (value, BigInteger.One);
        for (var i = 0; i < value.Scale; i++)
            (digits, power) = (digits * 10m, power * 10);
        return Of(new BigInteger(digits), power);
    }

    /// <summary>One weight over another; the second is not zero.</summary>
    public static Ratio Of(Weight part, Weight whole) => Of(part.Milligrams, whole.Milligrams);

    /// <summary>Nearest decimal to ten places, halves away from zero.</summary>
    public decimal ToDecimal() => (decimal)Nearest(TenPlaces) / TenPlaces;

    public decimal PartsPerMillion => (this * new Ratio(1_000_000, 1)).ToDecimal();

    /// <summary>This part of the weight, to the nearest milligram, halves away from zero.</summary>
    public Weight Times(Weight weight) => Weight.FromMilligrams((long)Nearest(weight.Milligrams));

    /// <summary>This part of the weight, down to the whole milligram.</summary>
    public Weight TimesDown(Weight weight) => Weight.FromMilligrams((long)Down(weight.Milligrams));

    /// <summary>This part of the amount, rounded once to the cent, halves away from zero.</summary>
    public Money Times(Money money) => Money.FromCents((long)Nearest(money.Cents));

    public static bool operator <(Ratio left, Ratio right) => left.CompareTo(right) < 0;

    public static bool operator >(Ratio left, Ratio right) => left.CompareTo(right) > 0;

    public static bool operator <=(Ratio left, Ratio right) => left.CompareTo(right) <= 0;

    public static bool operator >=(Ratio left, Ratio right) => left.CompareTo(right) >= 0;

    public static Ratio Min(Ratio left, Ratio right) => left < right ? left : right;

    public static Ratio Sum(IEnumerable<Ratio> ratios) => ratios.Aggregate(Zero, (sum, ratio) => sum + ratio);

    public int CompareTo(Ratio other) => _wide is null && other._wide is null
        ? Math.BigMul(_numerator, other.Below).CompareTo(Math.BigMul(other._numerator, Below))
        : (Numerator * other.Denominator).CompareTo(other.Numerator * Denominator);

    /// <summary>"41.3 %": the fraction as a percent to one decimal, halves away from zero.</summary>
    public string PrintPercent() => ((decimal)Nearest(1000) / 10m).ToString("0.0", CultureInfo.InvariantCulture) + " %";

    /// <summary>"1/3"; a whole number without its denominator.</summary>
    public override string ToString() => Denominator.IsOne ? $"{Numerator}" : $"{Numerator}/{Denominator}";

    /// <summary>Nearest whole number, halves away from zero.</summary>
    internal long Nearest() => (long)Nearest(1);

    /// <summary>This part of a count, to the nearest whole number, halves away from zero.</summary>
    internal long NearestOf(long count) => (long)Nearest(count);

    /// <summary>Largest whole number not above.</summary>
    internal long Down() => (long)Down(1);

    /// <summary>Nearest whole number to so many times the ratio, halves away from zero.</summary>
    private Int128 Nearest(long times) => _wide is null
        ? Rounding.Divide(Math.BigMul(_numerator, times), Below)
        : (Int128)Rounding.Divide(_wide.Numerator * times, _wide.Denominator);

    /// <summary>Largest whole number not above so many times the ratio.</summary>
    private Int128 Down(long times) => _wide is null
        ? Rounding.Floor(Math.BigMul(_numerator, times), Below)
        : (Int128)Rounding.Floor(_wide.Numerator * times, _wide.Denominator);

    private sealed record WideFraction(BigInteger Numerator, BigInteger Denominator);
}
