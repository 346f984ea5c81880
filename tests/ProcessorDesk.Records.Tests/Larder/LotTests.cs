using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records.Tests.Kitchen;
using ProcessorDesk.Trade;
using Xunit;

namespace ProcessorDesk.Records.Tests.Larder;

/// <summary>Lots come in, go into loads, run out, and are put right.</summary>
public sealed class LotTests(LarderShop shop) : IClassFixture<LarderShop>
{
    [Fact]
    public void What_is_left_of_a_lot_is_what_came_in_less_what_was_used()
    {
        var (load, _) = shop.Drawn("Left Over");
        var (salt, fat, casing) = (shop.Receive("Salt", "S-1", 50m), shop.Receive("Pork trim", "T-1", 30m), shop.Receive("Hog casing", "H-1", 100m));

        KitchenSteps.Expect(shop.Mix(load, Mixed, new Dictionary<int, int> { [LarderShop.Salt] = salt }, fat, casing));

        Assert.Equal(Weight.FromPounds(50m) - Weight.FromGrams(90.7m), shop.Lot(salt).Left);
        Assert.Equal(Weight.FromPounds(28m), shop.Lot(fat).Left);
        // 10 lb of meat and fat with 2 % salt, 3 oz to 100 lb (0.1875 %), 1 % and 10 % is 11.31875 lb: 12 casings of 1 lb, up to whole ones.
        Assert.Equal(100 - 12, shop.Lot(casing).PiecesLeft);
        Assert.All([salt, fat, casing], lot => Assert.True(shop.Lot(lot).IsOpen));
    }

    [Fact]
    public void A_lot_of_which_nothing_is_left_is_used_up_and_may_be_found_again()
    {
        var (load, _) = shop.Drawn("Used Up");
        var fat = shop.Receive("Pork trim", "T-2", 2m);

        KitchenSteps.Expect(shop.Mix(load, Mixed, fatLot: fat));
        Assert.False(shop.Lot(fat).IsOpen);

        shop.Kitchen.Must((records, act) => records.FindMoreOfLot(fat, act));
        Assert.True(shop.Lot(fat).IsOpen);
        Assert.Contains("not marked as used up", shop.Kitchen.Try((records, act) => records.FindMoreOfLot(fat, act)).Text(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_lot_of_another_ingredient_is_refused_and_none_at_all_is_allowed()
    {
        var (load, _) = shop.Drawn("Other Lot");
        var wrong = shop.Receive("Pork trim", "T-3", 30m);

        var refused = shop.Mix(load, Mixed, new Dictionary<int, int> { [LarderShop.Salt] = wrong });
        Assert.Equal("Lot T-3 is of Pork trim. Choose a lot of what went in.", refused.Text());
        Assert.Equal($"Lots[{LarderShop.Salt}]", refused.Findings.Single().Field);

        KitchenSteps.Expect(shop.Mix(load, Mixed));
        Assert.Empty(shop.Kitchen.Read(records => records.LotUses.Where(use => use.LoadId == load).ToList()));
    }

    [Fact]
    public void A_lot_is_noted_late_and_never_for_more_than_went_in()
    {
        var (load, _) = shop.Drawn("Noted Late");
        var salt = shop.Receive("Salt", "S-4", 50m);
        Assert.Contains("not mixed yet", shop.Kitchen.Try((records, act) => records.NoteLot(Note(load, salt, 90m), act)).Text(), StringComparison.Ordinal);
        KitchenSteps.Expect(shop.Mix(load, Mixed));

        shop.Kitchen.Must((records, act) => records.NoteLot(Note(load, salt, 60m), act));
        Assert.Contains("more than went in of Salt", shop.Kitchen.Try((records, act) => records.NoteLot(Note(load, salt, 30.8m), act)).Text(), StringComparison.Ordinal);
        shop.Kitchen.Must((records, act) => records.NoteLot(Note(load, salt, 30.7m), act));
    }

    [Fact]
    public void A_lot_that_was_used_is_not_struck_out()
    {
        var (load, _) = shop.Drawn("Not Struck");
        var fat = shop.Receive("Pork trim", "T-5", 30m);
        KitchenSteps.Expect(shop.Mix(load, Mixed, fatLot: fat));

        Assert.Contains("is noted in a load", shop.Kitchen.Try((records, act) => records.StrikeLot(fat, "twice", act)).Text(), StringComparison.Ordinal);
        shop.Kitchen.Must((records, act) => records.StrikeLotUse(records.LotUses.Single(use => use.LotId == fat).Id, "another box", act));
        shop.Kitchen.Must((records, act) => records.StrikeLot(fat, "twice", act));
        Assert.Equal(Weight.FromPounds(30m), shop.Lot(fat).Left);
    }

    [Fact]
    public void Less_than_the_shop_wants_there_to_be_is_low()
    {
        var ingredient = new Ingredient(new IngredientFacts("Mustard", IngredientKind.Seasoning, Proportion.Zero, Proportion.Zero) { LeastOnHand = Weight.FromPounds(2m) });
        LotOnHand Of(decimal pounds) => new(1, 1, "M", null, default, Weight.FromPounds(pounds), Weight.Zero, 0, 0, Proportion.Zero, Proportion.Zero, true);

        Assert.True(ingredient.IsLow([]));
        Assert.True(ingredient.IsLow([Of(1.5m), Of(0.49m)]));
        Assert.False(ingredient.IsLow([Of(1.5m), Of(0.5m)]));
    }

    [Theory]
    [InlineData("", 5, 6.25, "LotCode")]
    [InlineData("P-1", 0, 6.25, "Amount")]
    [InlineData("P-1", 5, 0, "Nitrite")]
    public void A_lot_needs_its_code_its_amount_and_a_cure_its_strength(string code, decimal pounds, decimal nitrite, string field)
    {
        var refused = shop.Kitchen.Try((records, act) => records.ReceiveLot(
            new LotReceipt(shop.Ids["Pink salt"], code, new DateOnly(2026, 11, 2), Weight.FromPounds(pounds), 0, Proportion.FromPercent(nitrite), Proportion.Zero), act));

        Assert.Equal(field, refused.Findings.Single().Field);
    }

    /// <summary>10.5 g × 6.25 % on 10 lb: 144.68 ppm.</summary>
    private static Dictionary<int, decimal> Mixed => new() { [LarderShop.Salt] = 90.7m, [LarderShop.Cure] = 10.5m, [LarderShop.Seasoning] = 0m, [LarderShop.Bacon] = 0m };

    private static LotNote Note(int load, int lot, decimal grams) => new(load, LarderShop.Salt, lot, Weight.FromGrams(grams), 0);
}
