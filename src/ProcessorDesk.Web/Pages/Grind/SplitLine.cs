using ProcessorDesk.Trade.Curing;
using ProcessorDesk.Trade.Formulas;
using ProcessorDesk.Trade.Grinding;

namespace ProcessorDesk.Web.Pages.Grind;

/// <summary>One product of a split as the page shows it.</summary>
/// <param name="Asked">What the owner asked for, in words; empty for plain ground that takes what is left.</param>
/// <param name="Cure">The cure for the meat block; null where the product has none.</param>
public sealed record SplitLine(string Product, string Asked, GivenWeights Given, string AddedFat, IReadOnlyList<string> Reasons, CureShown? Cure)
{
    internal static SplitLine Of(GrindPlan.PlannedLine line, ScaleDivision division, ScaleDivision small)
    {
        var given = line.Given;
        return new SplitLine(
            line.Ask.Product.Name,
            Words(line.Ask, division),
            new GivenWeights(given.Lean, given.AddedFat, given.MeatBlock, given.Green, given.FinishedLow, given.Finished, given.FinishedHigh),
            line.Ask.Formula.AddedFat ?? "",
            given.Reasons,
            CureShown.Of(line.Ask.Formula, given.MeatBlock, small));
    }

    internal static SplitLine Of(GrindAllotment kept, ScaleDivision small) => new(
        kept.FormulaVersion.Product.Name,
        "",
        new GivenWeights(kept.Lean, kept.AddedFat, kept.MeatBlock, kept.Green, kept.FinishedLow, kept.Finished, kept.FinishedHigh),
        kept.FormulaVersion.AddedFat ?? "",
        kept.Reasons.Split('\n', StringSplitOptions.RemoveEmptyEntries),
        CureShown.Of(kept.FormulaVersion, kept.MeatBlock, small));

    private static string Words(PlannedAsk ask, ScaleDivision division) => ask.Kind switch
    {
        AskKind.OwnLean => $"{division.Print(ask.Amount)} of own meat",
        AskKind.Finished => $"{division.Print(ask.Amount)} finished",
        AskKind.Percent => $"{ask.Percent.Print()} of the lean",
        AskKind.Rest => "The rest",
    };
}

/// <summary>The weights of one allotment.</summary>
public sealed record GivenWeights(
    Weight Lean, Weight AddedFat, Weight MeatBlock, Weight Green, Weight FinishedLow, Weight Finished, Weight FinishedHigh);

/// <summary>The cure of one product for its whole meat block, as the small scale can weigh it.</summary>
/// <param name="Lines">The cure lines of the formula, worked out and rounded down.</param>
/// <param name="Most">The most that meets the limit, for each.</param>
public sealed record CureShown(IReadOnlyList<CureShown.Line> Lines, CureCheck Check, string Limit, string Source)
{
    public static CureShown? Of(FormulaVersion formula, Weight meatBlock, ScaleDivision small)
    {
        var trade = formula.ToTrade();
        if (!meatBlock.IsPositive || FormulaScaling.Scale(trade, meatBlock, small) is not { Cure: { } check } scaled)
            return null;
        return new CureShown(
            [.. scaled.Lines.Where(line => line.Line.HoldsCure).Select(line => new Line(
                line.Line.Name,
                line.Line.Nitrite.Print(),
                line.Grams,
                line.PoundsAndOunces,
                small.Print(ComminutedCure.Most(meatBlock, line.Line.Nitrite, line.Line.Nitrate, small))))],
            check,
            $"{PpmText.Print(CureLimits.ComminutedNitrite)} nitrite ({CureLimits.ComminutedNitrite.AsPrinted})",
            CureLimits.ComminutedNitrite.Source);
    }

    public sealed record Line(string Name, string Strength, string Grams, string Ounces, string Most);
}
