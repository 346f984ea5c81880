using System.Globalization;

namespace ProcessorDesk.Trade;

/// <summary>A rate in whole cents per pound; not an amount of money.</summary>
/// <remarks>
/// Range: zero to 2,147,483,647 cents, the range of its column. Granularity: one cent. Equality and order are those of the
/// count. The default is free of charge.
/// </remarks>
public readonly record struct PricePerPound : IComparable<PricePerPound>
{
    private PricePerPound(int centsPerPound) => CentsPerPound = centsPerPound;

    public int CentsPerPound { get; private init; }

    public static PricePerPound FromCents(int centsPerPound)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(centsPerPound);
        return new PricePerPound(centsPerPound);
    }

    /// <summary>
    /// The charge for a weight: the weight as printed at the division, times the rate, rounded once to the cent, halves
    /// away from zero. An owner with a pocket calculator gets the same.
    /// </summary>
    public Money For(Weight weight, ScaleDivision division)
    {
        var pounds = division.Unit == WeightUnit.Pound
            ? division.Figure(weight)
            : division.Figure(weight) * UnitFactors.MilligramsPer(division.Unit) / UnitFactors.MilligramsPerPound;
        return Money.FromCents(Rounding.ToLong(pounds * CentsPerPound));
    }

    public static bool operator <(PricePerPound left, PricePerPound right) => left.CentsPerPound < right.CentsPerPound;

    public static bool operator >(PricePerPound left, PricePerPound right) => left.CentsPerPound > right.CentsPerPound;

    public static bool operator <=(PricePerPound left, PricePerPound right) => left.CentsPerPound <= right.CentsPerPound;

    public static bool operator >=(PricePerPound left, PricePerPound right) => left.CentsPerPound >= right.CentsPerPound;

    public int CompareTo(PricePerPound other) => CentsPerPound.CompareTo(other.CentsPerPound);

    /// <summary>"$1.25 / lb".</summary>
    public string Print() => "$" + (CentsPerPound / 100m).ToString("N2", CultureInfo.InvariantCulture) + " / lb";

    public override string ToString() => Print();
}
