using System.Globalization;
using System.Text.RegularExpressions;

namespace ProcessorDesk.Trade;

/// <summary>
/// The figures people type, read exactly: "12", "12.4", ".5", "1,234.5", "1/2", "12 1/2". A comma stands only between
/// thousands, so that "12,4" is asked about and never read as 124.
/// </summary>
internal static partial class NumberText
{
    /// <summary>Longest text that is looked at.</summary>
    private const int Longest = 60;

    /// <summary>A figure as part of a larger pattern: fraction or mixed number, or decimal; no sign.</summary>
    public const string Figure =
        @"(?:(?:(?<whole>[0-9]{1,5})\s+)?(?<part>[0-9]{1,5})\s*/\s*(?<over>[0-9]{1,5})"
        + @"|(?:[0-9]{1,3}(?:,[0-9]{3})+|[0-9]+)(?:\.[0-9]*)?|\.[0-9]+)";

    private static readonly (char Sign, string Words)[] s_signs =
    [
        ('½', " 1/2"), ('¼', " 1/4"), ('¾', " 3/4"), ('⅓', " 1/3"), ('⅔', " 2/3"),
        ('⅛', " 1/8"), ('⅜', " 3/8"), ('⅝', " 5/8"), ('⅞', " 7/8"),
        ('\u2212', "-"), ('\u2012', "-"), ('\u2013', "-"), ('\u2014', "-"), ('\u2010', "-"), ('\u2011', "-"), ('\u2044', "/"),
    ];

    /// <summary>The text in lower case, trimmed, with the signs of other keyboards spelt out; null where nothing was typed.</summary>
    public static string? Plain(string? typed)
    {
        if (string.IsNullOrWhiteSpace(typed))
            return null;
        var text = typed.ToLowerInvariant();
        foreach (var (sign, words) in s_signs)
            text = text.Replace(sign.ToString(), words, StringComparison.Ordinal);
        return text.Trim();
    }

    /// <summary>The figure; null where it cannot be read, has a sign, or is nonsense such as "1/0" or "12 3/2".</summary>
    public static Ratio? Read(string text)
    {
        if (text.Length > Longest || FigureAlone().Match(text.Trim()) is not { Success: true } match)
            return null;
        if (match.Groups["over"].Success)
            return Fraction(Whole(match.Groups["whole"].Value), Whole(match.Groups["part"].Value), Whole(match.Groups["over"].Value));
        var digits = match.Value.Replace(",", "", StringComparison.Ordinal);
        return decimal.TryParse(digits, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value) && Digits(digits) <= 27
            ? Ratio.FromDecimal(value)
            : null;
    }

    /// <summary>What was typed, in quotes, cut short where it is long.</summary>
    public static string Quote(string? typed)
    {
        var text = (typed ?? "").Trim();
        return text.Length <= 24 ? $"\"{text}\"" : $"\"{text[..24]}…\"";
    }

    private static int Digits(string text) => text.Count(char.IsAsciiDigit);

    private static int Whole(string text) => text.Length == 0 ? 0 : int.Parse(text, NumberStyles.None, CultureInfo.InvariantCulture);

    private static Ratio? Fraction(int whole, int part, int over) =>
        over == 0 || (whole > 0 && part >= over) ? null : Ratio.Of(whole, 1) + Ratio.Of(part, over);

    [GeneratedRegex("^" + Figure + @"\z", RegexOptions.CultureInvariant)]
    private static partial Regex FigureAlone();
}
