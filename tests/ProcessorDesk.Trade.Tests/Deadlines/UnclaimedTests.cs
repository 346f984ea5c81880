using FsCheck.Xunit;
using ProcessorDesk.Trade.Deadlines;
using Xunit;

namespace ProcessorDesk.Trade.Tests.Deadlines;

[Properties(MaxTest = 1000)]
public sealed class UnclaimedTests
{
    private static readonly DateOnly s_ready = new(2026, 1, 31);

    [Theory]
    [InlineData(30, 0, false)]
    [InlineData(30, 29, false)]
    [InlineData(30, 30, false)] // the thirtieth day is still the owner's
    [InlineData(30, 31, true)]
    [InlineData(0, 0, false)]
    [InlineData(0, 1, true)]
    public void Meat_is_unclaimed_from_the_day_after_it_waited(int wait, int today, bool unclaimed) =>
        Assert.Equal(unclaimed, UnclaimedRule.Shops(wait).Days(s_ready, null).IsUnclaimedOn(s_ready.AddDays(today)));

    [Fact]
    public void A_wait_in_months_ends_with_the_month() =>
        Assert.Equal(new DateOnly(2026, 2, 28), (UnclaimedRule.Iowa with { BeforeNotice = new(1, CalendarUnit.Month) }).Days(s_ready, null).NoticeAfter);

    [Fact]
    public void Without_a_notice_or_a_days_after_it_waits_on()
    {
        Assert.All(
            [UnclaimedRule.Shops(30, 30).Days(s_ready, null), UnclaimedRule.Shops(30).Days(s_ready, s_ready)],
            days =>
            {
                Assert.Null(days.DisposalAfter);
                Assert.False(days.MayGoOn(new DateOnly(2099, 1, 1)));
            });
        Assert.Equal(s_ready.AddDays(44), UnclaimedRule.Shops(30, 14).Days(s_ready, s_ready.AddDays(30)).DisposalAfter);
    }

    [Theory]
    [InlineData(1, CalendarUnit.Day, "2024-02-28", "2024-02-29", "1 day")]
    [InlineData(2, CalendarUnit.Day, "2023-02-28", "2023-03-02", "2 days")]
    [InlineData(1, CalendarUnit.Month, "2024-01-31", "2024-02-29", "1 month")]
    [InlineData(3, CalendarUnit.Month, "2025-11-30", "2026-02-28", "3 months")]
    [InlineData(1, CalendarUnit.Year, "2024-02-29", "2025-02-28", "1 year")]
    [InlineData(4, CalendarUnit.Year, "2024-02-29", "2028-02-29", "4 years")]
    [InlineData(0, CalendarUnit.Month, "2024-02-29", "2024-02-29", "0 months")]
    public void Periods_at_the_ends_of_months(int count, CalendarUnit unit, string from, string to, string words)
    {
        var period = new CalendarPeriod(count, unit);

        Assert.Equal(Day(to), period.EndFrom(Day(from)));
        Assert.Equal(words, period.Print());
    }

    [Fact]
    public void A_period_goes_forward() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new CalendarPeriod(-1, CalendarUnit.Day).EndFrom(s_ready));

    [Property]
    public void A_later_start_never_ends_earlier(int start, int later, byte count)
    {
        var from = new DateOnly(2000, 1, 1).AddDays(Math.Abs(start % 40_000));
        foreach (var unit in Enum.GetValues<CalendarUnit>())
        {
            var period = new CalendarPeriod(count, unit);
            Assert.True(period.EndFrom(from.AddDays(Math.Abs(later % 1000))) >= period.EndFrom(from));
            Assert.True(period.EndFrom(from) >= from);
        }
    }

    private static DateOnly Day(string text) => DateOnly.ParseExact(text, "yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
}
