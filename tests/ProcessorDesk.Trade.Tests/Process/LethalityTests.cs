using ProcessorDesk.Trade.Process;
using Xunit;
using static ProcessorDesk.Trade.Tests.Process.Cook;

namespace ProcessorDesk.Trade.Tests.Process;

/// <summary>What a record shows of the row of 145 °F, which asks for four minutes, and when it shows too little.</summary>
public sealed class LethalityTests
{
    [Fact]
    public void Without_readings_nothing_is_shown()
    {
        var check = Check([]);

        Assert.Equal((ProcessVerdict.NotShown, null, ProcessVerdict.NotShown), (check.Verdict, check.Row, check.ComeUp.Verdict));
        Assert.Equal("none", Assert.Single(check.Findings, finding => finding.Found == "none").Found);
    }

    [Theory]
    [InlineData("157.99", ProcessVerdict.NotShown)]
    [InlineData("158", ProcessVerdict.Meets)]
    public void One_reading_shows_a_temperature_and_no_time(string fahrenheit, ProcessVerdict expected) =>
        Assert.Equal(expected, Check([At(0, decimal.Parse(fahrenheit, System.Globalization.CultureInfo.InvariantCulture))]).Verdict);

    /// <summary>
    /// From 125 to 145 in 10 min, two degrees a minute. Held to 13.9 min, that is 3.9 at 145 (of 4), 4.4 at 144 (of 5), 4.9 at 143 (of 6), 5.4 at
    /// 142 (of 8) and so on down: no row is met, and 145 came closest. Held to 17 min it is 7 min at 145.
    /// </summary>
    [Theory]
    [InlineData("17", ProcessVerdict.Meets, 420)]
    [InlineData("13.9", ProcessVerdict.DoesNotMeet, 234)]
    public void Between_entries_the_line_counts(string until, ProcessVerdict verdict, int seconds)
    {
        var check = Check(Minutes((0, 125), (10, 145), (decimal.Parse(until, System.Globalization.CultureInfo.InvariantCulture), 145)));

        Assert.Equal((verdict, 145m, TimeSpan.FromSeconds(seconds)), (check.Verdict, check.Row!.At.Fahrenheit, check.Found));
    }

    /// <summary>
    /// Up in 2 min and down again in 7. From 144 to 145.1 it is 1/11 of the 9 min at 145, far from four; all nine are at or above 144, which asks
    /// for five. From 135 to 165 it is 9 × 15/30 = 4.5 min at 150, which asks for 67 s: 203 to spare. At 149 it is 288 s less 85, 203 as well; at
    /// 151 252 less 54, at 148 306 less 107: fewer. Of two alike the hotter row is told.
    /// </summary>
    [Theory]
    [InlineData("144", "145.1", 144, 540)]
    [InlineData("135", "165", 150, 270)]
    public void A_peak_counts_from_crossing_to_crossing_and_the_row_with_most_to_spare_is_told(string foot, string peak, int row, int seconds)
    {
        var (low, high) = (decimal.Parse(foot, System.Globalization.CultureInfo.InvariantCulture), decimal.Parse(peak, System.Globalization.CultureInfo.InvariantCulture));
        var check = Check(Minutes((0, low), (2, high), (9, low)));

        Assert.Equal((ProcessVerdict.Meets, (decimal)row, TimeSpan.FromSeconds(seconds)), (check.Verdict, check.Row!.At.Fahrenheit, check.Found));
    }

    [Fact]
    public void Time_at_a_row_is_added_up_over_a_dip()
    {
        // 2 min at 145, a dip to 144.9, 2 min more, with half a minute down and up again.
        var readings = Minutes((0, 145), (2, 145), (2.25m, 144.9m), (2.5m, 145), (4.5m, 145));

        Assert.Equal((ProcessVerdict.Meets, 145m, TimeSpan.FromMinutes(4)), (Check(readings).Verdict, Check(readings).Row!.At.Fahrenheit, Check(readings).Found));
    }

    [Fact]
    public void The_coldest_probe_counts_at_each_moment()
    {
        // Probe 1 is at 145 in the first four minutes, probe 2 in the last four; both together only from 2 to 4.
        List<ProcessReading> readings =
        [
            .. OfProbe(1, (0, 145), (4, 145), (4.01m, 129), (6, 129)),
            .. OfProbe(2, (0, 129), (1.99m, 129), (2, 145), (6, 145)),
        ];

        var check = Check(readings);

        Assert.Equal((ProcessVerdict.DoesNotMeet, 145m, TimeSpan.FromMinutes(2)), (check.Verdict, check.Row!.At.Fahrenheit, check.Found));
    }

    [Theory]
    [InlineData(15, ProcessVerdict.Meets)]
    [InlineData(16, ProcessVerdict.NotShown)]
    public void A_gap_of_more_than_15_minutes_counts_for_nothing(int minutes, ProcessVerdict expected)
    {
        Assert.Equal(expected, Check(Minutes((0, 145), (minutes, 145))).Verdict);
        Assert.Equal(ProcessVerdict.Meets, Lethality.Check(LethalityKind.Meat65Log, Minutes((0, 145), (minutes, 145)), longestGap: TimeSpan.FromMinutes(16)).Verdict);
    }

    [Fact]
    public void Where_one_probe_has_a_gap_nothing_counts()
    {
        List<ProcessReading> hot = [.. OfProbe(1, (0, 145), (5, 145), (10, 145), (20, 145)), .. OfProbe(2, (0, 145), (3, 145), (19, 145), (20, 145))];

        var check = Check(hot);

        Assert.Equal((ProcessVerdict.NotShown, TimeSpan.FromMinutes(3 + 1)), (Check([.. hot.Where(each => each.At < Start.AddMinutes(20))]).Verdict, check.Found));
        Assert.Equal(ProcessVerdict.Meets, check.Verdict);
    }

    [Fact]
    public void What_a_gap_hides_is_bounded_by_the_other_probes()
    {
        // Probe 2 shows nothing for 20 minutes, but probe 1 shows 120 °F: no row could have been met.
        List<ProcessReading> cool = [.. OfProbe(1, (0, 120), (10, 120), (20, 120)), .. OfProbe(2, (0, 120), (20, 120))];

        Assert.Equal(ProcessVerdict.DoesNotMeet, Check(cool).Verdict);
    }

    [Fact]
    public void A_probe_that_begins_late_leaves_what_came_before_open()
    {
        List<ProcessReading> readings = [.. Minutes((0, 145), (10, 145)), .. OfProbe(2, (7, 145), (10, 145))];

        Assert.Equal((ProcessVerdict.NotShown, TimeSpan.FromMinutes(3)), (Check(readings).Verdict, Check(readings).Found));
    }

    [Fact]
    public void Of_two_readings_at_once_the_lower_counts()
    {
        var readings = Minutes((0, 145), (2, 145), (2, 160), (4, 145));

        Assert.Equal((145m, TimeSpan.FromMinutes(4)), (Check(readings).Row!.At.Fahrenheit, Check(readings).Found));
        Assert.Equal(ProcessVerdict.DoesNotMeet, Check([.. readings, At(120, 130)]).Verdict);
    }

    [Fact]
    public void A_5_log_verdict_says_that_it_needs_support() =>
        Assert.Contains(Check(Held(150, 60), LethalityKind.Meat5Log).Findings, finding => finding.Text.Contains("written support", StringComparison.Ordinal));

    [Fact]
    public void Impossible_arguments_are_slips()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Lethality.Check(LethalityKind.Meat65Log, [], Temperature.FromFahrenheit(-0.1m)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Lethality.Check(LethalityKind.Meat65Log, [], longestGap: TimeSpan.FromSeconds(-1)));
    }

    [Fact]
    public void Every_kind_but_dried_has_a_table_with_its_own_id_and_rising_rows()
    {
        Assert.All(Enum.GetValues<LethalityKind>(), kind => Assert.Equal(kind == LethalityKind.DriedFirst, LethalityTables.For(kind) is null));
        Assert.Equal(6, LethalityTables.All.Select(table => table.Id).Distinct().Count());
        Assert.All(LethalityTables.All, table => Assert.All(table.Rows.Zip(table.Rows.Skip(1)),
            pair => Assert.True(pair.First.At < pair.Second.At && pair.First.Dwell >= pair.Second.Dwell)));
        Assert.All(LethalityTables.All, table => Assert.Contains("FSIS-GD-2021-14", table.Source, StringComparison.Ordinal));
    }

    private static LethalityCheck Check(IEnumerable<ProcessReading> readings, LethalityKind kind = LethalityKind.Meat65Log) => Lethality.Check(kind, readings);
}
