using ProcessorDesk.Trade.Yields;

namespace ProcessorDesk.Web.Bench.Calculators;

/// <summary>A butcher's yield test.</summary>
public static class YieldTestCalculator
{
    private const decimal MostDollars = 1_000_000m;

    private static readonly Field<Weight> s_purchased = Fields.Pounds("purchasedLb", "Bought") with { Example = "12" };
    private static readonly Field<decimal> s_price = Fields.Number("pricePerLb", "Price paid", "$ / lb", 0m, MostDollars, "6.65");

    private static readonly Field<YieldTestPart> s_parts = Fields.Parts("part", "Parts cut off", "name;lb;pricePerLb", "kidneys;1;6.10", Part) with
    {
        IsRequired = false,
        Hint = "With what each is worth a pound; 0 for what is thrown away",
    };

    private static readonly Field<Weight> s_usable = Fields.Pounds("usableLb", "Usable") with { Example = "6" };

    public static Calculator Calculator { get; } = new(
        "yield-test", "Butcher's yield test", "What a pound of the usable meat costs once a piece is cut, and the factor to the price paid.",
        [s_purchased, s_price, s_parts, s_usable],
        [
            Figure.Number("usableValue", "Usable meat bears", "$", "dollars paid less what the parts are worth"),
            Figure.Number("costPerUsableLb", "A usable pound", "$", "dollars a usable pound"),
            Figure.Number("yieldPct", "Usable, of what was bought", "%"),
            Figure.Number("costFactor", "Cost factor", "", "cost of a usable pound over the price paid"),
        ],
        ["It holds for pieces bought and cut the same way."],
        "purchasedLb=12&pricePerLb=6.65&part=fat;3;0&part=kidneys;1;6.10&part=flanks;1.5;4.60&part=loss;0.5;0&usableLb=6",
        Work);

    private static Outcome Work(Entries entries)
    {
        var test = new YieldTest(entries.Of(s_purchased), entries.Of(s_price), entries.AllOf(s_parts), entries.Of(s_usable));
        if (test.Findings() is { Count: > 0 } findings)
            return Refusal.Of(StatusCodes.Status400BadRequest, findings, FieldOf);
        return new Answer(test.Working())
        {
            Published = [("Paid less what the parts are worth, over the usable weight", YieldTest.Source)],
            Figures =
            {
                ["usableValue"] = test.UsableValue.ToDecimal(),
                ["costPerUsableLb"] = test.CostPerUsablePound.ToDecimal(),
                ["yieldPct"] = PlainNumber.Percent(test.Yield),
                ["costFactor"] = test.CostFactor.ToDecimal(),
            },
        };
    }

    private static Taken<YieldTestPart> Part(string[] parts) =>
        Fields.Name(parts[0]).Then(name => Fields.ZeroOrMore(parts[1]).Then(weight => PlainNumber.Read(parts[2], 0m, MostDollars).Then(price =>
            Take.Good<YieldTestPart>(new YieldTestPart(name, weight, price)))));

    private static Field FieldOf(string field) => field switch
    {
        nameof(YieldTest.Purchased) => s_purchased,
        nameof(YieldTest.PricePerPound) => s_price,
        nameof(YieldTest.Parts) => s_parts,
        _ => s_usable,
    };
}
