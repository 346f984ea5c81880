using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records.Tests.Kitchen;
using ProcessorDesk.Trade;
using Xunit;

namespace ProcessorDesk.Records.Tests.Larder;

/// <summary>
/// What counts as cure, and on what: at most 1/4 oz nitrite to 100 lb, 156.25 ppm (9 CFR 424.21(c)), at least 120 ppm in product kept cold (USDA
/// FSIS Directive 7620.3). A load is 10 lb of meat and fat; ppm are worked here in decimals, from grams: 1 lb is 453.59237 g.
/// </summary>
public sealed class CureByLotTests(LarderShop shop) : IClassFixture<LarderShop>
{
    private const decimal Block = 10m * 453.59237m;

    /// <summary>Seasoning and cure together: 45 g × 0.1 % and 10.9 g × 6.25 % on 10 lb.</summary>
    [Fact]
    public void A_seasoning_that_holds_cure_counts()
    {
        var (load, _) = shop.Drawn("Season Holds");

        var refused = shop.Mix(load, Grams(cure: 10.7m, seasoning: 45m));
        var ppm = (10.7m * 0.0625m + 45m * 0.001m) / Block * 1_000_000m; // 157.36; without the seasoning 147.44
        Assert.Contains($"Too much nitrite: {ppm:0.00} ppm", refused.Text(), StringComparison.Ordinal);

        KitchenSteps.Expect(shop.Mix(load, Grams(cure: 10.5m, seasoning: 45m))); // 154.61
    }

    /// <summary>Bacon ends bring 1 lb of meat to the block and their own nitrite with it.</summary>
    [Fact]
    public void Meat_that_was_cured_before_counts_as_meat_and_as_cure()
    {
        var (load, _) = shop.Drawn("Bacon Counts");
        const decimal bacon = 453.6m;
        var ppm = (12.2m * 0.0625m + bacon * 0.00012m) / (Block + bacon) * 1_000_000m; // 163.74
        Assert.Contains($"Too much nitrite: {decimal.Round(ppm)} ppm", shop.Mix(load, Grams(cure: 12.2m, bacon: bacon)).Text(), StringComparison.Ordinal);

        // 11.4 g: 157.07 ppm on 10 lb alone; on the 11 lb with the bacon and its own nitrite 153.71.
        Assert.InRange(11.4m * 0.0625m / Block * 1_000_000m, 156.26m, 158m);
        Assert.InRange((11.4m * 0.0625m + bacon * 0.00012m) / (Block + bacon) * 1_000_000m, 153m, 156.25m);
        KitchenSteps.Expect(shop.Mix(load, Grams(cure: 11.4m, bacon: bacon)));
    }

    [Fact]
    public void A_cured_product_without_a_weighed_cure_never_starts()
    {
        var (load, _) = shop.Drawn("Never Starts");

        Assert.Contains("There is no cure in this mix.", shop.Mix(load, Grams(cure: 0m), lowBecause: "ran out").Text(), StringComparison.Ordinal);
        Assert.Contains(
            "There is no cure in this mix but what cured meat brings along.", shop.Mix(load, Grams(cure: 0m, bacon: 453.6m), lowBecause: "the bacon is cured").Text(), StringComparison.Ordinal);
        Assert.Null(shop.Kitchen.Read(records => records.Loads.Single(one => one.Id == load).MixedAt));
    }

    [Fact]
    public void The_check_goes_by_the_label_of_the_lot_weighed_in()
    {
        var (load, _) = shop.Drawn("By Label");
        var strong = shop.Receive("Pink salt", "P-10", 5m, nitrite: 10m);

        var refused = shop.Mix(load, Grams(cure: 11.3m), Of(LarderShop.Cure, strong));
        var ppm = 11.3m * 0.10m / Block * 1_000_000m; // 249; at the formula's 6.25 % it would be 155.70
        Assert.Contains($"Too much nitrite: {decimal.Round(ppm)} ppm", refused.Text(), StringComparison.Ordinal);

        KitchenSteps.Expect(shop.Mix(load, Grams(cure: 7m), Of(LarderShop.Cure, strong))); // 154.32
        Assert.Equal(Proportion.FromPercent(10m), shop.Kitchen.Read(records => records.LoadIngredients.Single(line => line.LoadId == load && line.Position == LarderShop.Cure).Nitrite));
    }

    [Fact]
    public void A_lot_put_right_that_brings_the_cure_over_the_limit_holds_the_batch_for_good()
    {
        var (load, batch) = shop.Drawn("Put Right");
        var (weak, strong) = (shop.Receive("Pink salt", "P-6", 5m, nitrite: 6.25m), shop.Receive("Pink salt", "P-12", 5m, nitrite: 12m));
        KitchenSteps.Expect(shop.Mix(load, Grams(cure: 11.3m), Of(LarderShop.Cure, weak)));
        var use = shop.Kitchen.Read(records => records.LotUses.Single(one => one.LoadId == load).Id);
        Assert.Equal("Say why it is struck out.", shop.Kitchen.Try((records, act) => records.StrikeLotUse(use, " ", act)).Text());

        shop.Kitchen.Must((records, act) => records.StrikeLotUse(use, "the other bag was open", act));
        Assert.False(Held(batch));
        shop.Kitchen.Must((records, act) => records.NoteLot(new LotNote(load, LarderShop.Cure, strong, Weight.FromGrams(11.3m), 0), act));

        Assert.True(Held(batch));
        var hold = shop.Kitchen.Read(records => records.Holds.Single(one => one.BatchId == batch).Id);
        shop.Kitchen.Must((records, act) => records.ReleaseBatchHold(hold, "looks fine", act), shop.Kitchen.File.Manager);
        // 11.3 g × 12 % ÷ 10 lb = 298.95 ppm: released from hold, it is not released to anybody.
        Assert.Contains("Too much nitrite: 299 ppm", shop.Kitchen.Release(batch).Text(), StringComparison.Ordinal);
    }

    private bool Held(int batch) => shop.Kitchen.Read(records => records.Holds.Standing().Any(hold => hold.BatchId == batch));

    private static Dictionary<int, decimal> Grams(decimal cure, decimal seasoning = 0m, decimal bacon = 0m) =>
        new() { [LarderShop.Salt] = 90.7m, [LarderShop.Cure] = cure, [LarderShop.Seasoning] = seasoning, [LarderShop.Bacon] = bacon };

    private static Dictionary<int, int> Of(int position, int lot) => new() { [position] = lot };
}
