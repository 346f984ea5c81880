using ProcessorDesk.Paper;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Curing;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Kitchen;

/// <summary>The loads of a batch as its process record prints them: as mixed, each with its cure and the check on what was weighed.</summary>
internal static class RecordLoads
{
    public static IReadOnlyList<ProcessLoad> Of(BatchView view, ShopDay shop) =>
    [
        .. view.Loads.Where(load => load.MixedAt is not null).Select(load =>
        {
            var small = shop.Settings.CureDivision;
            var check = load.StricterCure(load.WeighedBlock, load.Ingredients);
            return new ProcessLoad(
                $"{load.Number}",
                string.Join(", ", [shop.Moment(load.MixedAt!.Value), .. view.Lines.Of(BatchLineKind.Mixed).Where(line => line.LoadId == load.Id).Select(line => line.By)]),
                shop.Print(load.WeighedBlock),
                string.Join(", ", load.Ingredients.Where(line => line.HoldsCure).Select(line => $"{line.Name} {small.Print(line.Weighed)}{Again(view, load, line, small)}")),
                check is null ? "no cure" : Words(check) + (load.LowCureBecause is { } because ? $" Under the minimum: {because}" : ""),
                check is null ? "" : Limit(check));
        })
    ];

    /// <summary>"; again 20.1 g, DM": the second weighing of what cures, and whose hand it was.</summary>
    private static string Again(BatchView view, Load load, LoadIngredient line, ScaleDivision small) =>
        line.WeighedAgain is { } again ? $"; again {small.Print(again)}, {view.Lines.Of(BatchLineKind.CureAgain).First(one => one.LoadId == load.Id && one.What == line.Position).By}"
        : line.Cures ? "; no second weighing noted"
        : "";

    private static string Words(CureCheck check) =>
        $"{check.NitriteText} nitrite{(check.NitratePpm > 0 ? $", {check.NitrateText} nitrate" : "")}: {(check.Meets ? "meets the limit." : "does not meet: never to be released.")}";

    private static string Limit(CureCheck check) => string.Join("; ", new[]
    {
        Printed("nitrite", CureLimits.ComminutedNitrite),
        check.NitratePpm > 0 ? Printed("nitrate", CureLimits.ComminutedNitrate) : null,
    }.OfType<string>());

    private static string Printed(string of, CureLimit limit) => $"{of} {PpmText.Print(limit)} ({limit.AsPrinted}), {limit.Source}";
}
