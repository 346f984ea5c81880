using ProcessorDesk.Trade.Curing;
using Xunit;
using static ProcessorDesk.Trade.Tests.Curing.Cure;

namespace ProcessorDesk.Trade.Tests.Curing;

public sealed class ComminutedCureTests
{
    private static readonly Weight HundredPounds = Weight.FromPounds(100m);

    [Fact]
    public void The_ring_sausage_of_35_71_lb_takes_40_4_g_at_most()
    {
        // 35.71 lb × 453.59237 g / 6400 / 0.0625 = 40.494 g, rounded down to 0.1 g
        var block = Weight.FromPounds(35.71m);
        Assert.Equal(40.49m, decimal.Round(35.71m * 453.59237m / 6400m / 0.0625m, 2));

        var most = ComminutedCure.Most(block, Pink, Proportion.Zero, ScaleDivision.TenthGram);

        Assert.Equal("40.4 g", ScaleDivision.TenthGram.Print(most));
        Assert.True(Check(block, Of(most)).Meets);
        Assert.False(Check(block, Of(most + Weight.FromGrams(0.1m))).Meets);
    }

    [Theory]
    [InlineData("28.3", true)]
    [InlineData("28.349", true)]
    [InlineData("28.350", true)] // the limit is 28.349523 g: keyed to the milligram it is 28.350
    [InlineData("28.351", false)]
    [InlineData("28.4", false)]
    public void The_limit_on_25_lb_is_between_28_3_and_28_4_g_of_6_25_percent(string grams, bool meets) =>
        Assert.Equal(meets, Check(Weight.FromPounds(25m), Of(Weight.FromGrams(Figure(grams)))).Meets);

    [Fact]
    public void An_ounce_is_the_most_on_25_lb_weighed_in_ounces()
    {
        var ounce = ScaleDivision.Of(WeightUnit.Ounce, 1m);

        Assert.Equal(Weight.FromOunces(1m), ComminutedCure.Most(Weight.FromPounds(25m), Pink, Proportion.Zero, ounce));
        Assert.Equal(Weight.Zero, ComminutedCure.Most(Weight.FromPounds(24.99m), Pink, Proportion.Zero, ounce));
    }

    [Fact]
    public void The_nitrate_may_be_what_limits()
    {
        // 1600 oz × 11/6400 = 2.75 oz nitrate; in a cure of 90 % nitrate and 1 % nitrite: 2.75 / 0.90 = 3.05 oz, before 0.25 / 0.01 = 25 oz
        var most = ComminutedCure.Most(
            HundredPounds, Proportion.FromPercent(1m), Proportion.FromPercent(90m), ScaleDivision.Of(WeightUnit.Ounce, 0.01m));

        Assert.Equal(Weight.FromOunces(3.05m), most);
    }

    [Fact]
    public void Several_cures_in_one_mix_are_added_up()
    {
        // 3 oz × 6.25 % + 1.25 oz × 5 % = 0.1875 + 0.0625 = 0.25 oz
        Assert.True(Check(HundredPounds, Of(Weight.FromOunces(3m)), Of(Weight.FromOunces(1.25m), 5m)).Meets);

        var over = Check(HundredPounds, Of(Weight.FromOunces(3m)), Of(Weight.FromOunces(1.26m), 5m) with { KeyedIn = WeightUnit.Ounce });
        Assert.Equal(0.2505m / 1600m * 1_000_000m, over.NitritePpm);
        Assert.False(over.Meets);
    }

    [Fact]
    public void Both_agents_over_are_both_found()
    {
        var check = Check(HundredPounds, Of(Weight.FromOunces(10m), 6.25m, 50m));

        Assert.Equal(["nitrite", "nitrate"], check.Findings.Select(finding => finding.Text.Split(' ', ':')[2]));
    }

    [Fact]
    public void No_cure_zero_cure_and_a_cure_without_strength_are_refused()
    {
        Assert.All(
            [Check(HundredPounds), Check(HundredPounds, Of(Weight.Zero)), Check(HundredPounds, Of(Weight.FromOunces(4m), 0m))],
            check =>
            {
                Assert.False(check.Meets);
                Assert.True(check.BelowMinimum);
                Assert.Equal("There is no cure in this mix. Weigh the cure in.", Assert.Single(check.Findings).Text);
            });
    }

    [Theory]
    [InlineData("3.072", false)] // × 0.0625 / 1600 = 120 ppm
    [InlineData("3.07", true)]
    [InlineData("3.08", false)]
    public void Under_120_ppm_is_below_the_minimum_though_inside_the_limit(string ounces, bool below)
    {
        var check = Check(HundredPounds, Of(Weight.FromOunces(Figure(ounces))));

        Assert.True(check.Meets);
        Assert.Equal(below, check.BelowMinimum);
        Assert.Equal(below ? 1 : 0, check.Findings.Count);
    }

    [Fact]
    public void Below_the_minimum_says_how_far()
    {
        Assert.Equal(
            "Too little nitrite for product that is kept cold: 119.92 ppm, and the least is 120 ppm.",
            Check(HundredPounds, Of(Weight.FromOunces(3.07m))).Findings[0].Text); // 3.07 × 0.0625 / 1600 = 119.92
    }

    [Fact]
    public void Without_a_meat_block_there_is_nothing_to_check()
    {
        Assert.Equal("MeatBlock", Assert.Single(Check(Weight.Zero, Of(Weight.FromOunces(1m))).Findings).Field);
        Assert.False(Check(Weight.Zero).Meets);
    }

    [Fact]
    public void An_amount_for_a_target_is_rounded_down()
    {
        // 150 ppm on 35.71 lb: 16,197.78 g × 0.00015 / 0.0625 = 38.87 g
        Assert.Equal(38.87m, decimal.Round(35.71m * 453.59237m * 0.00015m / 0.0625m, 2));

        var amount = CureDose.AmountFor(CureQuestion.Comminuted(Weight.FromPounds(35.71m), []), Ratio.Of(150, 1_000_000), Pink, ScaleDivision.TenthGram);

        Assert.Equal(Weight.FromGrams(38.8m), amount);
    }

    [Fact]
    public void The_working_is_written_as_a_hand_would()
    {
        // 40.4 × 0.0625 = 2.525; 2.525 / 16,197.78 = 155.886 ppm
        Assert.Equal(
            ["Pink cure: 40.4 g × 6.25 % = 2.5250 g nitrite", "nitrite ÷ 16,197.8 g of meat block = 155.89 ppm"],
            Check(Weight.FromPounds(35.71m), Of(Weight.FromGrams(40.4m))).Working);
    }

    [Fact]
    public void Slips_throw()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Check(Weight.FromGrams(-1m)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Check(HundredPounds, Of(Weight.FromGrams(-1m))));
        Assert.Throws<ArgumentException>(() => ComminutedCure.Most(HundredPounds, Proportion.Zero, Proportion.Zero, ScaleDivision.TenthGram));
        Assert.Throws<ArgumentException>(() => CureDose.AmountFor(CureQuestion.Comminuted(HundredPounds, []), Ratio.One, Proportion.Zero, ScaleDivision.TenthGram));
        Assert.Throws<ArgumentException>(() => CureDose.AmountFor(CureQuestion.Comminuted(HundredPounds, []), -Ratio.One, Pink, ScaleDivision.TenthGram));
    }
}
