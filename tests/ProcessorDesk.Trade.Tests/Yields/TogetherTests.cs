using ProcessorDesk.Trade.Yields;
using Xunit;

namespace ProcessorDesk.Trade.Tests.Yields;

public sealed class TogetherTests
{
    [Fact]
    public void A_range_one_of_them_lacks_the_sum_lacks_too()
    {
        var deer = Forecasting.Forecast(Species.WhiteTailDeer, CarcassState.FieldDressed, CarcassState.Boneless, Weight.FromPounds(100m))!;
        var quarters = Forecasting.Forecast(Species.WhiteTailDeer, CarcassState.Quarters, CarcassState.Boneless, Weight.FromPounds(40m))!;

        var both = Forecasting.Together([deer, quarters]);

        Assert.Equal(Weight.FromPounds(48m) + Weight.FromPounds(34m), both.Typical);
        Assert.Null(both.UsualLow);
        Assert.Null(both.ExtremeHigh);
        Assert.Equal($"{deer.Source}; {quarters.Source}", both.Source);
        Assert.Equal("–", both.Mark);
    }

    [Fact]
    public void There_is_something_to_add() => Assert.Throws<ArgumentException>(() => Forecasting.Together([]));
}
