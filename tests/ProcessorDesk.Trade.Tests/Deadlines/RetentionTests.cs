using FsCheck.Xunit;
using ProcessorDesk.Trade.Deadlines;
using Xunit;
using static ProcessorDesk.Trade.Deadlines.RetentionRule;

namespace ProcessorDesk.Trade.Tests.Deadlines;

[Properties(MaxTest = 1000)]
public sealed class RetentionTests
{
    [Theory]
    [InlineData("2025-01-01", "2027-12-31")]
    [InlineData("2025-12-31", "2027-12-31")]
    [InlineData("2026-01-01", "2028-12-31")]
    [InlineData("2024-02-29", "2026-12-31")]
    public void Federal_counts_from_the_end_of_the_year_of_hand_over(string handedOver, string until) =>
        Assert.Equal(Day(until), Retention.Of([Federal], new JobDays(Day("2020-05-05"), Day("2020-05-06"), Day(handedOver))).Until);

    [Theory]
    [InlineData("2023-02-28", "2025-02-28")]
    [InlineData("2024-02-28", "2026-02-28")]
    [InlineData("2024-02-29", "2026-02-28")]
    [InlineData("2024-03-01", "2026-03-01")]
    [InlineData("2024-12-31", "2026-12-31")]
    public void Two_years_from_processing_meet_a_leap_day(string processed, string until) =>
        Assert.Equal(Day(until), Retention.Of([TexasCustom], new JobDays(null, Day(processed), null)).Until);

    [Fact]
    public void Each_rule_counts_from_its_own_day()
    {
        var days = new JobDays(Day("2025-11-15"), Day("2025-11-20"), Day("2026-01-03"));

        Assert.Equal(
            [Day("2028-12-31"), Day("2027-11-20"), Day("2026-11-15"), Day("2027-01-03")],
            Retention.Of(RetentionRule.All, days).Each.Select(each => each.Until!.Value));
        Assert.Equal(Federal, Retention.Of(RetentionRule.All, days).Rule);
    }

    [Fact]
    public void While_one_rule_cannot_be_counted_the_records_are_kept()
    {
        var open = Retention.Of([SouthDakotaGame, Colorado], new JobDays(Day("2025-11-15"), null, null));

        Assert.Null(open.Until);
        Assert.Null(open.Rule);
        Assert.Equal(Day("2026-11-15"), open.Each[0].Until);
        Assert.True(open.IsKeptOn(Day("2050-01-01")));
    }

    [Fact]
    public void The_last_day_is_kept_too()
    {
        var kept = Retention.Of([SouthDakotaGame], JobDays.AllOn(Day("2025-11-15")));

        Assert.True(kept.IsKeptOn(Day("2026-11-15")));
        Assert.False(kept.IsKeptOn(Day("2026-11-16")));
    }

    [Fact]
    public void A_shops_own_length_takes_the_place_of_the_published_one() =>
        Assert.Equal(Day("2032-12-31"), Retention.Of([Federal with { Length = new(7, CalendarUnit.Year) }], JobDays.AllOn(Day("2025-11-15"))).Until);

    [Fact]
    public void Records_are_kept_by_some_rule() => Assert.Throws<ArgumentException>(() => Retention.Of([], JobDays.AllOn(Day("2025-11-15"))));

    [Fact]
    public void Every_rule_has_an_id_of_its_own_a_source_and_a_mark()
    {
        Assert.Distinct(RetentionRule.All.Select(rule => rule.Id));
        Assert.All(RetentionRule.All, rule => Assert.False(rule.Source == "" || rule.Mark == ""));
    }

    [Property]
    public void The_latest_wins_and_another_rule_never_shortens(int day, bool federal, bool texas, bool game)
    {
        var days = JobDays.AllOn(new DateOnly(2000, 1, 1).AddDays(Math.Abs(day % 40_000)));
        RetentionRule[] apply = [Colorado, .. federal ? [Federal] : Array.Empty<RetentionRule>(), .. texas ? [TexasCustom] : Array.Empty<RetentionRule>(), .. game ? [SouthDakotaGame] : Array.Empty<RetentionRule>()];

        var kept = Retention.Of(apply, days);

        Assert.All(kept.Each, each => Assert.True(each.Until <= kept.Until));
        Assert.Contains(kept.Each, each => each.Until == kept.Until && each.Rule == kept.Rule);
        Assert.True(kept.Until >= Retention.Of([Colorado], days).Until);
    }

    private static DateOnly Day(string text) => DateOnly.ParseExact(text, "yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
}
