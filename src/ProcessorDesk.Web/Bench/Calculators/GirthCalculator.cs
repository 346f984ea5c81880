using ProcessorDesk.Trade.Yields;

namespace ProcessorDesk.Web.Bench.Calculators;

/// <summary>A white-tail's weights from the girth of its chest.</summary>
public static class GirthCalculator
{
    private static readonly Field<decimal> s_girth = Fields.Number("girthIn", "Girth", "in", 0m, 1000m, "36") with
    {
        Hint = "Around the chest, close behind the forelegs",
    };

    private static readonly Field<bool> s_fawn = Fields.Choice("age", "Age", ("adult", "Adult", false), ("fawn", "Fawn, in its first year", true));

    public static Calculator Calculator { get; } = new(
        "girth", "Heart girth", "A white-tailed deer's live and field-dressed weight from the girth of its chest, where there is no scale.",
        [s_girth, s_fawn],
        [Figure.Pounds("liveLb", "Live"), Figure.Pounds("dressedLb", "Field-dressed"), Figure.Source],
        ["A single deer may lie well off these lines. Weigh it where you can."],
        "girthIn=36&age=adult",
        Work);

    private static Outcome Work(Entries entries)
    {
        var (inches, fawn) = (entries.Of(s_girth), entries.Of(s_fawn));
        var estimate = HeartGirth.Estimate(inches, fawn);
        if (estimate is not { Live: { } live, Dressed: { } dressed })
            return Refusal.Impossible(s_girth.Name, estimate.Refusal!.Text);
        return new Answer(estimate.Working)
        {
            Published = [($"From {PlainNumber.Print(HeartGirth.LeastInches)} to {PlainNumber.Print(HeartGirth.MostInches)} in only.", HeartGirth.Source)],
            Figures = { ["liveLb"] = PlainNumber.Pounds(live), ["dressedLb"] = PlainNumber.Pounds(dressed), ["source"] = HeartGirth.Source },
        };
    }
}
