using ProcessorDesk.Trade.Formulas;
using Xunit;
using static ProcessorDesk.Trade.Tests.Formulas.Mixture;

namespace ProcessorDesk.Trade.Tests.Published;

/// <summary>
/// Source: 9 CFR 319.15 (ground beef), 319.140 (sausage), 319.141 to 319.145 (pork, beef, breakfast, Italian sausage), 319.180 (frankfurter,
/// bologna). Each figure is met exactly and passed by a hundredth of a percent.
/// </summary>
public sealed class CodeOfFederalRegulations319
{
    [Theory]
    [InlineData(ProductClass.GroundBeef, "30")]
    [InlineData(ProductClass.FreshPorkSausage, "50")]
    [InlineData(ProductClass.FreshBeefSausage, "30")]
    [InlineData(ProductClass.BreakfastSausage, "50")]
    [InlineData(ProductClass.ItalianSausage, "35")]
    [InlineData(ProductClass.Frankfurter, "30")]
    public void Fat_has_a_limit(ProductClass kind, string percent)
    {
        Assert.Empty(Passed(kind, OfFat(Figure(percent))));
        Assert.Equal([$"Fat {Figure(percent) + 0.01m} % at most {percent} %"], Passed(kind, OfFat(Figure(percent) + 0.01m)));
    }

    [Theory]
    [InlineData(ProductClass.UncookedSausage)]
    [InlineData(ProductClass.CookedSausage)]
    public void Other_sausage_has_no_limit_of_fat(ProductClass kind) => Assert.Empty(Passed(kind, OfFat(90m)));

    [Theory]
    [InlineData(ProductClass.FreshPorkSausage)]
    [InlineData(ProductClass.FreshBeefSausage)]
    [InlineData(ProductClass.BreakfastSausage)]
    [InlineData(ProductClass.ItalianSausage)]
    [InlineData(ProductClass.UncookedSausage)]
    public void Water_in_uncooked_sausage_is_3_percent_of_everything(ProductClass kind)
    {
        // 3 of 100 parts: beside 97 of meat. 3 % of the meat is 3 of 103, 2.91 %.
        Assert.Empty(Passed(kind, With(Water(Ratio.Of(3, 97)))));
        Assert.Empty(Passed(kind, With(Water(Ratio.Of(3, 100)))));
        Assert.Equal(["AddedWater 3.01 % at most 3 %"], Passed(kind, With(Water(Ratio.Of(301, 9699)))));
    }

    [Fact]
    public void Beside_25_and_a_half_pounds_go_0_78866_lb_of_water()
    {
        Assert.Equal(0.78866m, decimal.Round(0.03m / 0.97m * 25.5m, 5));

        Assert.Equal(Weight.FromPounds(0.78m), SausageWater.MostInUncooked(Weight.FromPounds(25.5m), ScaleDivision.HundredthPound));
        Assert.Equal(357.7m, SausageWater.MostInUncooked(Weight.FromPounds(25.5m), ScaleDivision.TenthGram).Grams); // × 453.59237 = 357.73
    }

    [Fact]
    public void Cooked_sausage_keeps_10_percent_of_added_water()
    {
        // 30 parts of water to 100 of meat, 15 % lost of 130: 19.5. Left 10.5 of 110.5 = 9.50 %. With 31: 131 × 0.85 = 111.35; 31 − 19.65 = 11.35; 10.19 %.
        Assert.Equal(9.50m, decimal.Round((30m - 19.5m) / 110.5m * 100m, 2));
        Assert.Equal(10.19m, decimal.Round((31m - 19.65m) / 111.35m * 100m, 2));

        Assert.Empty(Passed(ProductClass.CookedSausage, With(Water(Ratio.Of(30, 100))), loss: 15m));
        Assert.Equal(["AddedWater 10.19 % at most 10 %"], Passed(ProductClass.CookedSausage, With(Water(Ratio.Of(31, 100))), loss: 15m));
    }

    [Fact]
    public void Fat_and_added_water_of_a_frankfurter_are_at_most_40_percent_together()
    {
        // 25 % fat in 80 parts is 20, and 20 parts of water: 40 of 100
        var at = FormulaComposition.Of(Mix(Water(Ratio.Of(20, 80))), Meat(25m), Meat(0m));
        var over = FormulaComposition.Of(Mix(Water(Ratio.Of(20, 80))), Meat(25.0125m), Meat(0m)); // 20.01 + 20

        Assert.Empty(Passed(ProductClass.Frankfurter, at));
        Assert.Equal(["FatAndAddedWater 40.01 % at most 40 %"], Passed(ProductClass.Frankfurter, over));
    }

    [Fact]
    public void Italian_sausage_is_85_percent_meat_at_least()
    {
        Assert.Empty(Passed(ProductClass.ItalianSausage, With(Other(Ratio.Of(15, 85)))));
        Assert.Equal(["Meat 84.99 % at least 85 %"], Passed(ProductClass.ItalianSausage, With(Other(Ratio.Of(1501, 8499)))));
    }

    [Theory]
    [InlineData(ProductClass.BreakfastSausage)]
    [InlineData(ProductClass.UncookedSausage)]
    [InlineData(ProductClass.CookedSausage)]
    [InlineData(ProductClass.Frankfurter)]
    public void Binders_are_three_and_a_half_percent_together_and_two_of_them_2_percent_by_themselves(ProductClass kind)
    {
        Assert.Empty(Passed(kind, With(Of(Additive.Binder, 350, 9650))));
        Assert.Equal(["Binders 3.51 % at most 3.5 %"], Passed(kind, With(Of(Additive.Binder, 351, 9649))));
        Assert.Empty(Passed(kind, With(Of(Additive.IsolatedSoyProtein, 200, 9650), Of(Additive.SodiumCaseinate, 150, 9650))));
        Assert.Equal(["Binders 3.51 % at most 3.5 %"], Passed(kind, With(Of(Additive.IsolatedSoyProtein, 200, 9649), Of(Additive.SodiumCaseinate, 151, 9649))));
        Assert.Empty(Passed(kind, With(Of(Additive.IsolatedSoyProtein, 200, 9800))));
        Assert.Equal(["IsolatedSoyProtein 2.01 % at most 2 %"], Passed(kind, With(Of(Additive.IsolatedSoyProtein, 201, 9799))));
        Assert.Equal(["SodiumCaseinate 2.01 % at most 2 %"], Passed(kind, With(Of(Additive.SodiumCaseinate, 201, 9799))));
    }

    [Theory]
    [InlineData(ProductClass.CookedSausage)]
    [InlineData(ProductClass.Frankfurter)]
    public void Phosphate_is_half_a_percent_of_cooked_sausage(ProductClass kind)
    {
        Assert.Empty(Passed(kind, With(Of(Additive.Phosphate, 50, 9950))));
        Assert.Equal(["Phosphate 0.51 % at most 0.5 %"], Passed(kind, With(Of(Additive.Phosphate, 51, 9949))));
    }

    [Theory]
    [InlineData(ProductClass.FreshPorkSausage)]
    [InlineData(ProductClass.FreshBeefSausage)]
    [InlineData(ProductClass.BreakfastSausage)]
    [InlineData(ProductClass.ItalianSausage)]
    [InlineData(ProductClass.UncookedSausage)]
    public void Phosphate_has_no_place_in_sausage_that_is_not_cooked(ProductClass kind) =>
        Assert.Equal(["Phosphate 0.10 % none"], Passed(kind, With(Of(Additive.Phosphate, 10, 9990))));

    [Fact]
    public void A_figure_just_past_its_limit_never_reads_like_it_and_says_that_it_is_a_guide()
    {
        var finding = Assert.Single(ProductGuide.Check(ProductClass.FreshBeefSausage, OfFat(30.0001m), Proportion.Zero));

        Assert.Equal("Fat would be 30.0001 % of finished product; product for sale holds at most 30 %. For custom work it is a guide.", finding.Text);
        Assert.Equal("9 CFR 319.142", finding.Source);
    }

    [Fact]
    public void Every_class_has_its_figures_and_each_an_id_of_its_own()
    {
        Assert.Equal(Enum.GetValues<ProductClass>(), ProductLimits.All.Select(limit => limit.Class).Distinct().Order());
        Assert.Equal(ProductLimits.All.Count, ProductLimits.All.Select(limit => limit.Id).Distinct().Count());
        Assert.All(ProductLimits.All, limit => Assert.StartsWith("9 CFR 319.", limit.Source, StringComparison.Ordinal));
    }

    private static IEnumerable<string> Passed(ProductClass kind, FormulaComposition mix, decimal loss = 0m) =>
        ProductGuide.Check(kind, mix, Proportion.FromPercent(loss)).Select(finding => $"{finding.Field} {finding.Found} {finding.Allowed}");
}
