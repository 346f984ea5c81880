namespace ProcessorDesk.Trade;

/// <summary>Parts of a whole as people type them: "1/2", "1", "0.25", "½".</summary>
/// <remarks>Zero to one thousand, exact.</remarks>
public static class RatioText
{
    public static Parsed<Ratio> Parse(string? text)
    {
        if (NumberText.Plain(text) is not { } plain)
            return Parsed<Ratio>.Bad("Type a part of the whole, for example 1/2, or 1 for all of it.");
        if (plain[0] == '-')
            return Parsed<Ratio>.Bad("A part is never below zero. Type it without the minus.");
        if (NumberText.Read(plain) is not { } ratio)
            return Parsed<Ratio>.Bad($"{NumberText.Quote(text)} does not read as a part. Type it like 1/2, or 1 for all of it.");
        return ratio > Ratio.Of(1000, 1)
            ? Parsed<Ratio>.Bad("That is more than 1,000. Type the part again, for example 1/2.")
            : Parsed<Ratio>.Good(ratio);
    }
}
