using ProcessorDesk.Trade.Deadlines;
using Xunit;

namespace ProcessorDesk.Trade.Tests.Published;

/// <summary>Source: Iowa Code 556H.1: meat nobody fetches, two months after a mailed notice.</summary>
public sealed class IowaCode556H
{
    [Fact]
    public void A_letter_of_10_January_2026_waits_until_10_March()
    {
        var days = UnclaimedRule.Iowa.Days(new DateOnly(2025, 12, 1), new DateOnly(2026, 1, 10));

        Assert.Equal(new DateOnly(2026, 3, 10), days.DisposalAfter);
        Assert.False(days.MayGoOn(new DateOnly(2026, 3, 10)));
        Assert.True(days.MayGoOn(new DateOnly(2026, 3, 11)));
    }

    [Theory]
    [InlineData(2025, 12, 31, 2026, 2, 28)] // February has no 31st
    [InlineData(2023, 12, 31, 2024, 2, 29)] // a leap year's has one more day
    [InlineData(2023, 12, 29, 2024, 2, 29)]
    [InlineData(2024, 2, 29, 2024, 4, 29)]
    [InlineData(2026, 6, 30, 2026, 8, 30)]
    [InlineData(2026, 11, 30, 2027, 1, 30)]
    public void Two_months_end_on_the_same_day_of_the_month_or_on_its_last(int year, int month, int day, int endYear, int endMonth, int endDay) =>
        Assert.Equal(
            new DateOnly(endYear, endMonth, endDay),
            UnclaimedRule.Iowa.Days(new DateOnly(2023, 1, 1), new DateOnly(year, month, day)).DisposalAfter);
}
