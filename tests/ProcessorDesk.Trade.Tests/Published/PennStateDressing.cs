using Xunit;

namespace ProcessorDesk.Trade.Tests.Published;

/// <summary>Source: Pennsylvania State University, dressing percentages of a steer, a hog and a lamb.</summary>
public sealed class PennStateDressing
{
    [Theory]
    [InlineData(1312, 60, "787 lb")]
    [InlineData(245, 72, "176 lb")]
    [InlineData(127, 52, "66 lb")]
    public void Live_weight_times_dressing_percent_is_hanging_weight(int live, int percent, string hanging) =>
        Assert.Equal(hanging, ScaleDivision.Of(WeightUnit.Pound, 1m).Print(
            Proportion.FromPercent(percent).ToRatio().Times(Weight.FromPounds(live))));
}
