using ProcessorDesk.Trade.Process;

namespace ProcessorDesk.Web.Bench.Calculators;

/// <summary>A fermentation against the degree-hours it may take.</summary>
public static class DegreeHoursCalculator
{
    private const decimal MostHours = 10_000m;

    private static readonly Field<ProcessReading> s_readings =
        ProbeReadings.Field("hours", TimeSpan.TicksPerHour, MostHours, "80;75", TemperatureText.ParseShowingCold);

    private static readonly Field<decimal> s_sour = Fields.Number("ph53Hours", "pH 5.3 or below after", "hours", 0m, MostHours, "80") with
    {
        IsRequired = false,
        Hint = "Blank where it is not there yet",
    };

    private static readonly Field<decimal> s_gap = Fields.Number("maxGapHours", "Longest gap between readings", "hours", 0m, MostHours, "100") with
    {
        Default = "100",
        Hint = "What lies further apart counts for nothing",
    };

    public static Calculator Calculator { get; } = new(
        "degree-hours", "Fermenting", "Degree-hours above 60 °F until the product is sour enough, against the published limit for the highest temperature reached.",
        [s_readings, s_sour, s_gap],
        [
            Figure.Number("degreeHours", "Degree-hours", "", "hours times °F above 60, until pH 5.3 or the end of the record; what lies below 60 °F counts for nothing"),
            Figure.Number("limit", "At most", "", "degree-hours allowed at the highest temperature reached until then"),
            ProbeReadings.Verdict,
        ],
        [
            "Read the acidity with a meter that was set the same day.",
        ],
        "reading=0;75&reading=80;75&ph53Hours=80",
        Work);

    private static Answer Work(Entries entries)
    {
        var sour = entries.Maybe(s_sour) is { } hours
            ? new[] { new AcidityReading(ProbeReadings.At(hours, TimeSpan.TicksPerHour), DegreeHourLimit.Target) }
            : [];
        var check = Fermentation.Check(entries.AllOf(s_readings), sour, ProbeReadings.Length(entries.Of(s_gap), TimeSpan.TicksPerHour));
        var limit = check.Limit!;
        return new Answer([.. Steps(check), .. check.Findings.Select(finding => finding.Text)])
        {
            Headline = ProbeReadings.Headline(check.Verdict, "the degree-hours"),
            Tone = ProbeReadings.Tone(check.Verdict),
            Published = [.. DegreeHourLimit.All.Select(one => ($"{one.Name}: at most {PlainNumber.Print(one.Most)} degree-hours", one.Source))],
            Figures =
            {
                ["degreeHours"] = check.Shown.ToDecimal(),
                ["limit"] = (decimal)limit.Most,
                ["verdict"] = ProbeReadings.Code(check.Verdict),
            },
        };
    }

    private static IEnumerable<string> Steps(FermentationCheck check)
    {
        foreach (var time in check.Times)
            yield return $"{ProbeReadings.Print(time.When, TimeSpan.TicksPerHour, "h")}: hours × (°F − 60), along the line = {PlainNumber.Print(time.DegreeHours.ToDecimal())}";
        yield return $"Together {PlainNumber.Print(check.Shown.ToDecimal())} degree-hours";
        yield return $"Highest temperature {check.Highest!.Value.Print()}, {check.Limit!.Name}: at most {PlainNumber.Print(check.Limit.Most)}";
    }
}
