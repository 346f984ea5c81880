using ProcessorDesk.Paper;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Process;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Kitchen;

/// <summary>The temperatures of one part of a batch's record as a chart, with what decides: the row of the table, the limits of the cooling option.</summary>
internal static class StageChart
{
    /// <summary>Null where no temperature stands.</summary>
    public static ProbeChart? Of(BatchView view, ReadingStage stage, ShopDay shop)
    {
        var readings = view.Lines.Temperatures(stage);
        if (readings.Count == 0)
            return null;
        return new ProbeChart(
            $"{Wording.Of(stage)}, batch {view.Batch.Number}",
            [
                .. readings.GroupBy(reading => reading.Probe).OrderBy(probe => probe.Key).Select(probe => new ProbeChart.Probe(
                    probe.Key, [.. probe.OrderBy(reading => reading.At).Select(reading => new ProbeChart.Point(At(reading.At, shop), reading.Reading.Fahrenheit))]))
            ],
            [.. ReadingGap.Of(readings, LongestOf(view.Batch.RulesInForce, stage)).Select(gap => new ProbeChart.Gap(gap.Probe, At(gap.From, shop), At(gap.To, shop)))],
            [.. Marks(view, stage, shop)]);
    }

    /// <summary>The longest time between readings that is filled in, as it was set for the batch.</summary>
    public static TimeSpan LongestOf(BatchRules rules, ReadingStage stage) => stage switch
    {
        ReadingStage.Cooking => rules.CookingGap,
        ReadingStage.Chilling => rules.ChillingGap,
        ReadingStage.Fermenting => LongestGap.Fermenting,
    };

    private static IEnumerable<ProbeChart.Mark> Marks(BatchView view, ReadingStage stage, ShopDay shop) => stage switch
    {
        ReadingStage.Cooking => view.Verdicts.Cooking?.Row is { } row ? [RowMark(row, view.Batch.RulesInForce.Accuracy)] : [],
        ReadingStage.Chilling => view.Verdicts.Chilling?.Steps.Select(step => StepMark(step, shop)) ?? [],
        ReadingStage.Fermenting => [new ProbeChart.Mark(DegreeHourLimit.Base.Fahrenheit, $"degree-hours above {DegreeHourLimit.Base.Print()}")],
    };

    private static ProbeChart.Mark RowMark(LethalityRow row, Temperature accuracy) => new(
        row.At.Fahrenheit + accuracy.Fahrenheit,
        $"{row.At.Print()}{(accuracy.HundredthsFahrenheit == 0 ? "" : $" + {accuracy.Print()}")}: {(row.Dwell == TimeSpan.Zero ? "a moment" : ProcessTime.Print(row.Dwell))} asked for");

    /// <summary>From where the clock of the step started to where its time is up; all through where the record does not show the start.</summary>
    private static ProbeChart.Mark StepMark(CoolingStepCheck check, ShopDay shop)
    {
        var degrees = check.Step.To;
        if (check.Step.AtMost is not { } most)
            return new ProbeChart.Mark(degrees.Fahrenheit, $"{degrees.WholeFahrenheitDown} °F before packing");
        if (check.From is not { } from)
            return new ProbeChart.Mark(degrees.Fahrenheit, $"{degrees.WholeFahrenheitDown} °F");
        var until = At(from + most, shop);
        return new ProbeChart.Mark(degrees.Fahrenheit, $"{degrees.WholeFahrenheitDown} °F by {PrintedDate.Of(TimeOnly.FromDateTime(until.DateTime))}", At(from, shop), until);
    }

    private static DateTimeOffset At(DateTime utc, ShopDay shop) => new(DateTime.SpecifyKind(shop.Local(utc), DateTimeKind.Unspecified), shop.Local(utc) - DateTime.SpecifyKind(utc, DateTimeKind.Unspecified));
}
