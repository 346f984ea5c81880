using System.Text.RegularExpressions;

namespace ProcessorDesk.Trade;

/// <summary>Acidities as people type them: "5.3", "5.30", "pH 5.3".</summary>
/// <remarks>
/// From 3.00 to 8.00, the acidities meat and sausage have; what lies outside is a meter that is off or a slip of the key. What falls between
/// two hundredths is rounded up, so that it never helps to show that the meat is sour enough.
/// </remarks>
public static partial class PhText
{
    /// <summary>Lowest reading taken: pH 3.00.</summary>
    public static Ph Lowest { get; } = Ph.FromHundredths(300);

    /// <summary>Highest reading taken: pH 8.00.</summary>
    public static Ph Highest { get; } = Ph.FromHundredths(800);

    public static Parsed<Ph> Parse(string? text)
    {
        if (NumberText.Plain(text) is not { } plain)
            return Parsed<Ph>.Bad("Type the pH, for example 5.3.");
        if (Reading().Match(plain) is not { Success: true } match || NumberText.Read(match.Groups["figure"].Value) is not { } figure)
            return Parsed<Ph>.Bad($"{NumberText.Quote(text)} does not read as a pH. Type it like 5.3.");
        return figure < OfHundredths(Lowest.Hundredths) || figure > OfHundredths(Highest.Hundredths)
            ? Parsed<Ph>.Bad("Type a pH between 3.00 and 8.00. If the meter shows another, check it against its buffers and read again.")
            : Parsed<Ph>.Good(Ph.FromHundredths((int)-(figure * Ratio.Of(-100, 1)).Down()));
    }

    private static Ratio OfHundredths(int hundredths) => Ratio.Of(hundredths, 100);

    [GeneratedRegex(@"^(?:ph\s*)?(?<figure>[0-9.]+)\z", RegexOptions.CultureInvariant)]
    private static partial Regex Reading();
}
