using ProcessorDesk.Trade.Yields;
using Xunit;

namespace ProcessorDesk.Trade.Tests.Published;

/// <summary>Source: Noble Research Institute 2012, adult white-tailed deer.</summary>
public sealed class NobleResearchInstitute2012
{
    [Fact]
    public void A_dressed_deer_of_105_lb_was_134_lb_alive_between_126_and_141()
    {
        var forecast = Forecasting.Forecast(Species.WhiteTailDeer, CarcassState.FieldDressed, CarcassState.Live, Weight.FromPounds(105m))!;

        Assert.Equal(Weight.FromPounds(134m), forecast.Typical);
        Assert.Equal(Weight.FromPounds(126m), forecast.UsualLow);
        Assert.Equal(Weight.FromPounds(141m), forecast.UsualHigh);
        Assert.Null(forecast.ExtremeLow);
        Assert.Equal(forecast.UsualLow, forecast.Low);
    }
}
