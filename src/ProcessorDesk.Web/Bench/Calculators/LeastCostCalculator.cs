using ProcessorDesk.Trade.Blending;

namespace ProcessorDesk.Web.Bench.Calculators;

/// <summary>The cheapest mix of any number of materials.</summary>
public static class LeastCostCalculator
{
    private static readonly Field<Weight> s_block = Fields.Pounds("blockLb", "Meat block") with { Example = "150" };
    private static readonly Field<ScaleDivision> s_division = SplitCalculator.DivisionField with { Default = "0.01" };
    private static readonly Field<Proportion> s_least = Fields.Percent("minFatPct", "Fat at least") with { Default = "0" };
    private static readonly Field<Proportion> s_most = Fields.Percent("maxFatPct", "Fat at most") with { Default = "100" };

    private static readonly Field<BlendMaterial> s_materials = Fields.Parts(
        "material", "Materials", "name;fatPct;pricePerLb;minPct;maxPct;onHandLb", "Beef trim;25;3.10;0;100;", Material) with
    {
        Hint = "Price in dollars and cents; least and most in percent of the block; what is on hand, blank for enough",
    };

    public static Calculator Calculator { get; } = new(
        "least-cost", "Least cost", "The cheapest mix of meats that keeps a band of fat, the least and most of each, and what is on hand. Worked exactly.",
        [s_block, s_division, s_least, s_most, s_materials],
        [
            new("parts", "Materials", FigureKind.Rows, "one for each in the order given, those not used with 0")
            {
                Columns =
                [
                    Figure.Text("name", "Material"), Figure.Number("pct", "Of the block", "%", "exactly"), Figure.Pounds("lb", "Exactly", "unrounded"),
                    Figure.Pounds("weighedLb", "Weigh out", "on the scale's division; they sum to the block"),
                ],
            },
            Figure.Number("costPerLb", "A pound costs", "$", "dollars a pound of the exact mix, unrounded"),
            Figure.Number("fatPct", "Fat", "%", "of the exact mix"),
            new("notes", "Notes", FigureKind.Texts, "what rounding to the scale did to the bounds; empty where all still hold"),
        ],
        ["As good as the fat figures and the prices. Have the trim measured where it matters."],
        "blockLb=150&maxFatPct=30&material=Beef;25;3.10;0;100;&material=Pork;40;1.90;0;100;",
        Work);

    private static Outcome Work(Entries entries)
    {
        var wanted = new BlendWanted(entries.Of(s_block), entries.Of(s_division), new FatBand(entries.Of(s_least), entries.Of(s_most)), entries.AllOf(s_materials));
        if (BlendCheck.Check(wanted) is { Count: > 0 } wrong)
            return Refusal.Of(StatusCodes.Status400BadRequest, wrong, FieldOf);
        var found = LeastCost.Find(wanted);
        if (found.Blend is not { } blend)
            return Refusal.Of(StatusCodes.Status422UnprocessableEntity, found.Findings, FieldOf);
        return new Answer([.. Steps(blend, wanted)])
        {
            Figures =
            {
                ["parts"] = blend.Parts.Select(part => new Dictionary<string, object?>
                {
                    ["name"] = part.Material.Name,
                    ["pct"] = PlainNumber.Percent(part.Share),
                    ["lb"] = part.Pounds.ToDecimal(),
                    ["weighedLb"] = wanted.Division.Figure(part.Weight),
                }).ToList(),
                ["costPerLb"] = blend.CostPerPound.ToDecimal(),
                ["fatPct"] = PlainNumber.Percent(blend.Fat),
                ["notes"] = blend.Notes,
            },
        };
    }

    private static IEnumerable<string> Steps(LeastCostBlend blend, BlendWanted wanted)
    {
        var used = blend.Parts.Where(part => part.Share.Sign > 0).ToList();
        foreach (var part in used)
            yield return $"{part.Material.Name}: {PlainNumber.Print(PlainNumber.Percent(part.Share))} % of {PlainNumber.PrintPounds(wanted.Block)} = {PlainNumber.Print(part.Pounds.ToDecimal())} lb; weigh out {wanted.Division.Print(part.Weight)}";
        yield return $"Fat: {string.Join(" + ", used.Select(part => $"{PlainNumber.Print(PlainNumber.Percent(part.Share))} % × {part.Material.Fat.Print()}"))} = {PlainNumber.Print(PlainNumber.Percent(blend.Fat))} %";
        yield return $"Cost: {string.Join(" + ", used.Select(part => $"{PlainNumber.Print(PlainNumber.Percent(part.Share))} % × {part.Material.Price.Print()}"))} = ${PlainNumber.Print(blend.CostPerPound.ToDecimal())} / lb";
    }

    private static Taken<BlendMaterial> Material(string[] parts) =>
        Fields.Name(parts[0]).Then(name => Fields.Percent(parts[1]).Then(fat => Price(parts[2]).Then(price => Fields.Percent(parts[3]).Then(least => Fields.Percent(parts[4]).Then(most =>
            OnHand(parts[5]).Then(onHand => Take.Good<BlendMaterial>(new BlendMaterial(name, fat, price, least, most, onHand))))))));

    private static Taken<PricePerPound> Price(string text) => PlainNumber.Read(text, 0m, 1_000_000m).Then(_ => Take.Of(MoneyText.ParsePerPound(text)));

    private static Taken<Weight?> OnHand(string text) =>
        text.Length == 0 ? Take.Good<Weight?>(null) : Fields.ZeroOrMore(text).Then(weight => Take.Good<Weight?>(weight));

    private static Field FieldOf(string field) => field switch
    {
        "Block" => s_block,
        "Fat.Least" => s_least,
        "Fat.Most" => s_most,
        _ => s_materials,
    };
}
