using Xunit;

namespace ProcessorDesk.Paper.Tests;

public sealed class PrintedDateTests
{
    [Fact]
    public void A_day_is_printed_with_its_weekday() => Assert.Equal("Fri 27 Nov 2026", PrintedDate.Of(new DateOnly(2026, 11, 27)));

    [Fact]
    public void A_time_is_printed_to_the_minute() => Assert.Equal("Sat 5 Dec 2026 07:05", PrintedDate.Of(new DateTime(2026, 12, 5, 7, 5, 59)));
}
