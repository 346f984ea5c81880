using ProcessorDesk.Trade.Yields;
using Xunit;

namespace ProcessorDesk.Trade.Tests.Yields;

/// <summary>Source: Mississippi State University P3489: a hot beef carcass loses 2 to 5 % on its first day.</summary>
public sealed class MississippiChillTests
{
    [Fact]
    public void Beef_of_750_lb_hot_chills_to_between_712_5_and_735()
    {
        var (low, high) = ChillLoss.For(Species.Beef)!.After(Weight.FromPounds(750m));

        Assert.Equal(Weight.FromPounds(712.5m), low);
        Assert.Equal(Weight.FromPounds(735.0m), high);
    }

    [Fact]
    public void The_loss_measured_is_the_part_of_the_hot_weight() =>
        Assert.Equal("4.0 %", ChillLoss.Measured(Weight.FromPounds(750m), Weight.FromPounds(720m)).PrintPercent());

    [Fact]
    public void No_loss_is_made_up_for_a_species_nobody_published() => Assert.Null(ChillLoss.For(Species.Bear));
}
