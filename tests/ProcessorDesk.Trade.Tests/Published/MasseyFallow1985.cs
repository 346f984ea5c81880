using ProcessorDesk.Trade.Yields;
using Xunit;

namespace ProcessorDesk.Trade.Tests.Published;

/// <summary>Source: Massey University 1985, farmed fallow deer: neck 12.6, flank 15.4, shoulder 17.8, saddle 15.5, haunch 39.4 %.</summary>
public sealed class MasseyFallow1985
{
    private static readonly Cutout s_deer = Cutout.For(Species.WhiteTailDeer)!;

    [Fact]
    public void The_printed_shares_sum_to_100_7_are_scaled_to_one_and_marked_provisional()
    {
        Assert.Equal(100.7m, 12.6m + 15.4m + 17.8m + 15.5m + 39.4m);
        Assert.Equal([12.6m, 15.4m, 17.8m, 15.5m, 39.4m], s_deer.Groups.Select(group => group.Printed));
        Assert.Equal(Ratio.Of(394, 1007), s_deer.ShareOf(s_deer.Groups.Single(group => group.Name == "haunch")));
        Assert.StartsWith("Provisional", s_deer.Note, StringComparison.Ordinal);
    }

    [Fact]
    public void A_carcass_of_100_7_lb_falls_into_the_printed_pounds() =>
        Assert.Equal(
            [12.6m, 15.4m, 17.8m, 15.5m, 39.4m],
            s_deer.Split(Weight.FromPounds(100.7m), ScaleDivision.Of(WeightUnit.Pound, 0.1m)).Select(part => decimal.Round(part.Pounds, 4)));
}
