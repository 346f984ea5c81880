using ProcessorDesk.Trade.Yields;
using Xunit;

namespace ProcessorDesk.Trade.Tests.Published;

/// <summary>Source: Michigan State University Extension, Preserving Food Safely, 01600637 (deer) and 01600636 (elk size).</summary>
public sealed class MichiganStateVenison
{
    private static readonly ScaleDivision s_tenth = ScaleDivision.Of(WeightUnit.Pound, 0.1m);

    [Theory]
    [InlineData(100, "48.0 lb", "57.3 lb")]
    [InlineData(120, "57.6 lb", "69.5 lb")]
    [InlineData(150, "72.0 lb", "87.8 lb")]
    [InlineData(50, "24.0 lb", "26.8 lb")] // the source prints 24.8 boneless here, against its own rule: a misprint
    public void The_table_of_field_dressed_deer(int dressed, string boneless, string boneIn)
    {
        foreach (var deer in (Species[])[Species.WhiteTailDeer, Species.MuleDeer])
        {
            Assert.Equal(boneless, s_tenth.Print(Typical(deer, CarcassState.Boneless, dressed)));
            Assert.Equal(boneIn, s_tenth.Print(Typical(deer, CarcassState.BoneIn, dressed)));
        }
    }

    [Fact]
    public void Deer_stray_five_percent_easily_and_fifteen_at_the_extremes()
    {
        var forecast = Forecasting.Forecast(Species.WhiteTailDeer, CarcassState.FieldDressed, CarcassState.BoneIn, Weight.FromPounds(100m))!;
        var typical = 100m * 0.61m - 3.7m;

        AssertPounds(typical, forecast.Typical);
        AssertPounds(typical * 0.95m, forecast.UsualLow);
        AssertPounds(typical * 1.05m, forecast.UsualHigh);
        AssertPounds(typical * 0.85m, forecast.ExtremeLow);
        AssertPounds(typical * 1.15m, forecast.ExtremeHigh);
        Assert.Equal("A", forecast.Mark);
        Assert.Contains("01600637", forecast.Source, StringComparison.Ordinal);
    }

    [Fact]
    public void Elk_stray_seven_percent_and_twenty_one_at_the_extremes()
    {
        var forecast = Forecasting.Forecast(Species.Elk, CarcassState.FieldDressed, CarcassState.Boneless, Weight.FromPounds(400m))!;

        AssertPounds(400m * 0.43m, forecast.Typical);
        AssertPounds(400m * 0.43m * 0.93m, forecast.UsualLow);
        AssertPounds(400m * 0.43m * 1.21m, forecast.ExtremeHigh);
        AssertPounds(400m * 0.57m - 2.8m, Typical(Species.Elk, CarcassState.BoneIn, 400));
    }

    [Fact]
    public void Moose_use_the_elk_figures_and_say_so() =>
        Assert.Contains("used for moose by size",
            Forecasting.Forecast(Species.Moose, CarcassState.FieldDressed, CarcassState.Boneless, Weight.FromPounds(600m))!.Source, StringComparison.Ordinal);

    [Fact]
    public void Two_deer_are_forecast_one_by_one_and_added()
    {
        var first = Forecasting.Forecast(Species.WhiteTailDeer, CarcassState.FieldDressed, CarcassState.Boneless, Weight.FromPounds(128.5m))!;
        var second = Forecasting.Forecast(Species.WhiteTailDeer, CarcassState.FieldDressed, CarcassState.Boneless, Weight.FromPounds(96.0m))!;

        var both = Forecasting.Together([first, second]);

        Assert.Equal(128.5m * 0.48m + 96.0m * 0.48m, 107.76m);
        Assert.Equal("107.8 lb, usually 102.4 to 113.1, at the extremes 91.6 to 123.9", both.Print());
        Assert.Equal(first.Source, both.Source);
        Assert.Equal("A", both.Mark);
    }

    [Fact]
    public void A_weight_too_small_for_the_rule_has_no_forecast() =>
        Assert.Null(Forecasting.Forecast(Species.WhiteTailDeer, CarcassState.FieldDressed, CarcassState.BoneIn, Weight.FromPounds(6m)));

    /// <summary>Equal to the ten-thousandth of a pound: a weight is whole milligrams, of which there are 45 in it.</summary>
    private static void AssertPounds(decimal expected, Weight? actual) => Assert.Equal(expected, decimal.Round(actual!.Value.Pounds, 4));

    private static Weight Typical(Species species, CarcassState to, int dressed) =>
        Forecasting.Forecast(species, CarcassState.FieldDressed, to, Weight.FromPounds(dressed))!.Typical;
}
