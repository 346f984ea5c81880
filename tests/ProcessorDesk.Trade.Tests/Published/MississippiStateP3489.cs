using ProcessorDesk.Trade.Yields;
using Xunit;

namespace ProcessorDesk.Trade.Tests.Published;

/// <summary>Source: Mississippi State University P3489: a hot beef carcass loses 2 to 5 % on its first day.</summary>
public sealed class MississippiStateP3489
{
    [Fact]
    public void Beef_of_750_lb_hot_chills_to_between_712_5_and_735()
    {
        var (low, high) = ChillLoss.For(Species.Beef)!.After(Weight.FromPounds(750m));

        Assert.Equal(Weight.FromPounds(712.5m), low);
        Assert.Equal(Weight.FromPounds(735.0m), high);
    }

    [Fact]
    public void Turned_round_735_lb_chilled_was_750_hot_at_the_least_loss()
    {
        var (low, high) = ChillLoss.For(Species.Beef)!.Before(Weight.FromPounds(735m));

        Assert.Equal(750.0m, decimal.Round(low.Pounds, 4));
        Assert.Equal(decimal.Round(735m / 0.95m, 4), decimal.Round(high.Pounds, 4));
    }

    [Fact]
    public void The_loss_measured_is_the_part_of_the_hot_weight() =>
        Assert.Equal("4.0 %", ChillLoss.Measured(Weight.FromPounds(750m), Weight.FromPounds(720m)).PrintPercent());

    /// <summary>2 % of 750 lb is 15, 5 % is 37.5; the ends themselves are inside.</summary>
    [Theory]
    [InlineData("735.5", YieldVerdict.Outside, "less than the 2 % to 5 %")]
    [InlineData("735", YieldVerdict.InsideUsual, "inside the 2 % to 5 %")]
    [InlineData("720", YieldVerdict.InsideUsual, "inside the 2 % to 5 %")]
    [InlineData("712.5", YieldVerdict.InsideUsual, "inside the 2 % to 5 %")]
    [InlineData("712", YieldVerdict.Outside, "more than the 2 % to 5 %")]
    [InlineData("751", YieldVerdict.Outside, "more chilled than hot")]
    public void A_loss_is_held_against_the_range_either_way(string chilled, YieldVerdict verdict, string words)
    {
        var statement = ChillStatement.Of(Species.Beef, Weight.FromPounds(750m), WeightText.Parse(chilled, WeightUnit.Pound).Result);

        Assert.Equal(verdict, statement.Verdict);
        Assert.Equal(verdict == YieldVerdict.Outside, statement.IsFlagged);
        Assert.Contains(words, statement.Standing, StringComparison.Ordinal);
        Assert.Contains("P3489", statement.Standing, StringComparison.Ordinal);
    }
}
