using System.Globalization;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Curing;
using ProcessorDesk.Trade.Formulas;

namespace ProcessorDesk.Web.Pages.Office;

/// <summary>What a formula comes to, before anything is weighed.</summary>
/// <param name="Additions">All that is not meat, in percent of the meat block.</param>
/// <param name="Agents">Nitrite and nitrate on the meat block, each with its limit and source; empty where nothing bears any.</param>
public sealed record FormulaOutlook(string Meat, string Additions, string Green, IReadOnlyList<FormulaOutlook.Agent> Agents, IReadOnlyList<Finding> Findings)
{
    private static readonly Ratio s_hundred = Ratio.Of(100, 1);

    public static FormulaOutlook Of(string product, bool isCured, FormulaVersion version)
    {
        var formula = new Formula(product, version.LeanShare, isCured,
            [.. version.Ingredients.OrderBy(line => line.Position).Select(line => new FormulaLine(line.Name, line.OfMeatBlock, line.Nitrite, line.Nitrate, line.IsCure))]);
        var fat = Proportion.FromPartsPerMillion(Proportion.Whole.PartsPerMillion - version.LeanShare.PartsPerMillion);
        return new FormulaOutlook(
            fat.IsZero ? "All of it the owner's lean" : $"{version.LeanShare.Print()} lean, {fat.Print()} {version.AddedFat}{(version.AddedFatIsPork ? " (pork)" : "")}",
            Percent(formula.Additions) + " %",
            Percent(formula.Additions + Ratio.One) + " lb",
            [
                .. Held("Nitrite", formula.Nitrite, CureLimits.ComminutedNitrite),
                .. Held("Nitrate", formula.Nitrate, CureLimits.ComminutedNitrate),
            ],
            formula.Check());
    }

    private static IEnumerable<Agent> Held(string name, Ratio part, CureLimit limit) => part.IsZero
        ? []
        : [new Agent(
            name,
            part > limit.Figure ? PpmText.PrintPast(part.PartsPerMillion, limit) : PpmText.Print(part.PartsPerMillion, limit),
            $"{PpmText.Print(limit)} ({limit.AsPrinted})", limit.Source, part > limit.Figure)];

    private static string Percent(Ratio part)
    {
        var hundredfold = part * s_hundred;
        return decimal.Round((decimal)hundredfold.Numerator / (decimal)hundredfold.Denominator, 2, MidpointRounding.AwayFromZero).ToString("0.##", CultureInfo.InvariantCulture);
    }

    public sealed record Agent(string Name, string Ppm, string Limit, string Source, bool IsOver);
}
