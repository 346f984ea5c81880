using ProcessorDesk.Paper;
using ProcessorDesk.Records;
using ProcessorDesk.Trade.Process;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Kitchen;

/// <summary>What is done with the mix after the mixer, as the sheet says it: rest, and the logs its way of making needs, with the published figures.</summary>
internal static class SheetAfter
{
    private static readonly int[] s_shownRows = [140, 145, 150, 155, 158];

    public static BatchAfter Of(Batch batch, ShopDay shop)
    {
        var needs = batch.Product.Needs();
        var rest = batch.FormulaVersion.RestMinutes;
        return new BatchAfter(
            rest == 0 ? "" : $"At least {ProcessTime.Print(TimeSpan.FromMinutes(rest))}, kept cold",
            Casings(batch, shop),
            [
                .. needs.HasFlag(ProcessNeeds.Fermentation) ? [BatchLog.Fermenting(Souring())] : Array.Empty<BatchLog>(),
                .. needs.HasFlag(ProcessNeeds.Lethality) ? [BatchLog.Cooking(Cooking())] : Array.Empty<BatchLog>(),
                .. needs.HasFlag(ProcessNeeds.Cooling) ? [BatchLog.Chilling(Chilling())] : Array.Empty<BatchLog>(),
            ]);
    }

    /// <summary>What to soak: whole casings for the green weight of each load as planned, up.</summary>
    private static string Casings(Batch batch, ShopDay shop)
    {
        if (batch.FormulaVersion is not { Casing: { } name, CasingHolds: { } holds })
            return "";
        var loads = batch.Loads.OrderBy(load => load.Number).Select(load => (load.Number, Count: batch.FormulaVersion.CasingsFor(load.Green))).ToList();
        var each = loads.Count == 1 ? "" : $": {string.Join(", ", loads.Select(load => $"load {load.Number} {load.Count}"))}";
        return $"{name}, {shop.Print(holds)} each: soak {loads.Sum(load => load.Count)}{each}";
    }

    private static string Souring() =>
        $"To {DegreeHourLimit.Target.Print()} within so many degree-hours above {DegreeHourLimit.Base.Print()}: {string.Join(", ", DegreeHourLimit.All.Select(limit => $"{limit.Most:#,0} {limit.Name}"))} ({DegreeHourLimit.All[0].Source}).";

    private static string Cooking()
    {
        var table = LethalityTables.For(LethalityKind.Meat65Log)!;
        var rows = table.Rows.Where(row => s_shownRows.Contains(row.At.WholeFahrenheitDown))
            .Select(row => row.Dwell == TimeSpan.Zero ? $"or reach {row.At.WholeFahrenheitDown} °F" : $"{row.At.WholeFahrenheitDown} °F for {ProcessTime.Print(row.Dwell)}");
        return $"Read every {ProcessTime.Print(LongestGap.Cooking)} from the time it goes in. All probes at or above {string.Join(", ", rows)} ({table.Source}).";
    }

    private static string Chilling() =>
        $"Read every hour, begun above 130 °F. {string.Join(", then ", CoolingOptions.One.Steps.Select(step => step.Print()))} ({CoolingOptions.One.Source}).";
}
