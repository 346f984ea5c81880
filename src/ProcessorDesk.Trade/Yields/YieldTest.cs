namespace ProcessorDesk.Trade.Yields;

/// <summary>
/// A butcher's yield test: a piece is bought, cut and weighed, and what the usable meat then costs by the pound is worked out. All
/// figures are exact fractions of the figures keyed; money is in dollars and rounded by whoever prints it.
/// </summary>
/// <remarks>Method: food-cost textbooks (B).</remarks>
/// <param name="Purchased">What was bought; above zero.</param>
/// <param name="PricePerPound">Dollars a pound paid for it; above zero.</param>
/// <param name="Parts">What was cut off, with what it is worth; loss may be named or left out.</param>
/// <param name="Usable">The meat it was bought for; above zero.</param>
public sealed record YieldTest(Weight Purchased, decimal PricePerPound, IReadOnlyList<YieldTestPart> Parts, Weight Usable)
{
    public const string Source = "butcher's test of food-cost textbooks";
    public const string Mark = "B";

    /// <summary>What can't be worked with, by field; empty where the test can be reckoned.</summary>
    public IReadOnlyList<Finding> Findings()
    {
        var findings = new List<Finding>();
        if (!Purchased.IsPositive)
            findings.Add(new Finding(nameof(Purchased), "Type what was bought: more than nothing.", ExactPounds.Print(Purchased), "more than 0 lb"));
        if (PricePerPound <= 0m)
            findings.Add(new Finding(nameof(PricePerPound), "Type what a pound cost. Without a price there is no factor to it.", Price(PricePerPound), "more than $0"));
        if (!Usable.IsPositive)
            findings.Add(new Finding(nameof(Usable), "Nothing usable is left, so a pound of it has no price.", ExactPounds.Print(Usable), "more than 0 lb"));
        findings.AddRange(Parts.Where(part => part.Weight.IsNegative || part.PricePerPound < 0m)
            .Select(part => new Finding(nameof(Parts), $"{part.Name}: neither weight nor price is below zero.")));
        if (findings.Count == 0 && Loss < Ratio.Zero)
            findings.Add(new Finding(nameof(Usable), "More came out than was bought. Weigh again, or look for a part weighed twice.",
                Pounds(ExactPounds.Of(Purchased) - Loss), "at most " + ExactPounds.Print(Purchased)));
        return findings;
    }

    /// <summary>Dollars paid.</summary>
    public Ratio PurchaseCost => ExactPounds.Of(Purchased) * Ratio.FromDecimal(PricePerPound);

    /// <summary>Dollars the parts are worth together.</summary>
    public Ratio PartsValue => Parts.Aggregate(Ratio.Zero, (sum, part) => sum + Value(part));

    /// <summary>Dollars the usable meat has to bear: paid less the parts' worth; below zero where the parts alone were worth more.</summary>
    public Ratio UsableValue => PurchaseCost - PartsValue;

    /// <summary>Dollars a pound of usable meat.</summary>
    /// <exception cref="InvalidOperationException">The test can't be reckoned: <see cref="Findings"/> says why.</exception>
    public Ratio CostPerUsablePound => Reckoned(UsableValue) / ExactPounds.Of(Usable);

    /// <summary>The usable part of what was bought.</summary>
    /// <inheritdoc cref="CostPerUsablePound" path="/exception"/>
    public Ratio Yield => Reckoned(ExactPounds.Of(Usable)) / ExactPounds.Of(Purchased);

    /// <summary>Cost of a usable pound over the price paid: what a new price is multiplied by as long as the cutting stays the same.</summary>
    /// <inheritdoc cref="CostPerUsablePound" path="/exception"/>
    public Ratio CostFactor => CostPerUsablePound / Ratio.FromDecimal(PricePerPound);

    /// <summary>Pounds that are in no part and not usable: lost in cutting.</summary>
    public Ratio Loss =>
        Parts.Aggregate(ExactPounds.Of(Purchased) - ExactPounds.Of(Usable), (left, part) => left - ExactPounds.Of(part.Weight));

    /// <summary>Dollars a portion of usable meat costs.</summary>
    /// <inheritdoc cref="CostPerUsablePound" path="/exception"/>
    public Ratio PortionCost(Weight portion) => CostPerUsablePound * ExactPounds.Of(portion);

    /// <summary>The arithmetic, a line a step, as a hand would write it.</summary>
    /// <inheritdoc cref="CostPerUsablePound" path="/exception"/>
    public IReadOnlyList<string> Working() =>
    [
        $"bought: {ExactPounds.Print(Purchased)} × {Price(PricePerPound)} = {Dollars(PurchaseCost)}",
        .. Parts.Select(part => $"less {part.Name}: {ExactPounds.Print(part.Weight)} × {Price(part.PricePerPound)} = {Dollars(Value(part))}"),
        $"left for {ExactPounds.Print(Usable)} usable: {Dollars(UsableValue)}",
        $"{Dollars(UsableValue)} ÷ {ExactPounds.Print(Usable)} = {Dollars(CostPerUsablePound)} a usable pound",
        FormattableString.Invariant($"{Dollars(CostPerUsablePound)} ÷ {Price(PricePerPound)} = cost factor {CostFactor.ToDecimal():0.0000}"),
        $"{ExactPounds.Print(Usable)} ÷ {ExactPounds.Print(Purchased)} = yield {Yield.PrintPercent()}",
    ];

    private static Ratio Value(YieldTestPart part) => ExactPounds.Of(part.Weight) * Ratio.FromDecimal(part.PricePerPound);

    private static string Price(decimal dollars) => FormattableString.Invariant($"${dollars:0.00##}");

    /// <summary>To the cent, or to four decimals where there are more than cents.</summary>
    private static string Dollars(Ratio dollars) =>
        dollars.Sign < 0 ? "-" + Dollars(-dollars) : FormattableString.Invariant($"${dollars.ToDecimal():0.00##}");

    private static string Pounds(Ratio pounds) => FormattableString.Invariant($"{pounds.ToDecimal():0.####} lb");

    private Ratio Reckoned(Ratio figure) => Findings() is [var finding, ..] ? throw new InvalidOperationException(finding.Text) : figure;
}
