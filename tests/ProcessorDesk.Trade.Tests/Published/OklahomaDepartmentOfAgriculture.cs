using ProcessorDesk.Trade.Yields;
using Xunit;

namespace ProcessorDesk.Trade.Tests.Published;

/// <summary>Source: Oklahoma Department of Agriculture, how much meat a 1,000 lb steer and a 250 lb hog give.</summary>
public sealed class OklahomaDepartmentOfAgriculture
{
    private static readonly ScaleDivision s_pound = ScaleDivision.Of(WeightUnit.Pound, 1m);
    private static readonly ScaleDivision s_tenth = ScaleDivision.Of(WeightUnit.Pound, 0.1m);

    [Fact]
    public void A_steer_of_1000_lb_hangs_610_and_sends_430_home()
    {
        var hanging = Forecasting.Forecast(Species.Beef, CarcassState.Live, CarcassState.Hanging, Weight.FromPounds(1000m))!.Typical;
        var home = Forecasting.Forecast(Species.Beef, CarcassState.Hanging, CarcassState.TakeHome, hanging)!.Typical;

        Assert.Equal("610 lb", s_pound.Print(hanging));
        Assert.Equal("430 lb", s_pound.Print(home));
    }

    [Fact]
    public void The_steers_cuts_sum_to_what_goes_home()
    {
        decimal[] printed = [103.2m, 38.7m, 34.4m, 17.2m, 38.7m, 30.1m, 107.5m, 25.8m, 17.2m, 17.2m];

        var parts = Cutout.For(Species.Beef)!.Split(Weight.FromPounds(430m), s_tenth);

        Assert.Equal(430.0m, printed.Sum());
        Assert.Equal(printed, parts.Select(s_tenth.Figure));
        Assert.Equal(Weight.FromPounds(430m).Milligrams, parts.Sum(part => part.Milligrams));
    }

    [Fact]
    public void A_hog_of_250_lb_hangs_180_and_sends_144_home_in_these_cuts()
    {
        decimal[] printed = [28m, 23m, 23m, 6m, 9m, 12m, 3m, 5m, 23m, 9m, 3m];

        var hanging = Forecasting.Forecast(Species.Hog, CarcassState.Live, CarcassState.Hanging, Weight.FromPounds(250m))!.Typical;
        var home = Forecasting.Forecast(Species.Hog, CarcassState.Hanging, CarcassState.TakeHome, hanging)!.Typical;

        Assert.Equal("180.0 lb", s_tenth.Print(hanging));
        Assert.Equal("144.0 lb", s_tenth.Print(home));
        Assert.Equal(144m, printed.Sum());
        Assert.Equal(printed, Cutout.For(Species.Hog)!.Split(home, s_pound).Select(s_pound.Figure));
    }
}
