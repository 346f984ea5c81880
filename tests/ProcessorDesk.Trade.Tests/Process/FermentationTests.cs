using ProcessorDesk.Trade.Process;
using Xunit;
using static ProcessorDesk.Trade.Process.ProcessVerdict;
using static ProcessorDesk.Trade.Tests.Process.Cook;

namespace ProcessorDesk.Trade.Tests.Process;

/// <summary>What a fermentation's readings show. Below 90 °F at most 1,200 degree-hours above 60 °F to pH 5.3 (university log form, 2012).</summary>
public sealed class FermentationTests
{
    /// <summary>From 50 to 70 °F in 4 h: above 60 for the last two, 5 on average: 10. Then 2 h at 70: 20. From 70 to 60 in 2 h: 10. Below: nothing.</summary>
    [Theory]
    [InlineData(240, "10")]
    [InlineData(360, "30")]
    [InlineData(480, "40")]
    [InlineData(600, "40")]
    [InlineData(180, "2.5")]
    [InlineData(120, "0")]
    public void Degree_hours_are_the_area_above_60_up_to_the_moment_it_is_sour(int minutes, string degreeHours)
    {
        var check = Check(Minutes((0, 50), (240, 70), (360, 70), (480, 60), (600, 50)), (60, 600), (minutes, 530));

        Assert.Equal((Meets, decimal.Parse(degreeHours, System.Globalization.CultureInfo.InvariantCulture)), (check.Verdict, check.DegreeHours));
        Assert.Equal(Start.AddMinutes(minutes), check.SourAt);
    }

    /// <summary>From 60 to 61 °F in an hour is half a degree-hour; after 20 min a ninth of that: 1/18, printed up as 0.1.</summary>
    [Fact]
    public void Degree_hours_are_rounded_up() =>
        Assert.Equal(0.1m, Check(Minutes((0, 60), (60, 61)), (20, 530)).DegreeHours);

    [Fact]
    public void Only_what_came_before_it_was_sour_counts_for_the_highest_too()
    {
        var check = Check(Minutes((0, 80), (120, 90), (240, 110)), (60, 530));

        Assert.Equal((Meets, 85m, 1200), (check.Verdict, check.Highest!.Value.Fahrenheit, check.Limit!.Most));
    }

    [Fact]
    public void Not_sour_yet_is_not_shown()
    {
        var check = Check(Minutes((0, 75), (240, 75)), (0, 580), (240, 531));

        Assert.Equal((NotShown, null, 60m, "not shown by the record"), (check.Verdict, check.SourAt, check.DegreeHours, check.Words));
        Assert.Contains("pH 5.30", Assert.Single(check.Findings).Text, StringComparison.Ordinal);
    }

    /// <summary>20 stretches of 4 h at 75 °F are 1,200 degree-hours; a minute more is over, sour or not.</summary>
    [Fact]
    public void Over_the_limit_does_not_meet_sour_or_not()
    {
        List<ProcessReading> readings = [.. Enumerable.Range(0, 21).Select(i => At(i * 14_400, 75)), At(20 * 14_400 + 60, 75)];

        Assert.Equal(DoesNotMeet, Check(readings).Verdict);
        Assert.Equal(DoesNotMeet, Check(readings, (20 * 240 + 1, 530)).Verdict);
        Assert.Equal(Meets, Check(readings, (20 * 240, 530)).Verdict);
        Assert.Equal(("1,200.3 degree-hours", "at most 1,200"), (Check(readings).Findings[0].Found, Check(readings).Findings[0].Allowed));
    }

    [Fact]
    public void What_is_not_covered_up_to_the_moment_is_not_shown()
    {
        Assert.Equal(NotShown, Check(Minutes((0, 75), (240, 75)), (241, 530)).Verdict);
        Assert.Equal(NotShown, Check(Minutes((10, 75), (240, 75)), (9, 530)).Verdict);
        Assert.Equal(NotShown, Check([], (9, 530)).Verdict);
        Assert.Equal(Meets, Check(Minutes((10, 75), (240, 75)), (10, 530)).Verdict);
    }

    [Theory]
    [InlineData(240, Meets)]
    [InlineData(241, NotShown)]
    public void A_gap_of_more_than_4_hours_counts_for_nothing(int minutes, ProcessVerdict expected)
    {
        var readings = Minutes((0, 75), (minutes, 75));

        Assert.Equal(expected, Check(readings, (minutes, 530)).Verdict);
        Assert.Equal(Meets, Fermentation.Check(readings, [new AcidityReading(Start.AddMinutes(minutes), Ph.FromHundredths(530))], TimeSpan.FromHours(5)).Verdict);
    }

    [Fact]
    public void Of_two_acidities_at_once_the_less_sour_counts()
    {
        var check = Check(Minutes((0, 75), (240, 75)), (100, 520), (100, 540), (200, 530));

        Assert.Equal((Meets, Start.AddMinutes(200)), (check.Verdict, check.SourAt));
    }

    /// <summary>An hour up from 60 to 80 °F and an hour down: 20 degree-hours. The 62 °F of the same moment, read by the same probe, would give 2.</summary>
    [Fact]
    public void Of_two_temperatures_at_once_the_higher_counts() =>
        Assert.Equal(20m, Check(Minutes((0, 60), (60, 62), (60, 80), (60, 61), (120, 60)), (120, 530)).DegreeHours);

    /// <summary>One probe at 75 °F shows 60 degree-hours in 4 h, the other at 95 °F 140; it also sets the limit for both.</summary>
    [Fact]
    public void The_warmest_probe_counts()
    {
        var check = Check([.. OfProbe(1, (0, 75), (240, 75)), .. OfProbe(2, (0, 95), (240, 95))], (240, 500));

        Assert.Equal((Meets, 140m, 1000), (check.Verdict, check.DegreeHours, check.Limit!.Most));
    }

    private static FermentationCheck Check(IEnumerable<ProcessReading> readings, params (int Minute, int Hundredths)[] acidity) =>
        Fermentation.Check(readings, acidity.Select(each => new AcidityReading(Start.AddMinutes(each.Minute), Ph.FromHundredths(each.Hundredths))));
}
