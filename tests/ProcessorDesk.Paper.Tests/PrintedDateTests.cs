using Xunit;

namespace ProcessorDesk.Paper.Tests;

public sealed class PrintedDateTests
{
    [Fact]
    public void A_day_is_printed_with_its_weekday() => Assert.Equal("Fri 27 Nov 2026", PrintedDate.Of(new DateOnly(2026, 11, 27)));

    [Fact]
    public void A_moment_is_printed_to_the_minute() => Assert.Equal("Sat 5 Dec 2026, 7:05 AM", PrintedDate.Of(new DateTime(2026, 12, 5, 7, 5, 59)));

    [Theory]
    [InlineData(0, 0, "12:00 AM")]
    [InlineData(12, 0, "12:00 PM")]
    [InlineData(14, 5, "2:05 PM")]
    public void A_time_alone_says_which_half_of_the_day(int hour, int minute, string printed) => Assert.Equal(printed, PrintedDate.Of(new TimeOnly(hour, minute)));
}
