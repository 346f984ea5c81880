using ProcessorDesk.Trade.Process;
using Xunit;
using static ProcessorDesk.Trade.Process.ProcessVerdict;
using static ProcessorDesk.Trade.Tests.Process.Cook;

namespace ProcessorDesk.Trade.Tests.Process;

/// <summary>Option 1, 130 to 80 °F in 90 min and 80 to 40 in 300: what a record shows of it, and when it shows too little.</summary>
public sealed class CoolingTests
{
    [Fact]
    public void Without_readings_nothing_is_shown()
    {
        var check = Check([]);

        Assert.Equal((NotShown, "not shown by the record"), (check.Verdict, check.Words));
        Assert.All(check.Steps, step => Assert.Equal((null, NotShown, TimeSpan.Zero), (step.Probe, step.Verdict, step.Found)));
    }

    /// <summary>140 at 0, 120 at 20: leaves 130 after 10 min. 90 at 60, 70 at 80: comes to 80 after 70. 50 at 120, 30 at 160: to 40 after 140.</summary>
    [Fact]
    public void Crossings_lie_on_the_line_between_entries()
    {
        var check = Check(Minutes((0, 140), (20, 120), (60, 90), (80, 70), (120, 50), (160, 30)));

        Assert.Equal("meets the cooling option", check.Words);
        Assert.Equal([TimeSpan.FromMinutes(60), TimeSpan.FromMinutes(70)], check.Steps.Select(step => step.Found));
        Assert.Empty(check.Findings);
    }

    [Fact]
    public void A_record_that_begins_too_late_does_not_show_the_start()
    {
        Steps(Minutes((0, 129.9m), (60, 80), (120, 40)), NotShown, Meets);
        Steps(Minutes((0, 79), (60, 40)), NotShown, NotShown);
        Steps(Minutes((0, 39), (60, 39)), NotShown, NotShown);
    }

    [Fact]
    public void A_record_that_begins_too_late_can_still_show_that_it_took_too_long()
    {
        Steps(Minutes((0, 129), (60, 100), (91, 80), (150, 40)), DoesNotMeet, Meets);
        Steps([.. Enumerable.Range(0, 7).Select(i => At(i * 3600, 79)), At(6 * 3600 + 60, 40)], NotShown, DoesNotMeet);
    }

    [Fact]
    public void A_record_that_ends_too_soon_does_not_show_the_end()
    {
        Steps(Minutes((0, 130), (60, 90)), NotShown, NotShown);
        Steps(Minutes((0, 130), (60, 80), (120, 41)), Meets, NotShown);
        Steps([At(0, 140)], NotShown, NotShown);
    }

    [Fact]
    public void Still_warm_after_the_time_does_not_meet() =>
        Steps(Minutes((0, 130), (60, 100), (91, 90)), DoesNotMeet, NotShown);

    [Theory]
    [InlineData(60, Meets)]
    [InlineData(61, NotShown)]
    public void A_gap_of_more_than_an_hour_in_a_step_leaves_it_open(int minutes, ProcessVerdict expected)
    {
        var readings = Minutes((0, 130), (60, 80), (60 + minutes, 60), (130, 40));

        Steps(readings, Meets, expected);
        Assert.Equal(Meets, Cooling.Check(CoolingOptions.One, readings, TimeSpan.FromMinutes(61)).Verdict);
    }

    [Fact]
    public void A_crossing_inside_a_gap_is_not_shown_for_either_step() =>
        Steps(Minutes((0, 130), (10, 120), (80, 79), (120, 40)), NotShown, NotShown);

    [Fact]
    public void A_gap_while_hot_leaves_the_start_open() =>
        Steps(Minutes((0, 150), (70, 150), (100, 100), (120, 80), (160, 40)), NotShown, Meets);

    /// <summary>Without the gap of 70 min, 301 min are shown: too long in any case.</summary>
    [Fact]
    public void Too_long_even_without_the_gap_does_not_meet()
    {
        List<ProcessReading> readings = [.. Minutes((0, 130), (60, 80), (130, 70)), .. Enumerable.Range(1, 5).Select(i => At((130 + 60 * i) * 60, 60)), At(431 * 60, 40)];

        Steps(readings, Meets, DoesNotMeet);
    }

    [Fact]
    public void Cooking_in_the_same_record_is_passed_over() =>
        Steps(Minutes((0, 38), (60, 100), (120, 152), (150, 152), (180, 100), (200, 80), (260, 40)), Meets, Meets);

    [Fact]
    public void Warmed_up_again_the_clock_of_the_second_step_runs_on()
    {
        // 80 °F at 30 min, up to 85, and 40 °F only 301 min after the 30.
        List<ProcessReading> readings = [.. Minutes((0, 130), (30, 80), (60, 85)), .. Enumerable.Range(1, 5).Select(i => At((30 + 60 * i) * 60, 70)), At(331 * 60, 40)];

        Steps(readings, Meets, DoesNotMeet);
    }

    [Fact]
    public void The_slowest_probe_counts()
    {
        List<ProcessReading> readings = [.. OfProbe(1, (0, 130), (50, 80), (100, 40)), .. OfProbe(7, (0, 130), (60, 90), (91, 80), (150, 40))];

        var check = Check(readings);

        Assert.Equal((DoesNotMeet, 7, TimeSpan.FromMinutes(91)), (check.Verdict, check.Steps[0].Probe!.Value, check.Steps[0].Found));
        Assert.Equal(("1 h 31 min", "at most 1 h 30 min", CoolingOptions.One.Source), Of(Assert.Single(check.Findings)));

        static (string, string, string) Of(Finding finding) => (finding.Found, finding.Allowed, finding.Source);
    }

    [Fact]
    public void Of_two_readings_at_once_the_higher_counts() =>
        Steps(Minutes((0, 130), (60, 90), (90, 80), (90, 81), (150, 40)), DoesNotMeet, Meets);

    [Fact]
    public void Options_are_found_by_their_id()
    {
        Assert.All(CoolingOptions.All, option => Assert.Same(option, CoolingOptions.Find(option.Id)));
        Assert.Throws<ArgumentException>(() => CoolingOptions.Find("cooling.4"));
        Assert.Equal("130 to 80 °F in 1 h 30 min", CoolingOptions.One.Steps[0].Print());
    }

    private static CoolingCheck Check(IEnumerable<ProcessReading> readings) => Cooling.Check(CoolingOptions.One, readings);

    private static void Steps(IEnumerable<ProcessReading> readings, params ProcessVerdict[] expected)
    {
        var check = Check(readings);

        Assert.Equal(expected, check.Steps.Select(step => step.Verdict));
        Assert.Equal(expected.Min(), check.Verdict);
        Assert.Equal(expected.Count(verdict => verdict != Meets), check.Findings.Count);
    }
}
