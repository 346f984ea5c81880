using ProcessorDesk.Trade.Blending;

namespace ProcessorDesk.Web.Bench.Calculators;

/// <summary>Two materials to a fat target.</summary>
public static class BlendCalculator
{
    private static readonly Field<Proportion> s_leanFat = Fields.Percent("leanFatPct", "Fat in the lean") with { Example = "2.42" };
    private static readonly Field<Proportion> s_addedFat = Fields.Percent("addedFatPct", "Fat in what is added") with { Example = "65.7" };
    private static readonly Field<Proportion> s_target = Fields.Percent("targetFatPct", "Fat wanted") with { Example = "20" };
    private static readonly Field<Weight> s_block = Fields.Pounds("blockLb", "Meat block");

    public static Calculator Calculator { get; } = new(
        "blend", "Lean and fat", "How much of two materials makes a meat block of the fat wanted: the square.",
        [s_leanFat, s_addedFat, s_target, s_block],
        [
            Figure.Pounds("leanLb", "Lean"),
            Figure.Pounds("addedLb", "Added"),
            Figure.Number("addedPct", "Added, of the block", "%"),
            Figure.Number("fatPct", "Fat in the block", "%", "as wanted: the two weights make it exactly"),
        ],
        ["As good as the two fat figures. Have the trim measured where it matters."],
        "leanFatPct=23&addedFatPct=70&targetFatPct=28&blockLb=500",
        Work);

    private static Outcome Work(Entries entries)
    {
        var block = entries.Of(s_block);
        var square = new LeanFatSquare(entries.Of(s_leanFat), entries.Of(s_addedFat), entries.Of(s_target));
        if (square.Findings() is [var finding, ..])
            return Refusal.Impossible(s_target.Name, finding.Text);
        var pounds = Ratio.FromDecimal(PlainNumber.Pounds(block));
        var (lean, added) = (square.LeanShare * pounds, square.AddedShare * pounds);
        return new Answer([.. Steps(square, PlainNumber.PrintPounds(block), lean, added)])
        {
            Figures =
            {
                ["leanLb"] = lean.ToDecimal(),
                ["addedLb"] = added.ToDecimal(),
                ["addedPct"] = PlainNumber.Percent(square.AddedShare),
                ["fatPct"] = square.Target.Percent,
            },
        };
    }

    private static IEnumerable<string> Steps(LeanFatSquare square, string block, Ratio lean, Ratio added)
    {
        if (square.LeanFat == square.AddedFat)
        {
            yield return "Both have the fat wanted already: nothing is added.";
            yield break;
        }

        var (l, a, t) = (square.LeanFat.Percent, square.AddedFat.Percent, square.Target.Percent);
        yield return $"({PlainNumber.Print(t)} − {PlainNumber.Print(l)}) ÷ ({PlainNumber.Print(a)} − {PlainNumber.Print(l)}) = {PlainNumber.Print(PlainNumber.Percent(square.AddedShare))} % added";
        yield return $"{block} × {PlainNumber.Print(PlainNumber.Percent(square.AddedShare))} % = {PlainNumber.Print(added.ToDecimal())} lb added";
        yield return $"{block} − {PlainNumber.Print(added.ToDecimal())} lb = {PlainNumber.Print(lean.ToDecimal())} lb lean";
    }
}
