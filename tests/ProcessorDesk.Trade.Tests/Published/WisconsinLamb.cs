using ProcessorDesk.Trade.Yields;
using Xunit;
using static ProcessorDesk.Trade.Yields.CarcassState;

namespace ProcessorDesk.Trade.Tests.Published;

/// <summary>
/// Source: University of Wisconsin, lamb: hangs 52 to 54 % of live, from 44 to 56 at the ends; gives 65 to 75 % of the carcass bone-in,
/// 43 to 50 boneless.
/// </summary>
public sealed class WisconsinLamb
{
    [Theory]
    [InlineData(Live, Hanging, 53, 52, 54, 44, 56)]
    [InlineData(Hanging, BoneIn, 70, 65, 75, null, null)]
    [InlineData(Hanging, Boneless, 47, 43, 50, null, null)]
    public void Of_100_lb_the_pounds_are_the_percents(CarcassState from, CarcassState to, int typical, int low, int high, int? least, int? most)
    {
        var forecast = Forecasting.Forecast(Species.Lamb, from, to, Weight.FromPounds(100m))!;

        Assert.Equal(Weight.FromPounds(typical), forecast.Typical);
        Assert.Equal((Weight.FromPounds(low), Weight.FromPounds(high)), (forecast.UsualLow, forecast.UsualHigh));
        Assert.Equal((Pounds(least), Pounds(most)), (forecast.ExtremeLow, forecast.ExtremeHigh));
    }

    private static Weight? Pounds(int? pounds) => pounds is { } known ? Weight.FromPounds(known) : null;
}
