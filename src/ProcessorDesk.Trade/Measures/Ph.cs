using System.Globalization;

namespace ProcessorDesk.Trade;

/// <summary>An acidity in hundredths of a pH: 530 is pH 5.30. The lower, the sourer.</summary>
/// <remarks>
/// Range: 0.00 to 14.00. Granularity: 0.01, as fine as a shop's meter shows. Equality and order are those of the count.
/// The default is pH 0.00, which no meat has and no typed text gives.
/// </remarks>
public readonly record struct Ph : IComparable<Ph>
{
    private const int Most = 1400;

    private Ph(int hundredths) => Hundredths = hundredths;

    public int Hundredths { get; private init; }

    /// <exception cref="ArgumentOutOfRangeException">Outside 0.00 to 14.00.</exception>
    public static Ph FromHundredths(int hundredths)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(hundredths);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(hundredths, Most);
        return new Ph(hundredths);
    }

    public static bool operator <(Ph left, Ph right) => left.Hundredths < right.Hundredths;

    public static bool operator >(Ph left, Ph right) => left.Hundredths > right.Hundredths;

    public static bool operator <=(Ph left, Ph right) => left.Hundredths <= right.Hundredths;

    public static bool operator >=(Ph left, Ph right) => left.Hundredths >= right.Hundredths;

    public int CompareTo(Ph other) => Hundredths.CompareTo(other.Hundredths);

    /// <summary>"pH 5.30".</summary>
    public string Print() => "pH " + (Hundredths / 100m).ToString("0.00", CultureInfo.InvariantCulture);

    public override string ToString() => Print();
}
