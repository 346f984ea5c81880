using System.Numerics;
using System.Text.RegularExpressions;

namespace ProcessorDesk.Trade;

/// <summary>Temperatures as people type them: "38", "38 F", "38.5 °F", "3.5 C", "-4". A bare figure is in °F.</summary>
/// <remarks>
/// Kept in hundredths of °F. What falls between is rounded so that it never helps a verdict: down where the reading has to
/// show heat, up where it has to show cold.
/// </remarks>
public static partial class TemperatureText
{
    /// <summary>Lowest reading taken: -80 °F.</summary>
    public static Temperature Lowest { get; } = Temperature.FromFahrenheit(-80m);

    /// <summary>Highest reading taken: 600 °F.</summary>
    public static Temperature Highest { get; } = Temperature.FromFahrenheit(600m);

    /// <summary>For a reading that has to be hot enough: rounded down.</summary>
    public static Parsed<Temperature> ParseShowingHeat(string? text) => Parse(text, Rounding.Floor);

    /// <summary>For a reading that has to be cold enough: rounded up.</summary>
    public static Parsed<Temperature> ParseShowingCold(string? text) => Parse(text, (part, whole) => -Rounding.Floor(-part, whole));

    private static Parsed<Temperature> Parse(string? text, Func<BigInteger, BigInteger, BigInteger> round)
    {
        if (NumberText.Plain(text) is not { } plain)
            return Parsed<Temperature>.Bad("Type a temperature, for example 38 or 3.5 C.");
        if (Reading().Match(plain) is not { Success: true } match || NumberText.Read(match.Groups["figure"].Value) is not { } size)
            return Parsed<Temperature>.Bad($"{NumberText.Quote(text)} does not read as a temperature. Type it like 38 or 3.5 C.");
        var degrees = match.Groups["minus"].Length > 0 ? -size : size;
        var hundredths = match.Groups["scale"].Value is "c"
            ? degrees * Ratio.Of(180, 1) + Ratio.Of(3200, 1)
            : degrees * Ratio.Of(100, 1);
        var rounded = round(hundredths.Numerator, hundredths.Denominator);
        return rounded < Lowest.HundredthsFahrenheit || rounded > Highest.HundredthsFahrenheit
            ? Parsed<Temperature>.Bad("Type a temperature between -80 and 600 °F, or the same in °C with a C behind it.")
            : Parsed<Temperature>.Good(Temperature.FromHundredthsFahrenheit((int)rounded));
    }

    [GeneratedRegex(@"^(?<minus>-?)\s*(?<figure>[0-9.,]+)\s*(?:°|º|deg\.?|degrees)?\s*(?<scale>[fc]?)\.?\z", RegexOptions.CultureInvariant)]
    private static partial Regex Reading();
}
