using ProcessorDesk.Trade.Yields;
using Xunit;

namespace ProcessorDesk.Trade.Tests.Yields;

public sealed class YieldStatementTests
{
    private static readonly Weight s_from = Weight.FromPounds(224.5m);

    /// <summary>107.76 lb typical; usual 102.372 to 113.148, extreme 91.596 to 123.924: half of the last digit prints either way.</summary>
    private static readonly YieldForecast s_forecast =
        Forecasting.Forecast(Species.WhiteTailDeer, CarcassState.FieldDressed, CarcassState.Boneless, s_from)!;

    [Theory]
    [InlineData("0", YieldVerdict.Outside)]
    [InlineData("91.59", YieldVerdict.Outside)]
    [InlineData("91.60", YieldVerdict.InsideExtreme)]
    [InlineData("92.75", YieldVerdict.InsideExtreme)]
    [InlineData("102.36", YieldVerdict.InsideExtreme)]
    [InlineData("102.37", YieldVerdict.InsideUsual)]
    [InlineData("107.76", YieldVerdict.InsideUsual)]
    [InlineData("113.15", YieldVerdict.InsideUsual)]
    [InlineData("113.16", YieldVerdict.InsideExtreme)]
    [InlineData("123.92", YieldVerdict.InsideExtreme)]
    [InlineData("123.93", YieldVerdict.Outside)]
    public void A_yield_is_judged_as_printed(string actual, YieldVerdict verdict)
    {
        var statement = Statement(actual, s_forecast);

        Assert.Equal(verdict, statement.Verdict);
        Assert.Equal(verdict == YieldVerdict.Outside, statement.IsFlagged);
    }

    [Fact]
    public void An_odd_yield_is_told_with_its_range_and_source_and_what_to_look_for()
    {
        Assert.Equal(
            "92.75 lb came of 224.50 lb, 41.3 %. Expected: 107.8 lb, usually 102.4 to 113.1, at the extremes 91.6 to 123.9. "
            + "This is beyond the usual range but inside the extreme one, as shot damage, trimming and build will do. Source: " + s_forecast.Source + ".",
            Statement("92.75", s_forecast).Words);
        Assert.Contains("look for a weight not booked", Statement("80", s_forecast).Words, StringComparison.Ordinal);
        Assert.Contains("Ask the shop about it.", Statement("80", s_forecast).StandingForOwner, StringComparison.Ordinal);
        Assert.DoesNotContain("booked", Statement("80", s_forecast).StandingForOwner, StringComparison.Ordinal);
        Assert.Contains("booked twice", Statement("130", s_forecast).Words, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_published_ratio_nothing_is_judged()
    {
        var statement = Statement("92.75", forecast: null);

        Assert.Equal(YieldVerdict.NoRange, statement.Verdict);
        Assert.Equal("92.75 lb came of 224.50 lb, 41.3 %. No yield is published for this; the shop's own records will show what is usual.", statement.Words);
    }

    [Fact]
    public void A_ratio_without_a_range_is_shown_and_not_judged()
    {
        var forecast = Forecasting.Forecast(Species.WhiteTailDeer, CarcassState.Quarters, CarcassState.Boneless, Weight.FromPounds(60m))!;
        var statement = YieldStatement.Of(Weight.FromPounds(60m), Weight.FromPounds(20m), forecast, ScaleDivision.HundredthPound);

        Assert.False(statement.IsFlagged);
        Assert.EndsWith("Expected: 51.0 lb. No range is published for it. Source: common practice, no source.", statement.Words, StringComparison.Ordinal);
    }

    /// <summary>Lamb, University of Wisconsin: usually 0.65 to 0.75 of hanging, and no extreme published.</summary>
    [Theory]
    [InlineData("19.49", YieldVerdict.BeyondUsual)]
    [InlineData("19.50", YieldVerdict.InsideUsual)]
    [InlineData("22.50", YieldVerdict.InsideUsual)]
    [InlineData("22.51", YieldVerdict.BeyondUsual)]
    public void Only_a_result_past_a_published_extreme_is_flagged(string actual, YieldVerdict verdict)
    {
        var from = Weight.FromPounds(30m);
        var forecast = Forecasting.Forecast(Species.Lamb, CarcassState.Hanging, CarcassState.BoneIn, from);

        var statement = YieldStatement.Of(from, WeightText.Parse(actual, WeightUnit.Pound).Result, forecast, ScaleDivision.HundredthPound);

        Assert.Equal(verdict, statement.Verdict);
        Assert.False(statement.IsFlagged);
        Assert.Equal(verdict == YieldVerdict.BeyondUsual, statement.Standing.StartsWith("This is beyond the usual range;", StringComparison.Ordinal));
    }

    [Fact]
    public void Nothing_weighed_at_the_start_has_no_ratio() =>
        Assert.Null(YieldStatement.Of(Weight.Zero, Weight.FromPounds(1m), null, ScaleDivision.HundredthPound).Ratio);

    private static YieldStatement Statement(string actual, YieldForecast? forecast) =>
        YieldStatement.Of(s_from, WeightText.Parse(actual, WeightUnit.Pound).Result, forecast, ScaleDivision.HundredthPound);
}
