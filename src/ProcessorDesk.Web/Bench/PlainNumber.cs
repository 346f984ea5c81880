using System.Globalization;
using System.Text.RegularExpressions;

namespace ProcessorDesk.Web.Bench;

/// <summary>Figures as they go in and out of the bench: plain decimals with a point, no commas, no exponent.</summary>
public static partial class PlainNumber
{
    /// <summary>Said of a text that is no such figure.</summary>
    private const string Unreadable = "Give a plain decimal with a point, for example 12.5.";

    /// <summary>Longest text that is looked at.</summary>
    private const int Longest = 60;

    /// <summary>A figure within its ends, both in.</summary>
    public static Taken<decimal> Read(string text, decimal least, decimal most)
    {
        if (text.Length > Longest || !Plain().IsMatch(text))
            return Take.Bad<decimal>(Unreadable);
        return decimal.TryParse(text, NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var figure)
            && figure >= least && figure <= most
            ? Take.Good<decimal>(figure)
            : Take.Bad<decimal>($"Give a figure from {Print(least)} to {Print(most)}.");
    }

    /// <summary>"1,234.5678": to four decimals, as a person reads it.</summary>
    public static string Print(decimal figure) => figure.ToString("#,0.####", CultureInfo.InvariantCulture);

    /// <summary>The same figure without zeros at its end.</summary>
    public static decimal Bare(decimal figure) => figure / 1.0000000000000000000000000000m;

    /// <summary>A part of a whole in percent.</summary>
    public static decimal Percent(Ratio part) => (part * Ratio.Of(100, 1)).ToDecimal();

    /// <summary>Pounds of a weight: the shortest decimal that is not more than a milligram off, which is what rounding on the way may have cost.</summary>
    public static decimal Pounds(Weight weight) =>
        Enumerable.Range(0, 7).Select(decimals => decimal.Round(weight.Pounds, decimals)).First(pounds => Math.Abs((Weight.FromPounds(pounds) - weight).Milligrams) <= 1);

    /// <inheritdoc cref="Pounds(Weight)"/>
    public static decimal? Pounds(Weight? weight) => weight is { } known ? Pounds(known) : null;

    /// <summary>"48 lb", to four decimals.</summary>
    public static string PrintPounds(Weight weight) => Print(Pounds(weight)) + " lb";

    /// <summary>"0.48"; a fraction where no short decimal is the same: "134/105".</summary>
    public static string Print(Ratio ratio) => Ratio.FromDecimal(ratio.ToDecimal()) == ratio ? ratio.ToDecimal().ToString("0.##########", CultureInfo.InvariantCulture) : ratio.ToString();

    [GeneratedRegex(@"^-?(?:[0-9]+\.?[0-9]*|\.[0-9]+)\z", RegexOptions.CultureInvariant)]
    private static partial Regex Plain();
}
