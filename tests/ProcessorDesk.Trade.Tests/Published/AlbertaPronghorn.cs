using ProcessorDesk.Trade.Yields;
using Xunit;

namespace ProcessorDesk.Trade.Tests.Published;

/// <summary>Source: a study of 1,210 pronghorn in Alberta: whole weight is 1.36 times hog-dressed for males, 1.51 for females.</summary>
public sealed class AlbertaPronghorn
{
    [Fact]
    public void A_buck_of_80_lb_dressed_weighed_108_8_and_a_doe_120_8()
    {
        var doe = Assert.Single(PublishedRatios.Variants(Species.Pronghorn, CarcassState.FieldDressed, CarcassState.Live));

        Assert.Equal("females", doe.Variant);
        Assert.Equal(80m * 1.36m, Pounds(Forecasting.Forecast(Species.Pronghorn, CarcassState.FieldDressed, CarcassState.Live, Weight.FromPounds(80m))));
        Assert.Equal(80m * 1.51m, Pounds(doe.Forecast(Weight.FromPounds(80m))));
    }

    private static decimal Pounds(YieldForecast? forecast) => decimal.Round(forecast!.Typical.Pounds, 4);
}
