using ProcessorDesk.Trade.Process;
using Xunit;
using static ProcessorDesk.Trade.Tests.Process.Cook;

namespace ProcessorDesk.Trade.Tests.Process;

/// <summary>From 50 to 130 °F in at most six hours (FSIS-GD-2021-14, p. 24), and when the record does not show it.</summary>
public sealed class ComeUpTests
{
    /// <summary>40 at 0, 60 at 10: passes 50 after 5 min. 120 at 200, 140 at 210: passes 130 after 205. The gap between does not matter.</summary>
    [Fact]
    public void It_runs_from_crossing_to_crossing_through_gaps() =>
        Check(ProcessVerdict.Meets, 200, Minutes((0, 40), (10, 60), (200, 120), (210, 140)));

    [Fact]
    public void A_record_that_begins_warm_does_not_show_it() =>
        Check(ProcessVerdict.NotShown, 10, Minutes((0, 51), (10, 130)));

    [Fact]
    public void A_record_that_begins_hot_does_not_show_it() =>
        Check(ProcessVerdict.NotShown, 0, Minutes((0, 140), (10, 150)));

    [Fact]
    public void A_record_that_never_gets_hot_does_not_show_it_until_it_is_too_late()
    {
        List<ProcessReading> lukewarm = [.. Enumerable.Range(0, 37).Select(i => At(i * 600, i == 0 ? 50 : 100))];

        Check(ProcessVerdict.NotShown, 360, lukewarm);
        Check(ProcessVerdict.DoesNotMeet, 361, [.. lukewarm, At(361 * 60, 100)]);
    }

    /// <summary>By the clock 365 min, 345 of them shown: it may have been either.</summary>
    [Fact]
    public void A_gap_can_leave_it_open()
    {
        List<ProcessReading> readings = [.. Enumerable.Range(0, 35).Select(i => At(i * 600, i == 0 ? 50 : 100)), At(360 * 60, 100), At(365 * 60, 130)];

        Check(ProcessVerdict.NotShown, 345, readings);
    }

    /// <summary>A row may be met, but the table is for a come-up of at most six hours: 6:01 takes the record out of it.</summary>
    [Theory]
    [InlineData(360, ProcessVerdict.Meets)]
    [InlineData(361, ProcessVerdict.DoesNotMeet)]
    public void Too_long_on_the_way_no_row_helps(int minutes, ProcessVerdict expected)
    {
        List<ProcessReading> slow = [At(0, 50), .. Enumerable.Range(1, 23).Select(i => At(i * 900, 100)), At(minutes * 60, 130), At(minutes * 60 + 300, 160)];
        var check = Lethality.Check(LethalityKind.Meat65Log, slow, longestGap: TimeSpan.FromMinutes(16));

        Assert.Equal((ProcessVerdict.Meets, expected), (check.Verdict, check.WithComeUp));
        Assert.Equal(Ratio.Of(minutes, 1), check.ComeUp.Minutes);
    }

    [Fact]
    public void Where_only_a_gap_can_have_made_it_short_enough_nothing_is_shown()
    {
        var check = Lethality.Check(LethalityKind.Meat65Log, Minutes((0, 50), (361, 130), (366, 160)));

        Assert.Equal((ProcessVerdict.Meets, ProcessVerdict.NotShown), (check.Verdict, check.WithComeUp));
        Assert.Equal(Ratio.Of(361, 1), check.ComeUp.Minutes);
        Assert.NotNull(check.ComeUp.Finding);
    }

    [Fact]
    public void A_record_that_begins_hot_leaves_the_row_its_verdict()
    {
        var check = Lethality.Check(LethalityKind.Meat65Log, Minutes((0, 145), (4, 145)));

        Assert.Equal((ProcessVerdict.Meets, null), (check.WithComeUp, check.ComeUp.Minutes));
        Assert.NotNull(check.ComeUp.Finding);
    }

    [Fact]
    public void The_slowest_probe_counts() =>
        Check(ProcessVerdict.Meets, 12, [.. OfProbe(1, (0, 50), (10, 130)), .. OfProbe(2, (0, 50), (12, 130))]);

    [Fact]
    public void Meat_that_cooled_down_again_starts_anew_from_its_last_moment_at_50() =>
        Check(ProcessVerdict.Meets, 10, Minutes((0, 50), (10, 60), (20, 50), (30, 130), (40, 50)));

    [Fact]
    public void Meat_that_was_hot_before_starts_once_it_is_cold() =>
        Check(ProcessVerdict.Meets, 10, Minutes((0, 140), (10, 50), (20, 130)));

    private static void Check(ProcessVerdict verdict, int minutes, IEnumerable<ProcessReading> readings)
    {
        var comeUp = Lethality.Check(LethalityKind.Meat65Log, readings).ComeUp;

        Assert.Equal((verdict, TimeSpan.FromMinutes(minutes)), (comeUp.Verdict, comeUp.Found));
        Assert.Equal(verdict == ProcessVerdict.Meets, comeUp.Finding is null);
    }
}
