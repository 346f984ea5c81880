using ProcessorDesk.Trade.Curing;
using Xunit;
using static ProcessorDesk.Trade.Tests.Curing.Cure;

namespace ProcessorDesk.Trade.Tests.Curing;

public sealed class CureStrengthTests
{
    [Theory]
    [InlineData("0", true)]
    [InlineData("0.0625", true)]
    [InlineData("1", true)]
    [InlineData("1.0001", false)]
    [InlineData("6.25", false)]
    [InlineData("-0.01", false)]
    public void A_fraction_is_0_to_1(string typed, bool good) =>
        Assert.Equal(good, CureStrength.FromFraction(Figure(typed)).IsGood);

    [Theory]
    [InlineData("0", true)]
    [InlineData("6.25", true)]
    [InlineData("100", true)]
    [InlineData("100.01", false)]
    [InlineData("625", false)]
    [InlineData("-1", false)]
    public void A_percent_is_0_to_100(string typed, bool good) =>
        Assert.Equal(good, CureStrength.FromPercent(Figure(typed)).IsGood);

    [Fact]
    public void Both_ways_of_typing_it_are_the_same_strength() =>
        Assert.Equal(CureStrength.FromPercent(6.25m).Result, CureStrength.FromFraction(0.0625m).Result);

    [Theory]
    [InlineData("0", false)]
    [InlineData("0.0001", true)]
    [InlineData("0.0625", true)]
    [InlineData("0.0999", true)]
    [InlineData("0.1", false)]
    [InlineData("6.25", false)]
    [InlineData("100", false)]
    public void A_strength_between_nothing_and_a_tenth_of_a_percent_is_doubted(string percent, bool doubted) =>
        Assert.Equal(doubted, CureStrength.Doubt(Proportion.FromPercent(Figure(percent))) is not null);

    [Fact]
    public void The_doubt_says_what_was_probably_meant() =>
        Assert.Equal(
            "0.0625 % is very weak for a cure. Was a fraction typed for 6.25 %?",
            CureStrength.Doubt(Proportion.FromPercent(0.0625m))!.Text);

    [Fact]
    public void Blank_is_not_zero()
    {
        Assert.Empty(CureStrength.Check(Proportion.Zero, Proportion.Zero));
        Assert.Equal(["Nitrite", "Nitrate"], CureStrength.Check(null, null).Select(finding => finding.Field));
        Assert.Equal(["Nitrate"], CureStrength.Check(Pink, null).Select(finding => finding.Field));
    }

    [Fact]
    public void Nitrite_and_nitrate_together_are_no_more_than_the_cure()
    {
        Assert.Empty(CureStrength.Check(Proportion.FromPercent(60m), Proportion.FromPercent(40m)));
        Assert.Single(CureStrength.Check(Proportion.FromPercent(60m), Proportion.FromPercent(40.0001m)));
        Assert.False(Check(Weight.FromPounds(100m), Of(Weight.FromGrams(0.1m), 60m, 41m)).Meets);
    }

    [Fact]
    public void The_cautions_have_ids_of_their_own_and_a_source()
    {
        Assert.Equal(CuringCautions.All.Count, CuringCautions.All.Select(caution => caution.Id).Distinct().Count());
        Assert.All(CuringCautions.All, caution => Assert.True(caution.Text.EndsWith('.') && caution.Source.Length > 0));
    }
}
