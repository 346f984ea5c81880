using ProcessorDesk.Trade.Yields;
using Xunit;

namespace ProcessorDesk.Trade.Tests.Published;

/// <summary>Source: Cornell University 2009, a goat weighed live, hanging and cut.</summary>
public sealed class CornellGoat2009
{
    private static readonly ScaleDivision s_tenth = ScaleDivision.Of(WeightUnit.Pound, 0.1m);

    [Theory]
    [InlineData("77", "39.5", "51.3 %")]
    [InlineData("39.5", "31.0", "78.5 %")]
    [InlineData("77", "31.0", "40.3 %")]
    public void Actual_ratios_of_the_goat(string from, string to, string percent)
    {
        var statement = YieldStatement.Of(Pounds(from), Pounds(to), forecast: null, s_tenth);

        Assert.Equal(percent, statement.Ratio!.Value.PrintPercent());
        Assert.Equal(YieldVerdict.NoRange, statement.Verdict);
    }

    [Fact]
    public void The_goat_lies_inside_the_published_range()
    {
        var forecast = Forecasting.Forecast(Species.Goat, CarcassState.Live, CarcassState.Hanging, Pounds("77"))!;

        Assert.Equal(Weight.FromPounds(77m * 0.48m), forecast.Typical);
        Assert.Equal(YieldVerdict.InsideExtreme, YieldStatement.Of(Pounds("77"), Pounds("39.5"), forecast, s_tenth).Verdict);
    }

    private static Weight Pounds(string text) => WeightText.Parse(text, WeightUnit.Pound).Result;
}
