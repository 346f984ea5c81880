using ProcessorDesk.Trade.Formulas;
using Xunit;

namespace ProcessorDesk.Trade.Tests.Formulas;

public sealed class FormulaTests
{
    private static readonly Proportion Pink = Proportion.FromPercent(6.25m);

    private static readonly FormulaLine Salt = FormulaLine.OfPercent("Salt", 1.75m);

    private static readonly FormulaLine UseLevel =
        FormulaLine.OfCure("Pink cure", FormulaLine.OuncesPer100Pounds(4m), Pink, Proportion.Zero);

    private static Formula Cured(params FormulaLine[] lines) => new("Ring", Proportion.FromPercent(70m), true, lines);

    private static Finding Only(Formula formula) => Assert.Single(formula.Check());

    [Fact]
    public void A_line_is_an_exact_part_of_the_meat_block()
    {
        Assert.Equal(Ratio.Of(7, 400), Salt.OfMeatBlock);
        Assert.Equal(Ratio.Of(1, 400), UseLevel.OfMeatBlock);
        Assert.Equal(Ratio.Of(1, 800), FormulaLine.OfOunces("Pepper", 2m).OfMeatBlock);
        Assert.Equal(Ratio.Of(1, 400), FormulaLine.OuncesPerPounds(1m, 25m));
        Assert.Equal(Ratio.Of(1, 400), FormulaLine.Part(1m, FormulaBasis.OuncesPer25Pounds));
        Assert.Equal(Ratio.Of(1, 400), FormulaLine.Part(2.5m, FormulaBasis.GramsPerKilogram));
    }

    [Fact]
    public void The_additions_are_the_sum_of_the_lines()
    {
        // 1.75 % + 0.25 % + 2 %
        Assert.Equal(Ratio.Of(4, 100), Cured(Salt, UseLevel, FormulaLine.OfPercent("Water", 2m)).Additions);
        Assert.Equal(Ratio.Zero, Cured().Additions);
    }

    [Fact]
    public void The_use_level_is_at_the_limit_and_a_shade_more_is_past_it()
    {
        Assert.Empty(Cured(Salt, UseLevel).Check());

        var finding = Only(Cured(Salt, UseLevel with { OfMeatBlock = FormulaLine.OuncesPer100Pounds(4.0001m) }));
        Assert.Equal("Lines", finding.Field);
        Assert.Equal("156.254 ppm", finding.Found); // 4.0001 × 0.0625 / 1600 = 156.25390625, which two decimals would print as the limit
    }

    [Fact]
    public void A_cured_product_without_cure_is_refused() =>
        Assert.Equal("This product is cured, and nothing in it holds any cure. Add the cure.", Only(Cured(Salt)).Text);

    [Fact]
    public void A_cured_product_with_no_weight_of_cure_is_refused() =>
        Assert.Equal("Lines", Only(Cured(Salt, UseLevel with { OfMeatBlock = Ratio.Zero })).Field);

    [Fact]
    public void A_cure_without_strength_is_refused_beside_its_line() =>
        Assert.Contains(
            Cured(Salt, UseLevel with { Nitrite = Proportion.Zero }).Check(), finding => finding.Field == "Lines[1].Nitrite");

    [Fact]
    public void A_seasoning_with_cure_in_it_makes_the_product_a_cured_one()
    {
        var seasoning = Salt with { Name = "Ham seasoning", Nitrite = Proportion.FromPercent(0.5m) };
        var fresh = Cured(seasoning) with { IsCured = false };

        Assert.Equal("Ham seasoning holds cure: mark the product as cured.", Only(fresh).Text);
        Assert.Empty(Cured(seasoning).Check()); // 1.75 % × 0.5 % = 87.5 ppm
    }

    [Fact]
    public void The_nitrate_is_held_to_its_own_limit()
    {
        // 4 oz × 4 % = 0.16 oz; 2.75 oz / 4 oz = 68.75 %
        Assert.Empty(Cured(UseLevel with { Nitrate = Proportion.FromPercent(68.75m) }).Check());
        Assert.Contains("1,718.75 ppm", Only(Cured(UseLevel with { Nitrate = Proportion.FromPercent(68.7501m) })).Allowed, StringComparison.Ordinal);
    }

    [Fact]
    public void Impossible_figures_are_found_beside_their_fields()
    {
        Assert.Equal("LeanShare", Only(Cured(UseLevel) with { LeanShare = Proportion.Zero }).Field);
        Assert.Equal("LeanShare", Only(Cured(UseLevel) with { LeanShare = Proportion.FromPercent(100.01m) }).Field);
        Assert.Equal("Lines[1].OfMeatBlock", Only(Cured(UseLevel, Salt with { OfMeatBlock = Ratio.Of(-1, 100) })).Field);
        Assert.Equal("Lines[0].Nitrite", Only(Cured(UseLevel with { OfMeatBlock = Ratio.Of(1, 10_000), Nitrate = Proportion.FromPercent(93.7501m) })).Field);
    }
}
