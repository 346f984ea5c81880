namespace ProcessorDesk.Trade;

/// <summary>Whole numbers as people type them: "0", "12", "1,200".</summary>
public static class CountText
{
    /// <summary>The most a person can mean.</summary>
    public const int Most = 1_000_000;

    public static Parsed<int> Parse(string? text)
    {
        if (NumberText.Plain(text) is not { } plain)
            return Parsed<int>.Bad("Type a whole number, for example 12.");
        if (plain[0] == '-')
            return Parsed<int>.Bad("Type zero or more, without the minus.");
        if (NumberText.Read(plain) is not { } figure)
            return Parsed<int>.Bad($"{NumberText.Quote(text)} does not read as a number. Type a whole number like 12.");
        if (!figure.Denominator.IsOne || plain.Contains('/', StringComparison.Ordinal))
            return Parsed<int>.Bad("Type a whole number, without a part of one.");
        return figure > Ratio.Of(Most, 1)
            ? Parsed<int>.Bad("That is more than 1,000,000. Type the number again.")
            : Parsed<int>.Good((int)figure.Numerator);
    }
}
