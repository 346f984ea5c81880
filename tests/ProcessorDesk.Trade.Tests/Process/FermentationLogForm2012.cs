using ProcessorDesk.Trade.Process;
using Xunit;
using static ProcessorDesk.Trade.Process.ProcessVerdict;

namespace ProcessorDesk.Trade.Tests.Process;

/// <summary>
/// Source: a university's fermentation log form, 2012. Degree-hours above 60 °F to pH 5.3: at most 1,200 below 90 °F, 1,000 from 90 to 100,
/// 900 above. Constant chamber: 75 °F 80 h, 80 °F 60 h, 90 °F 33 h, 110 °F 18 h. Changing temperature: the sum of hours × (°F − 60) of
/// the stages, the limit by the highest temperature reached; a stage below 60 °F counts for nothing.
/// </summary>
public sealed class FermentationLogForm2012
{
    private static readonly Ph s_sour = Ph.FromHundredths(530);

    /// <summary>15 × 80 = 1,200. 20 × 60 = 1,200. 30 × 33 = 990 of 1,000, and 34 would be 1,020. 50 × 18 = 900.</summary>
    [Theory]
    [InlineData(75, 80, 1200, 1200)]
    [InlineData(80, 60, 1200, 1200)]
    [InlineData(90, 33, 990, 1000)]
    [InlineData(110, 18, 900, 900)]
    public void A_constant_chamber_meets_at_the_forms_hours_and_not_an_hour_later(int fahrenheit, int hours, int degreeHours, int limit)
    {
        var met = Fermentation.Check([Stage(fahrenheit, hours)], s_sour);
        var late = Fermentation.Check([Stage(fahrenheit, hours + 1)], s_sour);

        Assert.Equal((Meets, (decimal)degreeHours, limit, "meets the degree-hours"), (met.Verdict, met.DegreeHours, met.Limit!.Most, met.Words));
        Assert.Empty(met.Findings);
        Assert.Equal((DoesNotMeet, (decimal)degreeHours + (fahrenheit - 60)), (late.Verdict, late.DegreeHours));
        Assert.Contains("fermentation log", late.Findings[0].Source, StringComparison.Ordinal);
    }

    /// <summary>The same from readings two hours apart, sour at the last of them: a minute more and it is too long, except at 90 °F (20 min to spare).</summary>
    [Theory]
    [InlineData(75, 80, 1)]
    [InlineData(80, 60, 1)]
    [InlineData(90, 33, 21)]
    [InlineData(110, 18, 1)]
    public void Readings_give_the_same_as_stages(int fahrenheit, int hours, int minutesTooMany)
    {
        Assert.Equal(Meets, Held(fahrenheit, hours * 60).Verdict);
        Assert.Equal(Meets, Held(fahrenheit, hours * 60 + minutesTooMany - 1).Verdict);
        Assert.Equal(DoesNotMeet, Held(fahrenheit, hours * 60 + minutesTooMany).Verdict);
    }

    /// <summary>10 × 15 + 24 × 25 = 750; a stage at 45 °F adds nothing and takes nothing away; one hour at 91 °F more makes 781, and the limit 1,000.</summary>
    [Fact]
    public void Stages_are_added_up()
    {
        var changing = Fermentation.Check([Stage(75, 10), Stage(45, 100), Stage(85, 24)], s_sour);
        var hotter = Fermentation.Check([Stage(75, 10), Stage(45, 100), Stage(85, 24), Stage(91, 1)], s_sour);

        Assert.Equal((750m, 1200), (changing.DegreeHours, changing.Limit!.Most));
        Assert.Equal((781m, 1000), (hotter.DegreeHours, hotter.Limit!.Most));
    }

    /// <summary>40 × 25 = 1,000 and an hour at 90 °F is 1,030: within the limit of the cooler stage, over that of the highest.</summary>
    [Fact]
    public void The_highest_temperature_reached_sets_the_limit_for_all_of_it()
    {
        Assert.Equal(Meets, Fermentation.Check([Stage(85, 40)], s_sour).Verdict);
        Assert.Equal(DoesNotMeet, Fermentation.Check([Stage(85, 40), Stage(90, 1)], s_sour).Verdict);
        Assert.Equal(DoesNotMeet, Fermentation.Check([Stage(90, 1), Stage(85, 40)], s_sour).Verdict);
        Assert.Equal(Meets, Fermentation.Check([Stage(85, 40), new FermentationStage(Temperature.FromFahrenheit(90m), TimeSpan.Zero)], s_sour).Verdict);
    }

    [Theory]
    [InlineData("89.99", 1200)]
    [InlineData("90", 1000)]
    [InlineData("100", 1000)]
    [InlineData("100.01", 900)]
    [InlineData("59", 1200)]
    public void The_limits_change_at_90_and_above_100_degrees(string fahrenheit, int limit) =>
        Assert.Equal(limit, DegreeHourLimit.For(Temperature.FromFahrenheit(decimal.Parse(fahrenheit, System.Globalization.CultureInfo.InvariantCulture))).Most);

    [Theory]
    [InlineData(530, Meets)]
    [InlineData(531, NotShown)]
    [InlineData(null, NotShown)]
    public void It_has_to_be_sour_enough(int? hundredths, ProcessVerdict expected)
    {
        Ph? reached = hundredths is { } count ? Ph.FromHundredths(count) : null;

        Assert.Equal(expected, Fermentation.Check([Stage(75, 80)], reached).Verdict);
        Assert.Equal(DoesNotMeet, Fermentation.Check([Stage(75, 81)], reached).Verdict);
    }

    [Fact]
    public void Without_stages_nothing_is_shown_and_a_stage_never_lasts_less_than_nothing()
    {
        Assert.Equal((NotShown, null), (Fermentation.Check([], s_sour).Verdict, Fermentation.Check([], s_sour).Limit));
        Assert.Throws<ArgumentOutOfRangeException>(() => Fermentation.Check([Stage(75, -1)], s_sour));
    }

    private static FermentationStage Stage(int fahrenheit, int hours) => new(Temperature.FromFahrenheit(fahrenheit), TimeSpan.FromHours(hours));

    private static FermentationCheck Held(int fahrenheit, int minutes)
    {
        var readings = Enumerable.Range(0, minutes / 120 + 1).Select(i => Cook.At(i * 7200, fahrenheit)).Append(Cook.At(minutes * 60, fahrenheit));
        return Fermentation.Check(readings, [new AcidityReading(Cook.Start.AddMinutes(minutes), s_sour)]);
    }
}
