using ProcessorDesk.Paper;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Process;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Kitchen;

/// <summary>The process record in words, for the page and the paper alike.</summary>
internal static class RecordWords
{
    /// <summary>Where a batch's weight went; what came to the mixer adds up to what left it.</summary>
    public static IReadOnlyList<Fact> Balance(BatchBalance balance, ShopDay shop) =>
    [
        new("Thaw and drip, before the mixer", shop.Print(balance.ThawAndDrip)),
        new("Meat drawn", shop.Print(balance.Drawn)),
        new("Added fat", shop.Print(balance.Fat)),
        new("Seasoning, cure and water", shop.Print(balance.Ingredients)),
        new("Mixed, together", shop.Print(balance.Mixed)),
        new("Left in the machines", balance.LeftInMachines is { } left ? shop.Print(left) : "not weighed"),
        new("Finished", balance.Finished is { } finished ? shop.Print(finished) : "not weighed yet"),
        new("Lost in cooking, smoking and drying", balance.Loss is { } loss ? $"{shop.Print(loss)}{Part(loss, balance.WentOn)}" : "–"),
    ];

    /// <summary>What the shop had set when the batch was mixed.</summary>
    public static IReadOnlyList<string> Rules(BatchRules rules, ProcessNeeds needs) =>
    [
        .. needs.HasFlag(ProcessNeeds.Lethality)
            ?
            [
                $"Cooking table: {Wording.Of(rules.Cooking).ToLowerInvariant()}{(rules.CookingSupport is { } support ? $", by the manager's support: {support}" : "")}.",
                $"Longest gap between cooking readings: {ProcessTime.Print(rules.CookingGap)}; what is longer counts for nothing.",
                $"Thermometer: {(rules.Accuracy.HundredthsFahrenheit == 0 ? "nothing" : rules.Accuracy.Print())} added above the table.",
            ]
            : Array.Empty<string>(),
        .. needs.HasFlag(ProcessNeeds.Cooling)
            ?
            [
                $"Cooling: {(rules.CoolingOption is { } own ? CoolingOptions.Find(own).Name : "the published option the record comes closest to")}.",
                $"Longest gap between chilling readings: {ProcessTime.Print(rules.ChillingGap)}.",
            ]
            : Array.Empty<string>(),
        .. rules.DryingLoss is { } target ? [$"Drying: at least {target.Print()} of the green weight lost, by the shop's own process."] : Array.Empty<string>(),
    ];

    /// <summary>The row that decides and its lowest probe; what is asked for. Empty without a row.</summary>
    public static string Row(LethalityCheck check, Temperature accuracy) => check.Row is { } row
        ? $"{ProcessTime.Print(check.Found)} at or above {row.At.Print()}{(accuracy.HundredthsFahrenheit == 0 ? "" : $" and {accuracy.Print()} for the thermometer")} at probe {check.Probe}, the lowest; the row asks for {(row.Dwell == TimeSpan.Zero ? "a moment" : ProcessTime.Print(row.Dwell))}."
        : "";

    /// <summary>What was lost of the green weight and what is asked for.</summary>
    public static string Lost(DryingCheck check) =>
        $"{(check.Loss is null ? "Nothing weighed is" : check.LossText)} lost of the green weight; at least {check.Target.Print()} is asked for.";

    /// <summary>What was done, with its figure: "Mixed, load 1", "Finished, load 2: 16.70 lb, 20 pieces".</summary>
    public static string Step(BatchLine line, BatchView view, ShopDay shop) => line.Kind switch
    {
        BatchLineKind.Mixed => $"Mixed, load {line.What}",
        BatchLineKind.Step => Wording.Of((BatchStepKind)line.What) + string.Concat(view.Lines.Of(BatchLineKind.StuffedPieces).Where(one => one.Id == line.Id)
            .Select(one => $", load {view.Loads.Single(load => load.Id == one.LoadId).Number}: {one.Pieces} pieces")),
        BatchLineKind.Finished => $"Finished{(line.LoadId is { } load ? $", load {view.Loads.Single(one => one.Id == load).Number}" : "")}: {shop.Print(Weight.FromMilligrams(line.Amount))}{(line.Pieces is { } pieces ? $", {pieces} pieces" : "")}",
        BatchLineKind.CureAgain => $"Cure weighed again, load {view.Loads.Single(one => one.Id == line.LoadId).Number}: {shop.Settings.CureDivision.Print(Weight.FromMilligrams(line.Amount))}",
        BatchLineKind.LeftInMachines => $"Left in the machines: {shop.Print(Weight.FromMilligrams(line.Amount))}",
        BatchLineKind.Reading or BatchLineKind.Ticket or BatchLineKind.Share or BatchLineKind.StuffedPieces or BatchLineKind.Drip => Wording.Of(line.Kind),
    };

    private static string Part(Weight loss, Weight of) => of.IsPositive && !loss.IsNegative ? $", {Ratio.Of(loss, of).PrintPercent()}" : "";
}
