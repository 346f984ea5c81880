using System.Globalization;
using System.Text.RegularExpressions;

namespace ProcessorDesk.Trade;

/// <summary>
/// Weights as people type and read them: "12.4", "12.4 lb", "12 lb 6 oz", "12-6", "12lb6oz", "12 1/2 lb", "5.6 kg",
/// "350 g", "6 oz", "1,234.5".
/// </summary>
/// <remarks>What is typed is kept to the nearest milligram, halves away from zero. Zero is a weight; below zero is not.</remarks>
public static partial class WeightText
{
    /// <summary>The most a person can mean: 100,000 lb.</summary>
    public static Weight Most { get; } = Weight.FromPounds(100_000m);

    /// <summary>Reads a weight; a bare figure is in <paramref name="assumed"/>, and "12-6" is always pounds and ounces.</summary>
    public static Parsed<Weight> Parse(string? text, WeightUnit assumed)
    {
        if (NumberText.Plain(text) is not { } plain)
            return Parsed<Weight>.Bad($"Type a weight, for example {Example(assumed)}.");
        if (plain[0] == '-')
            return Parsed<Weight>.Bad("A weight is never below zero. Type it without the minus.");
        if (PoundsThenOunces().Match(plain) is { Success: true } both
            && (both.Groups["unit"].Success || !both.Groups["oz"].Value.Contains('/', StringComparison.Ordinal)))
            return PoundsAndOunces(both.Groups["lb"].Value, both.Groups["oz"].Value, text, assumed);
        if (Dashed().Match(plain) is { Success: true } dashed)
            return PoundsAndOunces(dashed.Groups["lb"].Value, dashed.Groups["oz"].Value, text, assumed);
        return OneFigure().Match(plain) is { Success: true } one
            && NumberText.Read(one.Groups["figure"].Value) is { } figure
            && Unit(one.Groups["unit"].Value, assumed) is { } unit
            ? Kept(In(figure, unit))
            : Unreadable(text, assumed);
    }

    /// <summary>The unit a weight was typed in, the smaller of two; <paramref name="assumed"/> where none is named or nothing can be read.</summary>
    public static WeightUnit UnitOf(string? text, WeightUnit assumed) => NumberText.Plain(text) switch
    {
        null => assumed,
        var plain when PoundsThenOunces().IsMatch(plain) || Dashed().IsMatch(plain) => WeightUnit.Ounce,
        var plain => Unit(OneFigure().Match(plain).Groups["unit"].Value, assumed) ?? assumed,
    };

    /// <summary>"2 lb 3.4 oz", "0.5 oz": the weight at a division of ounces, whole pounds first.</summary>
    /// <exception cref="ArgumentException">The division is not one of ounces.</exception>
    public static string PoundsAndOunces(Weight weight, ScaleDivision ounceDivision)
    {
        if (ounceDivision.Unit != WeightUnit.Ounce)
            throw new ArgumentException("The division is one of ounces.", nameof(ounceDivision));
        var ounces = Math.Abs(ounceDivision.Figure(weight));
        var pounds = decimal.Floor(ounces / UnitFactors.OuncesPerPound);
        var rest = ounces - pounds * UnitFactors.OuncesPerPound;
        var sign = ounceDivision.CountOf(weight) < 0 ? "-" : "";
        var restText = rest.ToString("F" + ounceDivision.Step.Scale, CultureInfo.InvariantCulture) + " oz";
        return sign + (pounds > 0 ? pounds.ToString("N0", CultureInfo.InvariantCulture) + " lb " : "") + restText;
    }

    private static Parsed<Weight> PoundsAndOunces(string poundText, string ounceText, string? typed, WeightUnit assumed)
    {
        if (NumberText.Read(poundText) is not { } pounds || NumberText.Read(ounceText) is not { } ounces)
            return Unreadable(typed, assumed);
        if (!pounds.Denominator.IsOne)
            return Parsed<Weight>.Bad("Type whole pounds before the ounces, for example 12 lb 6 oz.");
        return ounces >= Ratio.Of(UnitFactors.OuncesPerPound, 1)
            ? Parsed<Weight>.Bad("There are 16 ounces to the pound: type less than 16 behind the pounds.")
            : Kept(In(pounds, WeightUnit.Pound) + In(ounces, WeightUnit.Ounce));
    }

    /// <summary>Milligrams, exactly.</summary>
    private static Ratio In(Ratio figure, WeightUnit unit) => figure * Ratio.FromDecimal(UnitFactors.MilligramsPer(unit));

    private static Parsed<Weight> Kept(Ratio milligrams) =>
        milligrams > Ratio.Of(Most.Milligrams, 1)
            ? Parsed<Weight>.Bad("That is more than 100,000 lb. Type the weight again.")
            : Parsed<Weight>.Good(Weight.FromMilligrams((long)Rounding.Divide(milligrams.Numerator, milligrams.Denominator)));

    private static Parsed<Weight> Unreadable(string? typed, WeightUnit assumed) =>
        Parsed<Weight>.Bad($"{NumberText.Quote(typed)} does not read as a weight. Type it like {Example(assumed)}.");

    private static string Example(WeightUnit assumed) => assumed switch
    {
        WeightUnit.Pound => "12.4 or 12 lb 6 oz",
        WeightUnit.Ounce => "6.5 or 12 lb 6 oz",
        WeightUnit.Kilogram => "5.6 or 5.6 kg",
        WeightUnit.Gram => "350 or 350 g",
    };

    private static WeightUnit? Unit(string word, WeightUnit assumed) => word switch
    {
        "" => assumed,
        "lb" or "lbs" or "pound" or "pounds" or "#" => WeightUnit.Pound,
        "oz" or "ozs" or "ounce" or "ounces" => WeightUnit.Ounce,
        "kg" or "kgs" or "kilo" or "kilos" or "kilogram" or "kilograms" => WeightUnit.Kilogram,
        "g" or "gram" or "grams" => WeightUnit.Gram,
        _ => null,
    };

    private const string Pounds = @"\s*(?:lbs?\.?|pounds?|\#)\s*";
    private const string Ounces = @"\s*(?<unit>ozs?\.?|ounces?)?";

    [GeneratedRegex("^(?<lb>" + NumberText.Figure + ")" + Pounds + @"(?:,|-|&|and)?\s*(?<oz>" + NumberText.Figure + ")" + Ounces + @"\z",
        RegexOptions.CultureInvariant)]
    private static partial Regex PoundsThenOunces();

    [GeneratedRegex(@"^(?<lb>[0-9][0-9,]*)\s*-\s*(?<oz>[0-9]+(?:\.[0-9]*)?|\.[0-9]+)\z", RegexOptions.CultureInvariant)]
    private static partial Regex Dashed();

    [GeneratedRegex("^(?<figure>" + NumberText.Figure + @")\s*(?<unit>[a-z]*|\#)\.?\z", RegexOptions.CultureInvariant)]
    private static partial Regex OneFigure();
}
