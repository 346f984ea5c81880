using ProcessorDesk.Trade.Yields;

namespace ProcessorDesk.Web.Bench.Calculators;

/// <summary>What a carcass loses on its first day, foreseen and measured.</summary>
public static class ChillLossCalculator
{
    private static readonly Field<Species> s_species = SpeciesField.Any;
    private static readonly Field<Weight> s_hot = Fields.Pounds("hotLb", "Hot weight") with { Example = "750" };
    private static readonly Field<Weight> s_chilled = Fields.Pounds("chilledLb", "Chilled weight") with { Example = "726", IsRequired = false, Hint = "Blank to see what to expect" };

    public static Calculator Calculator { get; } = new(
        "chill-loss", "Chill loss", "What a hot carcass will weigh after its first day in the cooler, and how a measured loss stands.",
        [s_species, s_hot, s_chilled],
        [
            Figure.Pounds("lowLb", "Chilled, low", "after the greatest loss published"),
            Figure.Pounds("highLb", "Chilled, high", "after the least loss published"),
            Figure.Number("lossPct", "Lost", "%", "of the hot weight, below zero where it gained; null without a chilled weight") with { MayBeNull = true },
            Figure.Text("verdict", "Against the range", "`insideUsual`, `insideExtreme`, `outside`; null without a chilled weight") with { MayBeNull = true, IsHeadline = true },
            Figure.Source,
        ],
        ["The first day alone. Wet carcasses, moving air and longer hanging lose otherwise."],
        "species=beef&hotLb=750&chilledLb=726",
        Work);

    private static Outcome Work(Entries entries)
    {
        var (species, hot) = (entries.Of(s_species), entries.Of(s_hot));
        if (ChillLoss.For(species) is not { } published)
            return Refusal.Impossible(s_species.Name, "No chill loss is published for this animal.");
        var (low, high) = published.After(hot);
        var measured = entries.Maybe(s_chilled) is { } chilled ? ChillStatement.Of(species, hot, chilled) : null;
        return new Answer([.. Steps(published, hot, low, high, measured)])
        {
            Headline = measured?.Verdict switch
            {
                null => "",
                YieldVerdict.InsideUsual => "Inside the published range",
                YieldVerdict.Outside => "Outside the published range",
                _ => "Below the range, though measured",
            },
            Tone = measured?.IsFlagged is true ? "warn" : "good",
            Published = [($"{published.PrintRange()} of the hot weight", published.Source)],
            Figures =
            {
                ["lowLb"] = PlainNumber.Pounds(low),
                ["highLb"] = PlainNumber.Pounds(high),
                ["lossPct"] = measured is null ? null : PlainNumber.Percent(measured.Part),
                ["verdict"] = measured is null ? null : Code(measured.Verdict),
                ["source"] = published.Source,
            },
        };
    }

    private static IEnumerable<string> Steps(ChillLoss published, Weight hot, Weight low, Weight high, ChillStatement? measured)
    {
        yield return $"{PlainNumber.PrintPounds(hot)} − {published.High.Print()} = {PlainNumber.PrintPounds(low)}; − {published.Low.Print()} = {PlainNumber.PrintPounds(high)}";
        if (measured is not null)
            yield return $"{PlainNumber.PrintPounds(measured.Lost)} lost ÷ {PlainNumber.PrintPounds(hot)} = {PlainNumber.Print(PlainNumber.Percent(measured.Part))} %. {measured.Standing}";
    }

    private static string Code(YieldVerdict verdict) => verdict switch
    {
        YieldVerdict.InsideUsual => "insideUsual",
        YieldVerdict.InsideExtreme => "insideExtreme",
        YieldVerdict.Outside => "outside",
        YieldVerdict.NoRange => "noRange",
        YieldVerdict.BeyondUsual => "beyondUsual",
    };
}
