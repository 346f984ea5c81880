using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using ProcessorDesk.Trade.Curing;
using ProcessorDesk.Trade.Formulas;
using Xunit;

namespace ProcessorDesk.Trade.Tests.Formulas;

public sealed class FormulaScalingTests
{
    private static readonly Formula Fresh = new(
        "Hot", Proportion.FromPercent(75m), false, [FormulaLine.OfPercent("Salt", 1.5m), FormulaLine.OfPercent("Water", 3m)]);

    private static readonly Formula OverLimit = new(
        "Ring",
        Proportion.FromPercent(70m),
        true,
        [FormulaLine.OfCure("Pink cure", FormulaLine.OuncesPerPounds(2m, 45m), Proportion.FromPercent(6.25m), Proportion.Zero)]);

    /// <summary>A cure at the very limit, some salt, and a block to scale it to.</summary>
    public static Arbitrary<(int Block, int Nitrite, int SaltPpm, int Division)> Mixes() => Arb.From(
        from block in Gen.OneOf(Gen.Elements(0, 1, 10_000_000), Gen.Choose(0, 10_000_000))
        from nitrite in Gen.OneOf(Gen.Elements(62_500, 1_000_000), Gen.Choose(160, 1_000_000))
        from salt in Gen.Choose(0, 50_000)
        from division in Gen.Choose(1, 100)
        select (block, nitrite, salt, division));

    [Fact]
    public void A_product_that_is_not_cured_has_no_cure_to_check()
    {
        var scaled = FormulaScaling.Scale(Fresh, Weight.FromPounds(14.71m), ScaleDivision.TenthGram);

        Assert.Null(scaled.Cure);
        Assert.Equal(["100.1 g", "200.2 g"], scaled.Lines.Select(line => line.Grams)); // 6,672.34 g × 1.5 % = 100.085; × 3 % = 200.170
        Assert.Equal(scaled.MeatBlock + Weight.FromGrams(100.1m) + Weight.FromGrams(200.2m), scaled.Green);
    }

    [Fact]
    public void A_formula_past_the_limit_is_scaled_as_written_and_refused()
    {
        var scaled = FormulaScaling.Scale(OverLimit, Weight.FromPounds(45m), ScaleDivision.TenthGram);

        Assert.Equal("56.6 g", scaled.Lines[0].Grams); // 2 oz = 56.699 g
        Assert.False(scaled.Cure!.Meets);
    }

    [Fact]
    public void A_cured_product_without_a_cure_line_is_refused()
    {
        var scaled = FormulaScaling.Scale(Fresh with { IsCured = true }, Weight.FromPounds(25m), ScaleDivision.TenthGram);

        Assert.False(scaled.Cure!.Meets);
    }

    [Fact]
    public void So_little_meat_that_the_small_scale_shows_no_cure_is_refused()
    {
        var scaled = FormulaScaling.Scale(OverLimit, Weight.FromGrams(30m), ScaleDivision.TenthGram);

        Assert.Equal("0.0 g", scaled.Lines[0].Grams); // 30 g × 2 / 720 = 0.083 g
        Assert.False(scaled.Cure!.Meets);
    }

    [Theory]
    [InlineData("25", "5", 5)] // 25 lb of 5 lb each, exactly
    [InlineData("25.01", "5", 6)]
    [InlineData("24.99", "5", 5)]
    [InlineData("0", "5", 0)]
    [InlineData("10", "3", 4)]
    public void Casings_go_by_the_piece_up_to_whole_ones(string green, string each, long count)
    {
        var formula = new Formula("Plain", Proportion.Whole, false, []) { Pieces = [new PieceLine("Casing", Weight.FromPounds(Mixture.Figure(each)))] };

        var pieces = FormulaScaling.Scale(formula, Weight.FromPounds(Mixture.Figure(green)), ScaleDivision.TenthGram).Pieces;

        Assert.Equal(count, Assert.Single(pieces).Count);
    }

    [Fact]
    public void Casings_are_for_the_green_weight_with_all_that_is_added()
    {
        // 100 lb of meat with 4.5 % added are 104.5 lb: 21 of 5 lb
        var formula = Fresh with { Pieces = [new PieceLine("Casing", Weight.FromPounds(5m))] };

        Assert.Equal(21, FormulaScaling.Scale(formula, Weight.FromPounds(100m), ScaleDivision.TenthGram).Pieces[0].Count);
        Assert.Throws<ArgumentOutOfRangeException>(() => FormulaScaling.Scale(formula with { Pieces = [new PieceLine("Casing", Weight.Zero)] }, Weight.FromPounds(1m), ScaleDivision.TenthGram));
    }

    [Fact]
    public void A_line_can_be_read_on_any_scale()
    {
        // 10 lb: 1.5 % is 68.03886 g, 2.4 oz, 0.15 lb
        var salt = FormulaScaling.Scale(Fresh, Weight.FromPounds(10m), ScaleDivision.TenthGram).Lines[0];

        Assert.Equal(Ratio.FromDecimal(10m * 453_592.37m * 0.015m), salt.Milligrams);
        Assert.Equal(Weight.FromGrams(68m), salt.On(ScaleDivision.Of(WeightUnit.Gram, 1m)));
        Assert.Equal(Weight.FromOunces(2.5m), salt.On(ScaleDivision.Of(WeightUnit.Ounce, 0.5m)));
        Assert.Equal(Weight.FromPounds(0.15m), salt.On(ScaleDivision.HundredthPound));
    }

    [Fact]
    public void A_meat_block_below_zero_is_a_slip() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => FormulaScaling.Scale(Fresh, Weight.FromGrams(-1m), ScaleDivision.TenthGram));

    [Property(MaxTest = 2000, Arbitrary = [typeof(FormulaScalingTests)])]
    public void A_cure_at_the_limit_never_passes_it_however_it_is_scaled((int Block, int Nitrite, int SaltPpm, int Division) mix)
    {
        var strength = Proportion.FromPartsPerMillion(mix.Nitrite);
        var formula = new Formula(
            "At the limit",
            Proportion.FromPercent(70m),
            true,
            [
                FormulaLine.OfCure("Cure", CureLimits.ComminutedNitrite.Figure / strength.ToRatio(), strength, Proportion.Zero),
                new FormulaLine("Salt", Ratio.Of(mix.SaltPpm, 1_000_000), Proportion.Zero, Proportion.Zero, false),
            ]);
        var small = ScaleDivision.Of(WeightUnit.Gram, mix.Division / 100m);
        var block = Weight.FromPounds(mix.Block / 100m);

        var scaled = FormulaScaling.Scale(formula, block, small);

        Assert.Equal(scaled.Lines[0].Amount.IsPositive, scaled.Cure!.Meets);
        foreach (var unit in Enum.GetValues<WeightUnit>())
        {
            var other = scaled.Lines[0].On(ScaleDivision.Of(unit, 0.01m));
            Assert.Equal(other.IsPositive, ComminutedCure.Check(block, [new CureAmount("Cure", other, strength, Proportion.Zero)]).Meets);
        }

        Assert.Equal(block, scaled.Lean + scaled.AddedFat);
        Assert.Equal(scaled.Green, scaled.MeatBlock + scaled.Lines[0].Amount + scaled.Lines[1].Amount);
        Assert.InRange(scaled.Lines[1].Amount.Milligrams - block.Milligrams * (mix.SaltPpm / 1_000_000m), -5m * mix.Division - 1m, 5m * mix.Division + 1m);
        Assert.False(scaled.AddedFat.IsNegative || scaled.Lines.Any(line => line.Amount.IsNegative));
    }
}
