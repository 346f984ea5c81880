using System.Text.RegularExpressions;

namespace ProcessorDesk.Trade;

/// <summary>Divisions of scales as people type them: "0.5 lb", "0.01lb", "1/2 lb", "0.1 g", "5 g".</summary>
/// <remarks>The unit is always typed; the range is that of <see cref="ScaleDivision"/>.</remarks>
public static partial class ScaleDivisionText
{
    public static Parsed<ScaleDivision> Parse(string? text)
    {
        if (NumberText.Plain(text) is not { } plain)
            return Parsed<ScaleDivision>.Bad("Type the smallest step the scale shows, for example 0.5 lb.");
        if (plain[0] == '-')
            return Parsed<ScaleDivision>.Bad("A step is above zero. Type it without the minus.");
        if (FigureAndUnit().Match(plain) is not { Success: true } match || NumberText.Read(match.Groups["figure"].Value) is not { } figure)
            return Parsed<ScaleDivision>.Bad($"{NumberText.Quote(text)} does not read as a step of a scale. Type it like 0.5 lb or 0.1 g.");
        if (Unit(match.Groups["unit"].Value) is not { } unit)
            return Parsed<ScaleDivision>.Bad("Type the unit behind the step: lb, oz, kg or g.");
        return Division(figure, unit) is { } division
            ? Parsed<ScaleDivision>.Good(division)
            : Parsed<ScaleDivision>.Bad("No scale has such a step. Type it like 0.5 lb, 0.01 lb or 0.1 g.");
    }

    private static ScaleDivision? Division(Ratio figure, WeightUnit unit)
    {
        var millionths = figure * Ratio.Of(1_000_000, 1);
        if (!millionths.Denominator.IsOne || millionths > Ratio.Of(1_000_000_000, 1))
            return null;
        var step = (long)millionths.Numerator / 1_000_000m;
        return step >= 0.0001m && step * UnitFactors.MilligramsPer(unit) is (1m or >= 2m) ? ScaleDivision.Of(unit, step) : null;
    }

    private static WeightUnit? Unit(string unit) => unit switch
    {
        "lb" or "lbs" or "pound" or "pounds" => WeightUnit.Pound,
        "oz" or "ounce" or "ounces" => WeightUnit.Ounce,
        "kg" => WeightUnit.Kilogram,
        "g" or "gram" or "grams" => WeightUnit.Gram,
        _ => null,
    };

    [GeneratedRegex(@"^(?<figure>[0-9./, ]*[0-9])\s*(?<unit>[a-z]*)\.?\z", RegexOptions.CultureInvariant)]
    private static partial Regex FigureAndUnit();
}
