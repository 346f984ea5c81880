namespace ProcessorDesk.Trade;

/// <summary>Percents as people type them: "70", "70 %", "6.25%", "12 1/2 %".</summary>
/// <remarks>A bare figure is a percent, never a fraction of one. Up to four decimals, never rounded.</remarks>
public static class ProportionText
{
    /// <param name="text">What was typed.</param>
    /// <param name="most">The most that makes sense; 100 % where nothing is said.</param>
    public static Parsed<Proportion> Parse(string? text, Proportion? most = null)
    {
        var limit = most ?? Proportion.Whole;
        if (NumberText.Plain(text) is not { } plain)
            return Parsed<Proportion>.Bad("Type a percent, for example 70 or 6.25.");
        if (plain[0] == '-')
            return Parsed<Proportion>.Bad("A percent is never below zero here. Type it without the minus.");
        if (NumberText.Read(plain[^1] == '%' ? plain[..^1] : plain) is not { } percent)
            return Parsed<Proportion>.Bad($"{NumberText.Quote(text)} does not read as a percent. Type it like 70 or 6.25.");
        if (percent > limit.ToRatio() * Ratio.Of(100, 1))
            return Parsed<Proportion>.Bad($"That is more than {limit.Print()}. Type the percent again.");
        var parts = percent * Ratio.Of(10_000, 1);
        return parts.Denominator.IsOne
            ? Parsed<Proportion>.Good(Proportion.FromPartsPerMillion((int)parts.Numerator))
            : Parsed<Proportion>.Bad("Type the percent with no more than four decimals, for example 6.25.");
    }
}
