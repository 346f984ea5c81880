using System.Globalization;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Curing;
using ProcessorDesk.Trade.Formulas;

namespace ProcessorDesk.Web.Pages.Office;

/// <summary>What a formula comes to, before anything is weighed.</summary>
/// <param name="Additions">All that is not meat, in percent of the meat block.</param>
/// <param name="Agents">Nitrite, nitrate and accelerator on the meat, each with its limit and source; empty where nothing bears any.</param>
/// <param name="Findings">Why it can't be kept.</param>
public sealed record FormulaOutlook(string Meat, string Additions, string Green, IReadOnlyList<FormulaOutlook.Agent> Agents, IReadOnlyList<Finding> Findings, FormulaContents Contents)
{
    public static FormulaOutlook Of(Product product, FormulaVersion version)
    {
        var formula = version.ToTrade(product);
        var fat = Proportion.FromPartsPerMillion(Proportion.Whole.PartsPerMillion - version.LeanShare.PartsPerMillion);
        return new FormulaOutlook(
            fat.IsZero ? "All of it the owner's lean" : $"{version.LeanShare.Print()} lean, {fat.Print()} {version.AddedFat}{(version.AddedFatIsPork ? " (pork)" : "")}",
            Percent(formula.Additions),
            Figure(formula.Additions + Ratio.One) + " lb",
            [
                .. Held("Nitrite", formula.Nitrite, CureLimits.ComminutedNitrite),
                .. Held("Nitrate", formula.Nitrate, CureLimits.ComminutedNitrate),
                .. Held("Accelerator, acid", formula.Accelerator(AcceleratorKind.Acid), CureRule.AcceleratorLimit(AcceleratorKind.Acid)),
                .. Held("Accelerator, sodium salt", formula.Accelerator(AcceleratorKind.Salt), CureRule.AcceleratorLimit(AcceleratorKind.Salt)),
            ],
            formula.Check(),
            FormulaContents.Of(product, version, formula));
    }

    /// <summary>"1.98 %".</summary>
    internal static string Percent(Ratio part) => Figure(part) + " %";

    private static IEnumerable<Agent> Held(string name, Ratio part, CureLimit limit) => part.IsZero
        ? []
        : [new Agent(
            name,
            part > limit.Figure ? PpmText.PrintPast(part.PartsPerMillion, limit) : PpmText.Print(part.PartsPerMillion, limit),
            $"{PpmText.Print(limit)} ({limit.AsPrinted})", limit.Source, part > limit.Figure)];

    /// <summary>Of a hundred.</summary>
    private static string Figure(Ratio part) =>
        decimal.Round((part * Ratio.Of(100, 1)).ToDecimal(), 2, MidpointRounding.AwayFromZero).ToString("0.##", CultureInfo.InvariantCulture);

    public sealed record Agent(string Name, string Ppm, string Limit, string Source, bool IsOver);
}
