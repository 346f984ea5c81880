using ProcessorDesk.Trade.Process;

namespace ProcessorDesk.Web.Bench.Calculators;

/// <summary>A cooking record against the published table.</summary>
public static class LethalityCalculator
{
    private enum Bird
    {
        None,
        Chicken,
        Turkey,
    }

    private static readonly Field<LethalityKind> s_log = Fields.Choice(
        "log", "Table for meat",
        ("5", "5-log", LethalityKind.Meat5Log), ("6.5", "6.5-log, the usual one", LethalityKind.Meat65Log), ("7", "7-log", LethalityKind.Meat7Log)) with
    { Default = "6.5" };

    private static readonly Field<ProcessReading> s_readings =
        ProbeReadings.Field("minutes", TimeSpan.TicksPerMinute, 100_000m, "95;145", TemperatureText.ParseShowingHeat);

    private static readonly Field<Bird> s_bird = Fields.Choice(
        "poultry", "Poultry", ("none", "None", Bird.None), ("chicken", "Chicken", Bird.Chicken), ("turkey", "Turkey", Bird.Turkey)) with
    {
        Default = "none",
        Hint = "With poultry in it the 7-log poultry table holds, whatever the table for meat",
    };

    private static readonly Field<decimal> s_gap = Fields.Number("maxGapMinutes", "Longest gap between readings", "min", 0m, 100_000m, "15") with
    {
        Default = "15",
        Hint = "What lies further apart counts for nothing",
    };

    public static Calculator Calculator { get; } = new(
        "lethality", "Cooking", "Whether a cooking record meets a row of the published time and temperature table at the coldest spot.",
        [s_log, s_readings, s_bird, s_gap],
        [
            ProbeReadings.Verdict,
            Figure.Number("row", "Row of the table", "°F", "in °F: the row met with most time to spare, or the nearest missed; null where no time was shown at any") with { MayBeNull = true },
            Figure.Number("dwellSeconds", "Time at or above it", "s", "in all, along the straight line between readings no further apart than the gap"),
            Figure.Number("neededSeconds", "Time the row asks for", "s", "null without a row") with { MayBeNull = true },
            Figure.Number("comeUpMinutes", "From 50 to 130 °F", "min", "by the clock, or at least so long where it is too long already; null where the record does not hold both") with { MayBeNull = true },
            Figure.Findings,
        ],
        [
            "Meeting a row says nothing about product that is dried before it is cooked, about jerky, or about a probe that was not in the coldest spot.",
            "Bare product needs humidity as well. Take the thermometer's accuracy off the readings.",
        ],
        "log=6.5&reading=0;40&reading=15;75&reading=30;110&reading=45;131&reading=60;145&reading=64;145&reading=70;130",
        Work);

    private static Answer Work(Entries entries)
    {
        var kind = entries.Of(s_bird) switch
        {
            Bird.None => entries.Of(s_log),
            Bird.Chicken => LethalityKind.Chicken,
            Bird.Turkey => LethalityKind.Turkey,
        };
        var check = Lethality.Check(kind, entries.AllOf(s_readings), longestGap: ProbeReadings.Length(entries.Of(s_gap), TimeSpan.TicksPerMinute));
        return new Answer([.. Steps(check)])
        {
            Headline = ProbeReadings.Headline(check.WithComeUp, "the table row"),
            Tone = ProbeReadings.Tone(check.WithComeUp),
            Published =
            [
                .. check.Row is { } row ? [($"At {row.At.Print()} at least {ProcessTime.Print(row.Dwell)} ({check.Table!.Name})", check.Source)] : Array.Empty<(string, string)>(),
                ($"From 50 to 130 °F in at most {ProcessTime.Print(LethalityTables.ComeUp)}", LethalityTables.ComeUpSource),
            ],
            Figures =
            {
                ["verdict"] = ProbeReadings.Code(check.WithComeUp),
                ["row"] = check.Row?.At.Fahrenheit,
                ["dwellSeconds"] = check.Shown.ToDecimal(),
                ["neededSeconds"] = (decimal?)check.Row?.Dwell.Ticks / TimeSpan.TicksPerSecond,
                ["comeUpMinutes"] = check.ComeUp.Minutes?.ToDecimal(),
                ["findings"] = Answer.Rows(check.Findings),
            },
        };
    }

    private static IEnumerable<string> Steps(LethalityCheck check)
    {
        yield return check.ComeUp.Minutes is { } minutes
            ? $"From 50 to 130 °F: {PlainNumber.Print(minutes.ToDecimal())} min"
            : "From 50 to 130 °F: not in the record";
        foreach (var time in check.When)
            yield return $"At or above {check.Row!.At.Print()} {ProbeReadings.Print(time, TimeSpan.TicksPerMinute, "min")} = {PlainNumber.Print(((time.To - time.From) / Ratio.Of(TimeSpan.TicksPerSecond, 1)).ToDecimal())} s";
        yield return check.Row is { } row
            ? $"At or above {row.At.Print()}: {PlainNumber.Print(check.Shown.ToDecimal())} s in all; the row asks for {ProcessTime.Print(row.Dwell)}"
            : $"At or above {check.Table!.Rows[0].At.Print()}, where the table begins: no time";
    }
}
