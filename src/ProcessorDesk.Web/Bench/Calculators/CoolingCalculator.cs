using ProcessorDesk.Trade.Process;

namespace ProcessorDesk.Web.Bench.Calculators;

/// <summary>A chilling record against a published cooling option.</summary>
public static class CoolingCalculator
{
    private static readonly Field<CoolingOption> s_option = Fields.Choice(
        "option", "Cooling option", ("1", "Option 1: 130 to 80 to 40 °F", CoolingOptions.One), ("2", "Option 2: 120 to 80 to 55 °F", CoolingOptions.Two));

    private static readonly Field<ProcessReading> s_readings =
        ProbeReadings.Field("minutes", TimeSpan.TicksPerMinute, 100_000m, "90;80", TemperatureText.ParseShowingCold);

    private static readonly Field<decimal> s_gap = Fields.Number("maxGapMinutes", "Longest gap between readings", "min", 0m, 100_000m, "60") with
    {
        Default = "60",
        Hint = "What lies further apart counts for nothing",
    };

    public static Calculator Calculator { get; } = new(
        "cooling", "Chilling", "Whether a chilling record meets a published cooling option at the warmest spot.",
        [s_option, s_readings, s_gap],
        [
            ProbeReadings.Verdict with { About = ProbeReadings.Verdict.About + "; option 2 is judged on 120 to 80 to 55 °F, and 40 °F before packing is a finding" },
            Figure.Number("firstMinutes", "First step", "min", "time shown from the first temperature to 80 °F, gaps counting for nothing; null where nothing of it is shown") with { MayBeNull = true },
            Figure.Number("secondMinutes", "Second step", "min", "time shown from 80 °F to the last, likewise") with { MayBeNull = true },
            Figure.Findings,
        ],
        [
            "Begin the record while the meat is above the first temperature, in the thickest and warmest piece.",
        ],
        "option=1&reading=0;130&reading=45;100&reading=90;80&reading=150;65&reading=210;55&reading=270;48&reading=330;43&reading=390;40",
        Work);

    private static Answer Work(Entries entries)
    {
        var option = entries.Of(s_option);
        var check = Cooling.Check(option, entries.AllOf(s_readings), ProbeReadings.Length(entries.Of(s_gap), TimeSpan.TicksPerMinute));
        return new Answer([.. check.Steps.Where(step => step.Step.AtMost is not null).Select(Step)])
        {
            Headline = ProbeReadings.Headline(check.OfTimedSteps, "the cooling option"),
            Tone = ProbeReadings.Tone(check.OfTimedSteps),
            Published = [.. option.Steps.Select(step => (step.Print(), option.Source))],
            Figures =
            {
                ["verdict"] = ProbeReadings.Code(check.OfTimedSteps),
                ["firstMinutes"] = Minutes(check.Steps[0]),
                ["secondMinutes"] = Minutes(check.Steps[1]),
                ["findings"] = Answer.Rows(check.Findings),
            },
        };
    }

    private static decimal? Minutes(CoolingStepCheck step) =>
        step.Verdict == ProcessVerdict.NotShown && step.Shown.IsZero ? null : step.Shown.ToDecimal();

    private static string Step(CoolingStepCheck step) =>
        $"{step.Step.From.WholeFahrenheitDown} to {step.Step.To.WholeFahrenheitDown} °F: "
        + (Minutes(step) is { } minutes ? $"{ProbeReadings.Print(step.When!.Value, TimeSpan.TicksPerMinute, "min")}: {PlainNumber.Print(minutes)} min shown, {PlainNumber.Print((decimal)step.Step.AtMost!.Value.TotalMinutes)} min allowed" : "not in the record");
}
