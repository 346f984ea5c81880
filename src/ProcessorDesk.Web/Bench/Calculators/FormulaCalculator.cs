using ProcessorDesk.Trade.Curing;
using ProcessorDesk.Trade.Formulas;

namespace ProcessorDesk.Web.Bench.Calculators;

/// <summary>A formula scaled to a meat block.</summary>
public static class FormulaCalculator
{
    /// <summary>Most of an addition, in its own basis: the meat block ten times over.</summary>
    private const decimal MostAmount = 16_000m;

    private static readonly (string Code, FormulaBasis Basis, string Words)[] s_bases =
    [
        ("percent", FormulaBasis.PercentOfBlock, "% of the block"),
        ("ozPer100Lb", FormulaBasis.OuncesPer100Pounds, "oz to 100 lb"),
        ("ozPer25Lb", FormulaBasis.OuncesPer25Pounds, "oz to 25 lb"),
        ("gPerKg", FormulaBasis.GramsPerKilogram, "g to the kilogram"),
    ];

    private static readonly Field<Weight> s_block = Fields.Pounds("blockLb", "Meat block") with { Hint = "Lean and added fat together" };

    private static readonly Field<FormulaLine> s_lines = Fields.Parts("line", "Additions", "name;amount;basis;nitritePct;nitratePct", "Curing salt;4;ozPer100Lb;6.25;0", Line) with
    {
        Hint = $"The basis is {string.Join(", ", s_bases.Select(one => one.Code))}. Nitrite and nitrate as the maker states them; 0 where there is none",
    };

    private static readonly Field<bool> s_cured = Fields.Choice("cured", "A cured product", ("no", "No", false), ("yes", "Yes", true)) with { Default = "no", Hint = "A cured product without cure is refused" };
    private static readonly Field<ScaleDivision> s_scale = Fields.SmallScale("smallScaleG");

    public static Calculator Calculator { get; } = new(
        "formula", "Formula scaling", "A formula scaled to a meat block, on the small scale. Cure is rounded down and held against its limits.",
        [s_block, s_lines, s_cured, s_scale],
        [
            new("lines", "Weigh out", FigureKind.Rows, "one for each addition, in order")
            {
                Columns =
                [
                    Figure.Text("name", "Addition"), Figure.Number("amountG", "On the scale", "g", "to the nearest of the small scale, cure down"),
                    Figure.Number("amountOz", "On an ounce scale", "oz", "to the nearest hundredth, cure down"), Figure.Number("exactG", "Exactly", "g", "unrounded"),
                ],
            },
            Figure.Pounds("greenLb", "Green weight", "the block and all additions, as weighed"),
            Figure.Number("nitritePpm", "Nitrite", "ppm", "as weighed; null without cure") with { MayBeNull = true },
            Figure.Number("nitratePpm", "Nitrate", "ppm", "as weighed; null without cure") with { MayBeNull = true },
            new("meets", "Meets", FigureKind.Flag, "the cure as weighed is within the limits of comminuted product; null where there is none and none is needed") { MayBeNull = true },
            Figure.Findings,
        ],
        [.. CuringCautions.All.Select(caution => caution.Text)],
        "blockLb=100&cured=yes&line=Salt;28;ozPer100Lb;0;0&line=Curing salt;4;ozPer100Lb;6.25;0&line=Pepper;0.75;percent;0;0",
        Work);

    private static Answer Work(Entries entries)
    {
        var (block, lines) = (entries.Of(s_block), entries.AllOf(s_lines));
        var scaled = FormulaScaling.Scale(new Formula("formula", Proportion.Whole, entries.Of(s_cured), lines), block, entries.Of(s_scale));
        return new Answer([.. scaled.Lines.Select(line => Step(line, block)), .. scaled.Cure?.Working ?? []])
        {
            Headline = scaled.Cure is { } cure ? (cure.Meets ? "The cure meets its limits" : "The cure does not meet: do not use it so") : "",
            Tone = scaled.Cure?.Meets is true ? "good" : "stop",
            Published = scaled.Cure is null ? [] : [($"Nitrite at most {PpmText.Print(CureLimits.ComminutedNitrite)} ({CureLimits.ComminutedNitrite.AsPrinted})", CureLimits.ComminutedNitrite.Source)],
            Figures =
            {
                ["lines"] = scaled.Lines.Select(line => new Dictionary<string, object?>
                {
                    ["name"] = line.Line.Name,
                    ["amountG"] = line.Amount.Grams,
                    ["amountOz"] = FormulaScaling.OunceDivision.Figure(line.On(FormulaScaling.OunceDivision)),
                    ["exactG"] = (line.Milligrams / Ratio.Of(1000, 1)).ToDecimal(),
                }).ToList(),
                ["greenLb"] = PlainNumber.Pounds(scaled.Green),
                ["nitritePpm"] = scaled.Cure?.NitritePpm,
                ["nitratePpm"] = scaled.Cure?.NitratePpm,
                ["meets"] = scaled.Cure?.Meets,
                ["findings"] = Answer.Rows(scaled.Cure?.Findings ?? []),
            },
        };
    }

    private static string Step(ScaledLine line, Weight block) =>
        $"{line.Line.Name}: {PlainNumber.PrintPounds(block)} × {PlainNumber.Print(PlainNumber.Percent(line.Line.OfMeatBlock))} % = {PlainNumber.Print((line.Milligrams / Ratio.Of(1000, 1)).ToDecimal())} g → {line.Grams}, {line.PoundsAndOunces}";

    private static Taken<FormulaLine> Line(string[] parts) =>
        Fields.Name(parts[0]).Then(name => PlainNumber.Read(parts[1], 0m, MostAmount).Then(amount => Basis(parts[2]).Then(basis =>
            Fields.Percent(parts[3]).Then(nitrite => Fields.Percent(parts[4]).Then(nitrate => CureStrength.Check(nitrite, nitrate) is [var finding, ..]
                ? Take.Bad<FormulaLine>(finding.Text)
                : Take.Good<FormulaLine>(new FormulaLine(name, FormulaLine.Part(amount, basis), nitrite, nitrate, !nitrite.IsZero || !nitrate.IsZero)))))));

    private static Taken<FormulaBasis> Basis(string code) => Array.Find(s_bases, one => one.Code == code) is { Code: not null } found
        ? Take.Good<FormulaBasis>(found.Basis)
        : Take.Bad<FormulaBasis>($"The basis is {string.Join(", ", s_bases.Select(one => one.Code))}.");
}
