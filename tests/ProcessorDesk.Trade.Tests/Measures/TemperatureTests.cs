using FsCheck.Xunit;
using Xunit;

namespace ProcessorDesk.Trade.Tests.Measures;

[Properties(MaxTest = 1000, Arbitrary = [typeof(Sizes)])]
public sealed class TemperatureTests
{
    [Theory]
    [InlineData("0", 0, 0, "0.0 °F")]
    [InlineData("152", 15200, 152, "152.0 °F")]
    [InlineData("157.9", 15790, 157, "157.9 °F")]
    [InlineData("38.25", 3825, 38, "38.25 °F")]
    [InlineData("38.005", 3801, 38, "38.01 °F")]
    [InlineData("38.004", 3800, 38, "38.0 °F")]
    [InlineData("-0.5", -50, -1, "-0.5 °F")]
    [InlineData("21474836.47", int.MaxValue, 21_474_836, "21474836.47 °F")]
    public void Degrees_are_kept_in_hundredths(string fahrenheit, int hundredths, int wholeDown, string printed)
    {
        var temperature = Temperature.FromFahrenheit(decimal.Parse(fahrenheit, System.Globalization.CultureInfo.InvariantCulture));

        Assert.Equal((hundredths, wholeDown, printed), (temperature.HundredthsFahrenheit, temperature.WholeFahrenheitDown, temperature.Print()));
    }

    [Fact]
    public void Leaving_the_range_throws()
    {
        Assert.Throws<OverflowException>(() => Temperature.FromFahrenheit(21_474_836.48m));
        Assert.Throws<OverflowException>(() => Temperature.FromCelsiusDown(12_000_000m));
        Assert.Throws<OverflowException>(() => Temperature.FromCelsiusUp(-12_000_000m));
    }

    [Property]
    public void A_celsius_reading_never_helps_the_verdict(Keyed keyed)
    {
        var celsius = keyed.Count % 100_000 / 1000m - 50m;
        var exact = celsius * 9m / 5m + 32m;

        var (heat, cold) = (Temperature.FromCelsiusDown(celsius), Temperature.FromCelsiusUp(celsius));

        Assert.True(heat.Fahrenheit <= exact && exact - heat.Fahrenheit < 0.01m);
        Assert.True(cold.Fahrenheit >= exact && cold.Fahrenheit - exact < 0.01m);
        Assert.True(heat <= cold && !(cold < heat) && (heat == cold || cold > heat) && cold >= heat);
    }
}
