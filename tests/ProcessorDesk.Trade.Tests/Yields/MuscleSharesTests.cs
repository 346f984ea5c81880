using ProcessorDesk.Trade.Yields;
using Xunit;

namespace ProcessorDesk.Trade.Tests.Yields;

/// <summary>Massey University 1985, farmed fallow deer: neck 12.6, flank 15.4, shoulder 17.8, saddle 15.5, haunch 39.4 %.</summary>
public sealed class MuscleSharesTests
{
    [Fact]
    public void All_groups_together_are_one_though_the_printed_means_are_not()
    {
        Assert.Equal(100.7m, 12.6m + 15.4m + 17.8m + 15.5m + 39.4m);
        Assert.Equal(Ratio.One, MuscleShares.OfDeer(["neck", "flank", "shoulder", "saddle", "haunch"]));
        Assert.Equal(Ratio.Zero, MuscleShares.OfDeer([]));
    }

    [Theory]
    [InlineData("neck", 126)]
    [InlineData("flank", 154)]
    [InlineData("shoulder", 178)]
    [InlineData("saddle", 155)]
    [InlineData("haunch", 394)]
    public void Each_group_is_its_printed_mean_of_their_sum(string group, int tenths) =>
        Assert.Equal(Ratio.Of(tenths, 1007), MuscleShares.OfDeer([group]));

    [Fact]
    public void A_group_that_is_not_published_takes_nothing() => Assert.Equal(Ratio.Zero, MuscleShares.OfDeer(["shank"]));
}
