using ProcessorDesk.Trade.Curing;
using ProcessorDesk.Trade.Formulas;
using Xunit;

namespace ProcessorDesk.Trade.Tests.Formulas;

/// <summary>What the cure of a formula is reckoned on, and its accelerator, against 9 CFR 424.21(c). Worked on 100 lb, 1,600 oz, of lean and added fat.</summary>
public sealed class FormulaCureBaseTests
{
    private static readonly FormulaLine _cure = FormulaLine.OfCure("Cure", FormulaLine.OuncesPer100Pounds(4m), Proportion.FromPercent(6.25m), Proportion.Zero);

    [Fact]
    public void Meat_that_a_line_adds_counts_with_lean_and_added_fat()
    {
        var bacon = FormulaLine.OfPercent("Bacon ends", 25m) with { InMeatBlock = true };

        // 4 oz × 6.25 % = 0.25 oz on 1,600 oz, or on 2,000 oz with 25 lb of bacon: 156.25 and 125 ppm.
        Assert.Equal(156.25m, Of(_cure, bacon with { InMeatBlock = false }).Nitrite.PartsPerMillion);
        Assert.Equal(125m, Of(_cure, bacon).Nitrite.PartsPerMillion);
        Assert.Equal(Ratio.Of(5, 4), Of(_cure, bacon).CureBase);
    }

    [Fact]
    public void What_a_load_is_checked_on_is_the_same()
    {
        var scaled = FormulaScaling.Scale(Of(_cure, FormulaLine.OfPercent("Bacon ends", 25m) with { InMeatBlock = true }), Weight.FromPounds(100m), ScaleDivision.TenthGram);

        // 113.3 g (4 oz down to a tenth) × 6.25 % on 45,359.2 g of meat and 11,339.8 g of bacon.
        Assert.Equal(decimal.Round(113.3m * 0.0625m / (45_359.237m + 11_339.8m) * 1_000_000m, 2), decimal.Round(scaled.Cure!.NitritePpm, 2));
    }

    /// <summary>Ascorbic or erythorbic acid 3/4 oz, their sodium salts 7/8 oz to 100 lb, and only with a cure.</summary>
    [Theory]
    [InlineData(AcceleratorKind.Acid, 0.75, 0.76)]
    [InlineData(AcceleratorKind.Salt, 0.875, 0.88)]
    public void An_accelerator_has_a_limit_and_goes_in_only_with_a_cure(AcceleratorKind kind, decimal most, decimal over)
    {
        FormulaLine Speeds(decimal ounces) => FormulaLine.OfOunces("Accelerator", ounces) with { Accelerator = kind };

        Assert.Empty(Of(_cure, Speeds(most)).Check());
        Assert.Contains("Too much accelerator", Assert.Single(Of(_cure, Speeds(over)).Check()).Text, StringComparison.Ordinal);
        Assert.Equal("An accelerator goes in only with a cure.", Assert.Single((Of(Speeds(most)) with { IsCured = false }).Check()).Text);
    }

    [Fact]
    public void Casings_cost_what_the_green_weight_takes_of_them()
    {
        var salted = Of(FormulaLine.OfPercent("Salt", 4m) with { Price = PricePerPound.FromCents(50) }) with
        {
            Pieces = [new PieceLine("Casing", Weight.FromPounds(2m)) { Price = Money.FromCents(30) }],
        };
        var free = new MeatContent(Proportion.Zero, PricePerPound.FromCents(0));

        // 4 % of salt at 50 cents is 2 cents; 1.04 lb of green at 15 cents of casing a pound 15.6 cents: 17.6 ÷ 1.04 lb; half of it lost, twice that.
        var mix = FormulaComposition.Of(salted, free, free);
        Assert.Equal(decimal.Round(0.176m / 1.04m, 6), decimal.Round(mix.CostPerPound!.Value.ToDecimal(), 6));
        Assert.Equal(decimal.Round(0.352m / 1.04m, 6), decimal.Round(mix.CostPerFinishedPound(Proportion.FromPercent(50m))!.Value.ToDecimal(), 6));
        Assert.Null(FormulaComposition.Of(salted with { Pieces = [new PieceLine("Casing", Weight.FromPounds(2m))] }, free, free).CostPerPound);
    }

    private static Formula Of(params FormulaLine[] lines) => new("Sausage", Proportion.FromPercent(80m), IsCured: true, lines);
}
