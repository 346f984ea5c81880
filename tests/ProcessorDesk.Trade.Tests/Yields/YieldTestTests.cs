using FsCheck.Xunit;
using ProcessorDesk.Trade.Yields;
using Xunit;

namespace ProcessorDesk.Trade.Tests.Yields;

[Properties(MaxTest = 1000, Arbitrary = [typeof(Sizes)])]
public sealed class YieldTestTests
{
    private static readonly YieldTest s_good = new(Weight.FromPounds(10m), 4m, [new("bone", Weight.FromPounds(3m), 0.5m)], Weight.FromPounds(6m));

    [Fact]
    public void What_is_in_no_part_is_loss()
    {
        Assert.Equal(Ratio.One, s_good.Loss); // 10 − 3 − 6
        Assert.Equal(Ratio.FromDecimal(38.5m), s_good.UsableValue); // 40 − 1.50
    }

    [Fact]
    public void As_much_out_as_in_is_fine_and_more_is_not()
    {
        Assert.Empty((s_good with { Usable = Weight.FromPounds(7m) }).Findings());
        var over = Assert.Single((s_good with { Usable = Weight.FromPounds(7.01m) }).Findings());
        Assert.Equal((nameof(YieldTest.Usable), "10.01 lb", "at most 10 lb"), (over.Field, over.Found, over.Allowed));
    }

    /// <summary>A third of a pound is no whole milligram; three keyed thirds of 0.333 and 9.001 are 10 as keyed.</summary>
    [Fact]
    public void What_was_keyed_is_added_and_not_its_milligrams()
    {
        var third = new YieldTestPart("fat", Weight.FromPounds(0.333m), 0m);
        var test = new YieldTest(Weight.FromPounds(10m), 4m, [third, third, third], Weight.FromPounds(9.001m));

        Assert.Empty(test.Findings());
        Assert.Equal(Ratio.Zero, test.Loss);
    }

    [Theory]
    [InlineData("0", "4", "6", nameof(YieldTest.Purchased))]
    [InlineData("10", "0", "6", nameof(YieldTest.PricePerPound))]
    [InlineData("10", "4", "0", nameof(YieldTest.Usable))]
    public void What_cannot_be_reckoned_names_its_field(string purchased, string price, string usable, string field)
    {
        var test = new YieldTest(
            WeightText.Parse(purchased, WeightUnit.Pound).Result,
            decimal.Parse(price, System.Globalization.CultureInfo.InvariantCulture),
            [],
            WeightText.Parse(usable, WeightUnit.Pound).Result);

        var finding = Assert.Single(test.Findings());
        Assert.Equal(field, finding.Field);
        Assert.Equal(finding.Text, Assert.Throws<InvalidOperationException>(() => test.CostPerUsablePound).Message);
        Assert.Throws<InvalidOperationException>(() => test.Yield);
    }

    [Fact]
    public void A_part_below_zero_is_refused_by_name()
    {
        var finding = Assert.Single((s_good with { Parts = [new("bone", Weight.FromPounds(1m), -0.01m)] }).Findings());

        Assert.StartsWith("bone:", finding.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Parts_worth_more_than_the_whole_leave_a_value_below_zero()
    {
        var test = s_good with { Parts = [new("tenderloin", Weight.FromPounds(3m), 20m)] };

        Assert.Equal(Ratio.Of(-20, 1), test.UsableValue); // 40 − 60
        Assert.Contains("left for 6 lb usable: -$20.00", test.Working());
    }

    [Property]
    public void Usable_value_is_cost_per_pound_times_pounds_and_factor_times_price_is_cost(Keyed usable, Keyed part, PricePerPound price, PricePerPound worth)
    {
        var test = new YieldTest(
            usable.Weight + part.Weight + Weight.FromPounds(1m), price.CentsPerPound / 100m, [new("part", part.Weight, worth.CentsPerPound / 100m)], usable.Weight);
        if (test.Findings().Count > 0)
        {
            Assert.True(usable.Weight.IsZero || price.CentsPerPound == 0);
            return;
        }

        var decimals = test.Purchased.Pounds * price.CentsPerPound / 100m - part.Weight.Pounds * worth.CentsPerPound / 100m;
        Assert.InRange(test.UsableValue.ToDecimal() - decimals, -0.01m, 0.01m); // a milligram at the dearest price is less
        Assert.Equal(test.UsableValue, test.CostPerUsablePound * test.Yield * test.PurchaseCost / Ratio.FromDecimal(test.PricePerPound));
        Assert.Equal(test.CostPerUsablePound, test.CostFactor * Ratio.FromDecimal(test.PricePerPound));
        Assert.Equal(test.PurchaseCost, test.UsableValue + test.PartsValue);
    }
}
