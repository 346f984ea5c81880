using ProcessorDesk.Trade.Blending;
using Xunit;
using static ProcessorDesk.Trade.Tests.Blending.Mixer;

namespace ProcessorDesk.Trade.Tests.Blending;

/// <summary>Blocks worked by hand. Fats and prices are made up.</summary>
public sealed class LeastCostTests
{
    [Fact]
    public void Two_materials_come_out_as_the_square_has_them()
    {
        // (28 − 23) / (70 − 23) = 5/47 of the fat; Georgia FFA state meat problem 2016
        var blend = LeastCost.Find(Block(500m, 28m, 28m, Meat("Lean", 23m, 178), Meat("Fat", 70m, 156))).Blend!;

        Assert.Equal([Ratio.Of(42, 47), Ratio.Of(5, 47)], blend.Parts.Select(part => part.Share));
        Assert.Equal([446.8085m, 53.1915m], blend.Parts.Select(part => decimal.Round(part.Pounds.ToDecimal(), 4)));
        Assert.Equal(1.7566m, decimal.Round(blend.CostPerPound.ToDecimal(), 4));
        Assert.Equal(Ratio.Of(28, 100), blend.Fat);
    }

    [Fact]
    public void A_share_holds_the_cheapest_back_and_the_next_takes_its_place()
    {
        // To 20 % with cheek at no more than 10: 0.10 × 20 is on the target, so the rest is lean and trim 5 : 30, two to three.
        var answer = LeastCost.Find(Block(100m, 20m, 20m, Meat("Lean", 5m, 400), Meat("Trim", 30m, 200), Meat("Cheek", 20m, 100, most: 10m)));

        Assert.Equal([36m, 54m, 10m], answer.Pounds());
        Assert.Equal(Ratio.Of(36 * 400 + 54 * 200 + 10 * 100, 100 * 100), answer.Blend!.CostPerPound);
    }

    [Fact]
    public void What_is_on_hand_holds_back_like_a_share()
    {
        var answer = LeastCost.Find(Block(100m, 0m, 30m, Meat("Lean", 10m, 400), Meat("Trim", 40m, 200, onHand: 25.5m)));

        Assert.Equal([74.5m, 25.5m], answer.Pounds());
        Assert.Equal(Ratio.FromDecimal(0.745m * 0.10m + 0.255m * 0.40m), answer.Blend!.Fat);
    }

    [Fact]
    public void The_least_share_of_a_dear_material_goes_in()
    {
        var answer = LeastCost.Find(Block(50m, 0m, 100m, Meat("Bison", 2m, 900, least: 20m), Meat("Trim", 30m, 200)));

        Assert.Equal([10m, 40m], answer.Pounds());
    }

    /// <summary>
    /// Beef and pork set lean at 7.8333 and fat at −5.50 a pound (0.75 L + 0.25 F = 4.50, 0.60 L + 0.40 F = 2.50), so that bison of 2 % is
    /// worth 0.98 × 7.8333 − 0.02 × 5.50 = 7.5667.
    /// </summary>
    [Theory]
    [InlineData(757, false)]
    [InlineData(756, true)]
    public void A_meat_goes_in_only_where_it_costs_no_more_than_its_lean_and_fat_are_worth(int cents, bool goesIn)
    {
        var answer = LeastCost.Find(Block(150m, 0m, 30m, Meat("Beef", 25m, 450), Meat("Pork", 40m, 250), Meat("Bison", 2m, cents)));

        Assert.Equal(goesIn, !answer.Blend!.Parts[2].Share.IsZero);
    }

    [Fact]
    public void A_third_of_a_block_is_weighed_on_the_division_so_that_the_fat_stays_under_its_most()
    {
        // 10 and 25 % to 20: a third and two thirds; 66.67 lb of the fatter would be 20.0005 %.
        var blend = LeastCost.Find(Block(100m, 0m, 20m, Meat("Lean", 10m, 300), Meat("Trim", 25m, 100))).Blend!;

        Assert.Equal([Ratio.Of(1, 3), Ratio.Of(2, 3)], blend.Parts.Select(part => part.Share));
        Assert.Equal([33.34m, 66.66m], blend.Parts.Select(part => ScaleDivision.HundredthPound.Figure(part.Weight)));
        Assert.Equal(Ratio.FromDecimal((33.34m * 0.10m + 66.66m * 0.25m) / 100m), blend.WeighedFat);
        Assert.Equal(Ratio.FromDecimal((33.34m * 3m + 66.66m * 1m) / 100m), blend.WeighedCostPerPound);
        Assert.Empty(blend.Notes);
    }

    [Fact]
    public void Where_no_rounding_keeps_the_bounds_it_says_what_it_did()
    {
        var blend = LeastCost.Find(Block(100m, 20m, 20m, Meat("Lean", 10m, 300), Meat("Trim", 25m, 100))).Blend!;

        // 33.33 lb is the cheaper of the two roundings: (333.3 + 1,666.75) / 10,000 = 20.0005 %
        Assert.Equal(["Rounding to 0.01 lb makes the fat 20.0005 %, over the 20 % wanted."], blend.Notes);
        Assert.Equal(Weight.FromPounds(100m), blend.Parts[0].Weight + blend.Parts[1].Weight);
    }

    [Fact]
    public void Bounds_of_shares_that_fall_between_two_divisions_are_told()
    {
        var wanted = Block(0.01m, 0m, 100m, Meat("Lean", 10m, 300, least: 30m, most: 40m), Meat("Trim", 25m, 100));

        Assert.Equal(["Rounding to 0.01 lb makes Lean 0 % of the block, under its least of 30 %."], LeastCost.Find(wanted).Blend!.Notes);

        wanted = Block(0.01m, 0m, 100m, Meat("Lean", 10m, 300, least: 60m), Meat("Trim", 25m, 100, least: 10m), Meat("Fat", 80m, 900));
        Assert.Equal(["Rounding to 0.01 lb makes Trim 0 % of the block, under its least of 10 %."], LeastCost.Find(wanted).Blend!.Notes);
    }

    [Fact]
    public void A_stock_finer_than_the_division_is_told_where_it_is_passed()
    {
        var wanted = Block(10m, 0m, 100m, Meat("Lean", 10m, 300, onHand: 5.007m), Meat("Trim", 25m, 100, onHand: 4.993m));

        Assert.Equal(["Rounding to 0.01 lb takes up to one division more of Lean than is on hand."], LeastCost.Find(wanted).Blend!.Notes);
    }

    [Fact]
    public void A_most_share_passed_by_rounding_is_told()
    {
        var wanted = Block(0.03m, 0m, 100m, Meat("Lean", 10m, 300, most: 50m), Meat("Trim", 25m, 100, most: 50m));

        Assert.Equal(["Rounding to 0.01 lb makes Lean 66.6667 % of the block, over its most of 50 %."], LeastCost.Find(wanted).Blend!.Notes);
    }

    [Fact]
    public void One_material_that_fits_is_the_whole_block()
    {
        Assert.Equal([12.34m], LeastCost.Find(Block(12.34m, 20m, 20m, Meat("Trim", 20m, 0))).Pounds());
    }

    [Fact]
    public void An_odd_block_is_mixed_as_it_prints_and_sums_to_the_milligram()
    {
        var odd = Weight.FromPounds(10m) + Weight.FromMilligrams(1);
        var wanted = Block(10m, 0m, 20m, Meat("Lean", 10m, 300), Meat("Trim", 25m, 100)) with { Block = odd };

        var parts = LeastCost.Find(wanted).Blend!.Parts;

        Assert.Equal(odd, parts[0].Weight + parts[1].Weight);
    }

    [Fact]
    public void A_block_that_its_check_refuses_is_a_slip() =>
        Assert.Throws<ArgumentException>(() => LeastCost.Find(Block(0m, 0m, 20m, Meat("Lean", 10m, 300))));
}
