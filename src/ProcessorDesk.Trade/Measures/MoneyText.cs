using System.Text.RegularExpressions;

namespace ProcessorDesk.Trade;

/// <summary>Amounts of money and rates as people type them: "12", "12.50", "$1,234.50"; "1.25", "$1.25 / lb".</summary>
/// <remarks>Zero or more; whole cents, never rounded.</remarks>
public static partial class MoneyText
{
    /// <summary>The most a person can mean: $1,000,000.00.</summary>
    public static Money Most { get; } = Money.FromDollars(1_000_000m);

    public static Parsed<Money> Parse(string? text) => Read(NumberText.Plain(text), "amount", "12.50");

    /// <summary>A rate per pound; "/ lb", "per lb" or "a pound" behind it is read over.</summary>
    public static Parsed<PricePerPound> ParsePerPound(string? text)
    {
        var figure = PerPound().Replace(NumberText.Plain(text) ?? "", "");
        return Read(figure.Length == 0 ? null : figure, "price per pound", "1.25").Try(out var money, out var problem)
            ? Parsed<PricePerPound>.Good(PricePerPound.FromCents((int)money.Cents))
            : Parsed<PricePerPound>.Bad(problem);
    }

    private static Parsed<Money> Read(string? plain, string what, string example)
    {
        if (plain is null)
            return Parsed<Money>.Bad($"Type the {what}, for example {example}.");
        if (Minus().IsMatch(plain))
            return Parsed<Money>.Bad($"Type the {what} without the minus.");
        if (NumberText.Read(plain[0] == '$' ? plain[1..] : plain) is not { } dollars)
            return Parsed<Money>.Bad($"{NumberText.Quote(plain)} does not read as money. Type the {what} like {example}.");
        var cents = dollars * Ratio.Of(100, 1);
        if (!cents.Denominator.IsOne)
            return Parsed<Money>.Bad($"Type the {what} in whole cents, for example {example}.");
        return cents > Ratio.Of(Most.Cents, 1)
            ? Parsed<Money>.Bad($"That is more than {Most.Print()}. Type the {what} again.")
            : Parsed<Money>.Good(Money.FromCents((long)cents.Numerator));
    }

    [GeneratedRegex(@"\s*(?:/|per|a)?\s*(?:lbs?\.?|pound)\z", RegexOptions.CultureInvariant)]
    private static partial Regex PerPound();

    [GeneratedRegex(@"^\$?\s*-", RegexOptions.CultureInvariant)]
    private static partial Regex Minus();
}
