using ProcessorDesk.Trade.Process;

namespace ProcessorDesk.Web.Bench.Calculators;

/// <summary>Readings of one probe, as the process calculators take them: a time from the start, and a temperature.</summary>
internal static class ProbeReadings
{
    /// <summary>A start that all readings of a record share; which day it is does not matter.</summary>
    private static readonly DateTime s_start = new(2000, 1, 1, 0, 0, 0, DateTimeKind.Utc);

    /// <param name="unit">"minutes" or "hours".</param>
    /// <param name="most">Longest time taken, in that unit.</param>
    /// <param name="parse">Rounds a temperature finer than a hundredth so that it does not help the verdict.</param>
    public static Field<ProcessReading> Field(string unit, long ticks, decimal most, string example, Func<string, Parsed<Temperature>> parse) =>
        Fields.Parts("reading", "Readings", unit + ";°F", example, parts =>
            PlainNumber.Read(parts[0], 0m, most).Then(time =>
                PlainNumber.Read(parts[1], TemperatureText.Lowest.Fahrenheit, TemperatureText.Highest.Fahrenheit).Then(_ =>
                    Take.Of(parse(parts[1]))).Then(temperature =>
                        Take.Good<ProcessReading>(new ProcessReading(At(time, ticks), 1, temperature))))) with
        {
            Hint = $"A time in {unit} from the start, and a temperature, in any order",
        };

    /// <summary>The moment so many minutes or hours after the start, to the nearest tenth of a microsecond.</summary>
    public static DateTime At(decimal time, long ticks) => s_start.AddTicks(Ticks(time, ticks));

    /// <summary>"from 55.5 to 60 min": a time as it lies in the record.</summary>
    public static string Print(Stretch time, long ticks, string unit) =>
        $"from {PlainNumber.Print(Since(time.From, ticks))} to {PlainNumber.Print(Since(time.To, ticks))} {unit}";

    /// <summary>A length of time, to the nearest tenth of a microsecond.</summary>
    public static TimeSpan Length(decimal time, long ticks) => new(Ticks(time, ticks));

    /// <summary>"meets", "doesNotMeet", "notShown".</summary>
    public static string Code(ProcessVerdict verdict) => verdict switch
    {
        ProcessVerdict.Meets => "meets",
        ProcessVerdict.DoesNotMeet => "doesNotMeet",
        ProcessVerdict.NotShown => "notShown",
    };

    public static string Tone(ProcessVerdict verdict) => verdict switch
    {
        ProcessVerdict.Meets => "good",
        ProcessVerdict.DoesNotMeet => "stop",
        ProcessVerdict.NotShown => "warn",
    };

    /// <summary>"Meets the table row".</summary>
    public static string Headline(ProcessVerdict verdict, string rule) => verdict.Words(rule) is var words ? char.ToUpperInvariant(words[0]) + words[1..] : "";

    /// <summary>The verdict, which heads the page.</summary>
    public static Figure Verdict { get; } = Figure.Text(
        "verdict", "Verdict", "`meets` if shown without the gaps, `doesNotMeet` if it fails even with every gap counted in its favour, else `notShown`") with
    { IsHeadline = true };

    private static decimal Since(Ratio moment, long ticks) => ((moment - Ratio.Of(s_start.Ticks, 1)) / Ratio.Of(ticks, 1)).ToDecimal();

    private static long Ticks(decimal time, long ticks) => decimal.ToInt64(decimal.Round(time * ticks, MidpointRounding.AwayFromZero));
}
