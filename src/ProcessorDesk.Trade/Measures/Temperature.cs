using System.Globalization;

namespace ProcessorDesk.Trade;

/// <summary>A temperature in hundredths of a degree Fahrenheit.</summary>
/// <remarks>
/// Range: the 32-bit range of its column. Granularity: 0.01 °F, so that a probe's tenth of a degree in either scale is kept.
/// Equality and order are those of the count. The default is 0 °F. A reading in °C is turned with the rounding that does not
/// help a verdict: down where heat is to be shown, up where cold is.
/// </remarks>
public readonly record struct Temperature : IComparable<Temperature>
{
    private Temperature(int hundredthsFahrenheit) => HundredthsFahrenheit = hundredthsFahrenheit;

    public int HundredthsFahrenheit { get; private init; }

    public decimal Fahrenheit => HundredthsFahrenheit / 100m;

    /// <summary>The whole degree at or below, as a lethality row is read.</summary>
    public int WholeFahrenheitDown => decimal.ToInt32(decimal.Floor(Fahrenheit));

    public static Temperature FromHundredthsFahrenheit(int hundredths) => new(hundredths);

    /// <summary>To the nearest hundredth, halves away from zero.</summary>
    public static Temperature FromFahrenheit(decimal degrees) => new(checked((int)Rounding.ToLong(degrees * 100m)));

    /// <summary>From °C, down to the hundredth: for readings that must show heat.</summary>
    public static Temperature FromCelsiusDown(decimal degrees) => new(decimal.ToInt32(decimal.Floor(degrees * 180m + 3200m)));

    /// <summary>From °C, up to the hundredth: for readings that must show cold.</summary>
    public static Temperature FromCelsiusUp(decimal degrees) => new(decimal.ToInt32(decimal.Ceiling(degrees * 180m + 3200m)));

    public static bool operator <(Temperature left, Temperature right) => left.HundredthsFahrenheit < right.HundredthsFahrenheit;

    public static bool operator >(Temperature left, Temperature right) => left.HundredthsFahrenheit > right.HundredthsFahrenheit;

    public static bool operator <=(Temperature left, Temperature right) => left.HundredthsFahrenheit <= right.HundredthsFahrenheit;

    public static bool operator >=(Temperature left, Temperature right) => left.HundredthsFahrenheit >= right.HundredthsFahrenheit;

    public int CompareTo(Temperature other) => HundredthsFahrenheit.CompareTo(other.HundredthsFahrenheit);

    /// <summary>"152.0 °F".</summary>
    public string Print() => Fahrenheit.ToString("0.0#", CultureInfo.InvariantCulture) + " °F";

    public override string ToString() => Print();
}
