using ProcessorDesk.Paper;
using ProcessorDesk.Records;
using ProcessorDesk.Trade.Process;

namespace ProcessorDesk.Web.Pages.Kitchen;

/// <summary>What is done with the mix after the mixer, as the sheet says it: rest, and the logs its way of making needs, with the published figures.</summary>
internal static class SheetAfter
{
    private static readonly int[] s_shownRows = [140, 145, 150, 155, 158];

    public static BatchAfter Of(Batch batch)
    {
        var needs = batch.Product.Needs();
        var rest = batch.FormulaVersion.RestMinutes;
        return new BatchAfter(
            rest == 0 ? "" : $"At least {ProcessTime.Print(TimeSpan.FromMinutes(rest))}, kept cold",
            "",
            [
                .. needs.HasFlag(ProcessNeeds.Fermentation) ? [BatchLog.Fermenting(Souring())] : Array.Empty<BatchLog>(),
                .. needs.HasFlag(ProcessNeeds.Lethality) ? [BatchLog.Cooking(Cooking())] : Array.Empty<BatchLog>(),
                .. needs.HasFlag(ProcessNeeds.Cooling) ? [BatchLog.Chilling(Chilling())] : Array.Empty<BatchLog>(),
            ]);
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
