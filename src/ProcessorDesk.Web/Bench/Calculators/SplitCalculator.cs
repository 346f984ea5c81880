using ProcessorDesk.Trade.Grinding;

namespace ProcessorDesk.Web.Bench.Calculators;

/// <summary>The lean split over what was asked.</summary>
public static class SplitCalculator
{
    private const string Form = "name;kind;amount;leanPct;additionsPct;lossPct;minLb;stepLb";

    private static readonly Field<Weight> s_lean = Fields.Pounds("leanLb", "Measured lean");

    /// <summary>The division of the scale the meat is weighed on.</summary>
    internal static Field<ScaleDivision> DivisionField { get; } = new(
        "divisionLb", "Scale division", "a plain decimal, 0.0001 to 1,000, to six decimals", Division)
    { Unit = "lb", IsNumber = true, Example = "0.01" };

    private static readonly Field<GrindAsk> s_asks = Fields.Parts("ask", "Asks, in order of importance", Form, "Summer sausage;finished;20;70;3.5;15;0;0", Ask) with
    {
        Hint = "Kind is lean, finished, percent or rest; what a rest asks for is what is left. No smallest run and no step is 0",
    };

    private static readonly Figure[] s_columns =
    [
        Figure.Text("name", "Product"),
        Figure.Pounds("leanLb", "Lean", "the owner's own lean that goes in"),
        Figure.Pounds("fatLb", "Added fat", "from the lean as printed"),
        Figure.Pounds("blockLb", "Meat block", "lean and added fat"),
        Figure.Pounds("greenLb", "Green", "the raw mix, additions in, from the block as printed"),
        Figure.Pounds("finishedLb", "Finished", "after the loss, from the green weight as printed"),
        new("reasons", "Why", FigureKind.Texts, "why it is not what was asked; empty where it is"),
    ];

    public static Calculator Calculator { get; } = new(
        "split", "Split of the grind",
        "The measured lean, split over what the owner asked for, in order. Asks that can't be met in full say why; nothing is lost.",
        [s_lean, DivisionField, s_asks],
        [
            new Figure("allotments", "Allotments", FigureKind.Rows, "one for each ask in the order asked, dropped ones with 0; `plain ground` at the end where there was no rest ask or where one left something")
            {
                Columns = s_columns,
            },
            Figure.Pounds("sumLb", "Sum of the lean", "of all allotments; it is the measured lean, as printed at the division"),
        ],
        ["Each owner's meat is split by itself. Meat on hold is not split at all."],
        "leanLb=40&divisionLb=0.01&ask=Summer sausage;finished;20;70;3.5;15;0;0&ask=Snack sticks;percent;25;70;3.5;40;5;5",
        Work);

    private static Outcome Work(Entries entries)
    {
        var (lean, division, asks) = (entries.Of(s_lean), entries.Of(DivisionField), entries.AllOf(s_asks));
        if (SplitCheck.Check(asks) is [var finding, ..])
            return Refusal.Bad(s_asks.Name, finding.Text);
        if (division.CountOf(lean) == 0)
            return Refusal.Bad(s_lean.Name, $"That is less than one division of {division}.");
        var split = Splitting.Split(lean, asks, GrindAsk.OfRest("plain ground", GrindBlend.Plain), division);
        return new Answer([.. split.Allotments.SelectMany(one => Steps(one, division, lean)), Sum(split, division)])
        {
            Figures =
            {
                ["allotments"] = split.Allotments.Select(one => Row(one, division)).ToList(),
                ["sumLb"] = division.Figure(division.Sum(split.Allotments.Select(one => one.Lean))),
            },
        };
    }

    private static Dictionary<string, object?> Row(Allotment one, ScaleDivision division) => new()
    {
        ["name"] = one.Ask.Name,
        ["leanLb"] = division.Figure(one.Lean),
        ["fatLb"] = division.Figure(one.AddedFat),
        ["blockLb"] = division.Figure(one.MeatBlock),
        ["greenLb"] = division.Figure(one.Green),
        ["finishedLb"] = division.Figure(one.Finished),
        ["reasons"] = one.Reasons,
    };

    private static IEnumerable<string> Steps(Allotment one, ScaleDivision division, Weight all)
    {
        var blend = one.Ask.Blend;
        yield return $"{one.Ask.Name}: {string.Join(' ', one.Reasons.Count > 0 ? one.Reasons : [Asked(one.Ask, division, all)])} → {division.Print(one.Lean)} lean";
        if (division.CountOf(one.Lean) == 0)
            yield break;
        yield return $"{division.Print(one.Lean)} lean + {division.Print(one.AddedFat)} fat = {division.Print(one.MeatBlock)} block ({blend.LeanShare.Print()} lean)";
        if (one.Ask.Blend != GrindBlend.Plain)
            yield return $"{division.Print(one.MeatBlock)} + {blend.Additions.PrintPercent()} added = {division.Print(one.Green)} green; less {blend.Loss.Print()} = {division.Print(one.Finished)} finished";
    }

    /// <summary>How an ask that is met in full comes to its lean.</summary>
    private static string Asked(GrindAsk ask, ScaleDivision division, Weight all) => ask.Kind switch
    {
        AskKind.OwnLean => $"{PlainNumber.PrintPounds(ask.Amount)} of lean",
        AskKind.Finished => $"{PlainNumber.PrintPounds(ask.Amount)} finished ÷ (1 − {ask.Blend.Loss.Print()}) ÷ (1 + {PlainNumber.Print((ask.Blend.Additions * Ratio.Of(100, 1)).ToDecimal())} %) × {ask.Blend.LeanShare.Print()}",
        AskKind.Percent => $"{ask.Percent.Print()} of {division.Print(all)}",
        AskKind.Rest => "what is left",
    };

    private static string Sum(GrindSplit split, ScaleDivision division) =>
        $"{string.Join(" + ", split.Allotments.Select(one => division.PrintFigure(one.Lean)))} = {division.Print(split.Lean)} lean";

    private static Taken<ScaleDivision> Division(string text) => PlainNumber.Read(text, 0.0001m, 1000m).Then(step =>
        decimal.Round(step, 6) == step
            ? Take.Good<ScaleDivision>(ScaleDivision.Of(WeightUnit.Pound, step))
            : Take.Bad<ScaleDivision>("Give a division of no more than six decimals, for example 0.01."));

    private static Taken<GrindAsk> Ask(string[] parts)
    {
        return Fields.Name(parts[0]).Then(_ => Blend(parts)).Then(blend => parts[1] switch
        {
            "lean" => Fields.ZeroOrMore(parts[2]).Then(weight => Take.Good<GrindAsk>(GrindAsk.OfLean(parts[0], weight, blend))),
            "finished" => Fields.ZeroOrMore(parts[2]).Then(weight => Take.Good<GrindAsk>(GrindAsk.OfFinished(parts[0], weight, blend))),
            "percent" => Fields.Percent(parts[2]).Then(percent => Take.Good<GrindAsk>(GrindAsk.OfPercent(parts[0], percent, blend))),
            "rest" => Take.Good<GrindAsk>(GrindAsk.OfRest(parts[0], blend)),
            _ => Take.Bad<GrindAsk>("The kind is lean, finished, percent or rest."),
        });
    }

    private static Taken<GrindBlend> Blend(string[] parts) =>
        Fields.Percent(parts[3]).Then(lean => PlainNumber.Read(parts[4], 0m, 1000m).Then(additions => Fields.Percent(parts[5]).Then(loss =>
            Fields.ZeroOrMore(parts[6]).Then(smallest => Fields.ZeroOrMore(parts[7]).Then(step => Take.Good<GrindBlend>(new(
                lean, Ratio.FromDecimal(additions) / Ratio.Of(100, 1), loss, loss, loss, smallest, step)))))));
}
