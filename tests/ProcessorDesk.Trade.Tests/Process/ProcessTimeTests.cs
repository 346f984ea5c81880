using ProcessorDesk.Trade.Process;
using Xunit;

namespace ProcessorDesk.Trade.Tests.Process;

public sealed class ProcessTimeTests
{
    [Theory]
    [InlineData("0", "0 s")]
    [InlineData("0.09", "0 s")]
    [InlineData("0.1", "0.1 s")]
    [InlineData("54.4", "54.4 s")]
    [InlineData("60", "1 min")]
    [InlineData("239.99", "3 min 59.9 s")]
    [InlineData("3600", "1 h")]
    [InlineData("3600.5", "1 h 0.5 s")]
    [InlineData("5400", "1 h 30 min")]
    [InlineData("21660", "6 h 1 min")]
    [InlineData("288000", "80 h")]
    public void Time_is_printed_in_hours_minutes_and_seconds(string seconds, string printed)
    {
        var ticks = decimal.Parse(seconds, System.Globalization.CultureInfo.InvariantCulture) * TimeSpan.TicksPerSecond;

        Assert.Equal(printed, ProcessTime.Print(new TimeSpan((long)ticks)));
    }

    /// <summary>From 129 to 130.5 °F in a second: 1/3 s at or above 130, which is 0.3 s and not 0.4.</summary>
    [Fact]
    public void Time_that_has_to_be_long_enough_is_cut_off()
    {
        var check = Lethality.Check(LethalityKind.Meat65Log, [Cook.At(0, 129), Cook.At(1, 130.5m)]);

        Assert.Equal((130m, TimeSpan.FromMilliseconds(300)), (check.Row!.At.Fahrenheit, check.Found));
    }

    /// <summary>From 131 to 128 °F in a second: 1/3 s at or above 130, so 2/3 s below it, which is 0.7 s and not 0.6.</summary>
    [Fact]
    public void Time_that_has_to_be_short_enough_is_rounded_up()
    {
        var check = Cooling.Check(CoolingOptions.One, [Cook.At(0, 131), Cook.At(1, 128)]);

        Assert.Equal(TimeSpan.FromMilliseconds(700), check.Steps[0].Found);
    }

    /// <summary>From 129 to 130.5 °F in 200 seconds: 66 2/3 s at or above 130.</summary>
    [Fact]
    public void From_a_minute_on_time_that_has_to_be_long_enough_is_cut_to_whole_seconds()
    {
        var check = Lethality.Check(LethalityKind.Meat65Log, [Cook.At(0, 129), Cook.At(200, 130.5m)]);

        Assert.Equal((130m, "1 min 6 s"), (check.Row!.At.Fahrenheit, ProcessTime.Print(check.Found)));
    }

    /// <summary>From 131 to 128 °F in 200 seconds: 133 1/3 s below 130.</summary>
    [Fact]
    public void From_a_minute_on_time_that_has_to_be_short_enough_is_rounded_up_to_whole_seconds()
    {
        var check = Cooling.Check(CoolingOptions.One, [Cook.At(0, 131), Cook.At(200, 128)]);

        Assert.Equal("2 min 14 s", ProcessTime.Print(check.Steps[0].Found));
    }

    /// <summary>Cut-off seconds never hide that a row was missed, or met: no row asks for a part of a second from a minute on.</summary>
    [Fact]
    public void No_table_asks_for_part_of_a_second_from_a_minute_on() => Assert.All(
        Enum.GetValues<LethalityKind>().Select(LethalityTables.For).OfType<LethalityTable>().SelectMany(table => table.Rows).Where(row => row.Dwell >= TimeSpan.FromMinutes(1)),
        row => Assert.Equal(0, row.Dwell.Ticks % TimeSpan.TicksPerSecond));
}
