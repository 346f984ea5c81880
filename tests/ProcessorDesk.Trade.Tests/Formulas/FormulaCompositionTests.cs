using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using ProcessorDesk.Trade.Blending;
using ProcessorDesk.Trade.Formulas;
using Xunit;
using static ProcessorDesk.Trade.Tests.Formulas.Mixture;

namespace ProcessorDesk.Trade.Tests.Formulas;

public sealed class FormulaCompositionTests
{
    private static readonly FormulaLine Salt = FormulaLine.OfPercent("Salt", 2m) with { Salt = Proportion.Whole, Price = PricePerPound.FromCents(50) };
    private static readonly FormulaLine Ice = FormulaLine.OfPercent("Ice", 8m) with { Water = Proportion.Whole, Price = PricePerPound.FromCents(0) };

    public static Arbitrary<(int Lean, int Salt, int Water, int Fat, int Loss)> Mixes() => Arb.From(
        from lean in Gen.OneOf(Gen.Elements(1, 1_000_000), Gen.Choose(1, 1_000_000))
        from salt in Gen.Choose(0, 100_000)
        from water in Gen.Choose(0, 500_000)
        from fat in Gen.Choose(0, 1_000_000)
        from loss in Gen.OneOf(Gen.Elements(0, 999_999), Gen.Choose(0, 600_000))
        select (lean, salt, water, fat, loss));

    /// <summary>Source of the fat contents: USDA National Nutrient Database, deer 2.42 % (17164) and pork backfat 88.69 % (10004).</summary>
    [Fact]
    public void Salt_fat_water_and_cost_are_parts_of_the_whole_mix()
    {
        var (deer, backfat) = (FatContents.Find("deer").Fat, FatContents.Find("porkBackfat").Fat);
        var formula = new Formula("Links", Proportion.FromPercent(80m), false, [Salt, Ice]);

        var mix = FormulaComposition.Of(formula, new MeatContent(deer, PricePerPound.FromCents(0)), new MeatContent(backfat, PricePerPound.FromCents(120)));

        Assert.Equal(TenPlaces((0.8m * 2.42m + 0.2m * 88.69m) / 110m), mix.FatOfMix.ToDecimal());
        Assert.Equal(TenPlaces(2m / 110m), mix.SaltOfMix.ToDecimal());
        Assert.Equal(TenPlaces(8m / 110m), mix.AddedWaterOfMix.ToDecimal());
        Assert.Equal(TenPlaces((0.2m * 1.20m + 0.02m * 0.50m) / 1.10m), mix.CostPerPound!.Value.ToDecimal()); // $0.2273
    }

    [Fact]
    public void The_cost_is_not_known_where_a_price_is_not()
    {
        Assert.Null(FormulaComposition.Of(Mix(Salt with { Price = null }), Meat(2m, 100), Meat(90m)).CostPerPound);
        Assert.Null(FormulaComposition.Of(Mix(Salt), Meat(2m), Meat(90m)).CostPerPound);
        Assert.NotNull(FormulaComposition.Of(Mix(Salt), Meat(2m, 100), Meat(90m)).CostPerPound); // none of the added fat goes in
    }

    [Fact]
    public void All_lost_is_no_product() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => OfFat(20m).OfFinished(ProductPart.Fat, Proportion.Whole));

    [Fact]
    public void More_in_a_line_than_the_whole_of_it_is_found()
    {
        Assert.Empty(Mix(Salt).Check());
        Assert.Equal("Lines[0].Salt", Assert.Single(Mix(Salt with { Water = Proportion.FromPercent(0.0001m) }).Check()).Field);
    }

    [Property(MaxTest = 2000, Arbitrary = [typeof(FormulaCompositionTests)])]
    public void The_parts_are_parts_of_a_whole_and_drying_only_makes_fat_more((int Lean, int Salt, int Water, int Fat, int Loss) made)
    {
        var formula = new Formula("Mix", Proportion.FromPartsPerMillion(made.Lean), false, [
            Other(Ratio.Of(made.Salt, 1_000_000)) with { Salt = Proportion.Whole },
            Water(Ratio.Of(made.Water, 1_000_000)),
        ]);
        var mix = FormulaComposition.Of(formula, Meat(0m), new MeatContent(Proportion.FromPartsPerMillion(made.Fat), null));
        var loss = Proportion.FromPartsPerMillion(made.Loss);

        Assert.Equal(Ratio.One, mix.OfMix(ProductPart.Meat) + mix.SaltOfMix + mix.AddedWaterOfMix);
        Assert.Equal(mix.OfMix(ProductPart.FatAndAddedWater), mix.FatOfMix + mix.AddedWaterOfMix);
        Assert.True(mix.OfFinished(ProductPart.Fat, loss) >= mix.FatOfMix);
        Assert.True(mix.OfFinished(ProductPart.AddedWater, loss) <= mix.AddedWaterOfMix);
        Assert.True(mix.OfFinished(ProductPart.AddedWater, loss).Sign >= 0);
        Assert.Equal(mix.FatOfMix, mix.OfFinished(ProductPart.Fat, Proportion.Zero));
    }

    private static decimal TenPlaces(decimal figure) => decimal.Round(figure, 10, MidpointRounding.AwayFromZero);
}
