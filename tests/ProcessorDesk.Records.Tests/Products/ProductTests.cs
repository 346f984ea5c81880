using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records.Tests.Cast;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Formulas;
using Xunit;

namespace ProcessorDesk.Records.Tests.Products;

public sealed class ProductTests(ShopFile shop) : IClassFixture<ShopFile>
{
    private static readonly Proportion _strength = Proportion.FromPercent(6.25m);

    [Fact]
    public void A_cured_product_takes_no_formula_without_a_cure_line()
    {
        var sticks = new Product("Snack sticks", ProcessKind.Smoked, cured: true);

        Assert.Equal("Ingredients", sticks.Reformulate(Formula(Salt))!.Field);
        Assert.Empty(sticks.Formulas);
        Assert.Null(sticks.Reformulate(Formula(Salt, Cure(2))));
        Assert.True(Assert.Single(sticks.Formulas).HasCure);
    }

    [Fact]
    public void Each_formula_is_the_next_version_and_the_earlier_stay()
    {
        var id = shop.Do((records, _) =>
        {
            var patties = new Product("Patties", ProcessKind.Fresh, cured: false);
            patties.Reformulate(Formula(Salt));
            records.Products.Add(patties);
            records.SaveChanges();
            return patties.Id;
        });
        shop.Do((records, _) => records.Products.Include(one => one.Formulas).Single(one => one.Id == id).Reformulate(Formula()));
        using var records = shop.Open();

        var formulas = records.FormulaVersions.Include(one => one.Ingredients).Where(one => one.ProductId == id).OrderBy(one => one.Number).ToList();

        Assert.Equal([1, 2], formulas.Select(one => one.Number));
        Assert.Equal([1, 0], formulas.Select(one => one.Ingredients.Count));
    }

    [Fact]
    public void An_amount_is_the_same_part_of_the_block_in_either_writing()
    {
        var percent = new FormulaIngredient(1, "Cure", FormulaBasis.PercentOfBlock, 0.25m, _strength, Proportion.Zero, false);
        var ounces = new FormulaIngredient(1, "Cure", FormulaBasis.OuncesPer100Pounds, 4m, _strength, Proportion.Zero, false);

        Assert.Equal(Ratio.Of(1, 400), percent.OfMeatBlock);
        Assert.Equal(Ratio.Of(4, 100 * 16), ounces.OfMeatBlock);
        Assert.Equal(0.25m, percent.Amount);
    }

    [Fact]
    public void A_blend_is_the_formula_in_the_terms_of_the_trade()
    {
        var blend = Formula(Salt, Cure(2)).ToBlend();

        Assert.Equal(Ratio.FromDecimal(0.0175m) + Ratio.FromDecimal(0.0025m), blend.Additions);
        Assert.Equal((Proportion.FromPercent(80m), Proportion.FromPercent(35m)), (blend.LeanShare, blend.Loss));
        Assert.Equal((Proportion.FromPercent(30m), Proportion.FromPercent(40m)), (blend.LossLow, blend.LossHigh));
    }

    [Fact]
    public void Pork_shows_wherever_it_is()
    {
        var inLine = new FormulaIngredient(1, "Casing", FormulaBasis.PercentOfBlock, 1m, Proportion.Zero, Proportion.Zero, true);

        Assert.True(Formula(inLine).HasPork);
        Assert.False(Formula(Salt).HasPork);
    }

    [Fact]
    public void Plain_ground_is_not_retired_and_there_is_but_one()
    {
        using var records = shop.Open();
        Assert.NotNull(Sample.PlainGround(records).Retire(shop.Now));

        Assert.Throws<DbUpdateException>(() => shop.Do((other, _) =>
            other.Products.Add(new Product("Other ground", ProcessKind.Fresh, cured: false, isPlainGround: true)).Entity));
    }

    private static FormulaIngredient Salt =>
        new(1, "Salt", FormulaBasis.PercentOfBlock, 1.75m, Proportion.Zero, Proportion.Zero, false);

    private static FormulaIngredient Cure(int position) =>
        new(position, "Cure 6.25", FormulaBasis.PercentOfBlock, 0.25m, _strength, Proportion.Zero, false);

    private FormulaVersion Formula(params FormulaIngredient[] lines) => new(
        shop.Now, Proportion.FromPercent(80m), "beef fat", addedFatIsPork: false,
        (Proportion.FromPercent(30m), Proportion.FromPercent(35m), Proportion.FromPercent(40m)), Weight.FromPounds(10m), Weight.FromPounds(1m), lines);
}
