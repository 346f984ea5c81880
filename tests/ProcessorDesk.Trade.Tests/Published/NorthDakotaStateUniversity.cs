using ProcessorDesk.Trade.Curing;
using ProcessorDesk.Trade.Formulas;
using Xunit;

namespace ProcessorDesk.Trade.Tests.Published;

/// <summary>
/// Source: North Dakota State University Extension, venison summer sausage: 15 lb venison, 10 lb pork trimmings, 7 oz salt,
/// 1 oz commercial cure, 1 oz mustard seed, 3 oz pepper, 3 oz sugar, 1/2 oz marjoram. The cure is taken at 6.25 % nitrite.
/// </summary>
public sealed class NorthDakotaStateUniversity
{
    private static readonly Formula SummerSausage = new(
        "Venison summer sausage",
        Proportion.FromPercent(15m / 25m * 100m),
        IsCured: true,
        [
            Spice("Salt", 7m),
            FormulaLine.OfCure("Cure", FormulaLine.OuncesPerPounds(1m, 25m), Proportion.FromPercent(6.25m), Proportion.Zero),
            Spice("Mustard seed", 1m),
            Spice("Pepper", 3m),
            Spice("Sugar", 3m),
            Spice("Marjoram", 0.5m),
        ]);

    private static FormulaLine Spice(string name, decimal ounces) =>
        new(name, FormulaLine.OuncesPerPounds(ounces, 25m), Proportion.Zero, Proportion.Zero, false);

    [Fact]
    public void The_formula_is_in_order() => Assert.Empty(SummerSausage.Check());

    [Fact]
    public void The_cure_is_156_25_ppm_and_the_salt_1_75_percent_of_the_meat()
    {
        Assert.Equal(156.25m, 1m * 0.0625m / (25m * 16m) * 1_000_000m);
        Assert.Equal(156.25m, SummerSausage.Nitrite.PartsPerMillion);
        Assert.Equal(7m / 400m, SummerSausage.Lines[0].OfMeatBlock.ToDecimal());
    }

    [Fact]
    public void The_batch_of_25_lb_of_meat_is_25_96875_lb()
    {
        // 7 + 1 + 1 + 3 + 3 + 0.5 = 15.5 oz
        Assert.Equal(Ratio.FromDecimal(15.5m / 400m), SummerSausage.Additions);
        Assert.Equal(Ratio.FromDecimal(25.96875m), Ratio.Of(25, 1) * (Ratio.One + SummerSausage.Additions));
    }

    [Fact]
    public void Scaled_to_100_lb_it_is_60_and_40_lb_of_meat_and_four_times_the_ounces()
    {
        var scaled = FormulaScaling.Scale(SummerSausage, Weight.FromPounds(100m), ScaleDivision.TenthGram);

        Assert.Equal((Weight.FromPounds(60m), Weight.FromPounds(40m)), (scaled.Lean, scaled.AddedFat));
        Assert.Equal(
            ["1 lb 12.00 oz", "4.00 oz", "4.00 oz", "12.00 oz", "12.00 oz", "2.00 oz"], // 28, 4, 4, 12, 12, 2
            scaled.Lines.Select(line => line.PoundsAndOunces));
    }

    [Fact]
    public void In_grams_the_cure_is_rounded_down_and_the_rest_to_the_nearest()
    {
        var scaled = FormulaScaling.Scale(SummerSausage, Weight.FromPounds(100m), ScaleDivision.TenthGram);

        // × 28.349523125: 793.787, 113.398, 113.398, 340.194, 340.194, 56.699
        Assert.Equal(
            ["793.8 g", "113.3 g", "113.4 g", "340.2 g", "340.2 g", "56.7 g"], scaled.Lines.Select(line => line.Grams));
        Assert.True(scaled.Cure!.Meets);
        Assert.Equal(156.11m, decimal.Round(113.3m * 0.0625m / 45_359.237m * 1_000_000m, 2));
        Assert.Equal("156.11 ppm", scaled.Cure.NitriteText);
    }

    [Fact]
    public void With_the_salt_of_the_cure_it_is_1_984_percent_of_the_meat()
    {
        // 7 oz and 1 oz × 93.75 % are 7.9375 oz on 400
        Assert.Equal(1.984m, decimal.Round((7m + 0.9375m) / 400m * 100m, 3));
        var stated = SummerSausage with
        {
            Lines = [.. SummerSausage.Lines.Select(line => line with { Salt = line.Name == "Salt" ? Proportion.Whole : line.IsCure ? Proportion.FromPercent(93.75m) : Proportion.Zero })],
        };

        var mix = FormulaComposition.Of(stated, new MeatContent(Proportion.FromPercent(2.42m), null), new MeatContent(Proportion.FromPercent(50m), null));

        Assert.Equal(Ratio.FromDecimal(7.9375m / 400m), mix.Salt);
        Assert.Equal(CureStrength.Rest(Proportion.FromPercent(6.25m), Proportion.Zero), Proportion.FromPercent(93.75m));
    }

    [Fact]
    public void On_a_scale_of_ounces_the_cure_is_4_oz_and_meets()
    {
        var cure = FormulaScaling.Scale(SummerSausage, Weight.FromPounds(100m), ScaleDivision.Of(WeightUnit.Ounce, 0.05m));

        Assert.Equal("4.00 oz", cure.Lines[1].Grams);
        Assert.True(cure.Cure!.Meets);
    }
}
