using ProcessorDesk.Trade.Curing;
using Xunit;
using static ProcessorDesk.Trade.Tests.Curing.Cure;

namespace ProcessorDesk.Trade.Tests.Published;

/// <summary>
/// Source: USDA FSIS Directive 7620.3, Processing Inspectors' Calculations Handbook (1995), as transcribed: ingoing ppm is
/// nitrite × 1,000,000 / green meat block. The use level of a 6.25 % cure is 4 oz to 100 lb, 1 oz to 25 lb.
/// </summary>
public sealed class ProcessingInspectorsHandbook
{
    [Theory]
    [InlineData("4", "100")]
    [InlineData("1", "25")]
    [InlineData("0.5", "12.5")]
    [InlineData("40", "1000")]
    public void The_use_level_in_ounces_is_156_25_ppm_and_meets(string ounces, string pounds)
    {
        Assert.Equal(156.25m, Figure(ounces) * 0.0625m / (Figure(pounds) * 16m) * 1_000_000m);

        var check = Check(Weight.FromPounds(Figure(pounds)), Of(Weight.FromOunces(Figure(ounces))));

        Assert.Equal(156.25m, check.NitritePpm);
        Assert.Equal("156.25 ppm", check.NitriteText);
        Assert.True(check.Meets);
        Assert.False(check.BelowMinimum);
        Assert.Empty(check.Findings);
    }

    [Fact]
    public void A_hundredth_of_an_ounce_more_does_not_meet()
    {
        var check = Check(Weight.FromPounds(100m), Of(Weight.FromOunces(4.01m)));

        Assert.Equal(4.01m * 0.0625m / 1600m * 1_000_000m, check.NitritePpm);
        Assert.False(check.Meets);
        var finding = Assert.Single(check.Findings);
        Assert.Equal("Too much nitrite: 156.64 ppm, and the most is 156.25 ppm (1/4 oz per 100 lb). Weigh less cure or more meat in.", finding.Text);
        Assert.Equal(("156.64 ppm", "156.25 ppm (1/4 oz per 100 lb)"), (finding.Found, finding.Allowed));
        Assert.Contains("9 CFR 424.21(c)", finding.Source, StringComparison.Ordinal);
    }

    [Fact]
    public void By_the_pound_1_134_g_is_the_most_and_1_12_g_is_154_3_ppm()
    {
        // 453.59237 g / 6400 / 0.0625 = 1.13398 g
        Assert.True(Check(Weight.FromPounds(1m), Of(Weight.FromGrams(1.134m))).Meets);
        Assert.False(Check(Weight.FromPounds(1m), Of(Weight.FromGrams(1.135m))).Meets);
        Assert.Equal(154.3m, decimal.Round(1.12m * 0.0625m / 453.59237m * 1_000_000m, 1));
        Assert.Equal(154.3m, decimal.Round(Check(Weight.FromPounds(1m), Of(Weight.FromGrams(1.12m))).NitritePpm, 1));
    }

    [Theory]
    [InlineData("2.5", "6.25", "1000", "156.25")] // 2.5 g × 0.0625 / 1,000 g
    [InlineData("1", "100", "5000", "200")] // 1 g of pure nitrite in 5 kg
    public void Grams_on_grams(string grams, string strength, string meatGrams, string partsPerMillion)
    {
        var check = Check(Weight.FromGrams(Figure(meatGrams)), Of(Weight.FromGrams(Figure(grams)), Figure(strength)));

        Assert.Equal(Figure(partsPerMillion), check.NitritePpm);
        Assert.Equal(Figure(partsPerMillion) <= 156.25m, check.Meets);
    }

    [Fact]
    public void A_cure_with_nitrate_is_checked_for_both_together()
    {
        // 4 oz on 1,600 oz: × 0.0625 = 156.25 ppm nitrite; × 0.04 = 100 ppm nitrate.
        var check = Check(Weight.FromPounds(100m), Of(Weight.FromOunces(4m), 6.25m, 4m));

        Assert.Equal((156.25m, 100m), (check.NitritePpm, check.NitratePpm));
        Assert.True(check.Meets);
        Assert.Equal("100 ppm", check.NitrateText);
    }

    [Theory]
    [InlineData("0.25", "100", "0", true)] // 1/4 oz nitrite to 100 lb
    [InlineData("0.2501", "100", "0", false)]
    [InlineData("2.75", "0", "100", true)] // 2 3/4 oz nitrate to 100 lb
    [InlineData("2.7501", "0", "100", false)]
    public void Pure_salts_are_held_to_the_rule_itself(string ounces, string nitrite, string nitrate, bool meets)
    {
        var check = Check(Weight.FromPounds(100m), Of(Weight.FromOunces(Figure(ounces)), Figure(nitrite), Figure(nitrate)));

        Assert.Equal(meets, check.Meets);
        Assert.NotEmpty(check.Working);
    }

    /// <summary>Pumped: nitrite × pump × 1,000,000 / pickle. 2 lb in 1,000 lb at 10 %.</summary>
    [Fact]
    public void Two_pounds_in_a_thousand_pounds_of_pickle_pumped_to_a_tenth_are_200_ppm()
    {
        Assert.Equal(200m, 2m * 0.10m * 1_000_000m / 1000m);
        foreach (var method in new[] { CureMethod.Pumped, CureMethod.ImmersionPickup })
            Assert.Equal((200m, true), Answer(Pickled(method, 1000m, 10m, PureNitrite(2m))));
    }

    /// <summary>Immersion, method two: nitrite × 1,000,000 / (green meat block + pickle). 0.2 lb on 800 and 200 lb.</summary>
    [Fact]
    public void At_equilibrium_a_fifth_of_a_pound_on_800_lb_of_meat_and_200_lb_of_pickle_is_200_ppm()
    {
        Assert.Equal(200m, 0.2m * 1_000_000m / (800m + 200m));

        var question = new CureQuestion(CureMethod.ImmersionEquilibrium, [PureNitrite(0.2m)]) { Meat = Pounds(800m), Pickle = Pounds(200m) };

        Assert.Equal((200m, true), Answer(question));
    }

    /// <summary>Dry: nitrite × 1,000,000 / green weight. An ounce to 100 lb.</summary>
    [Fact]
    public void Dry_cured_an_ounce_of_nitrite_to_100_lb_is_625_ppm()
    {
        Assert.Equal(625m, 1m / 1600m * 1_000_000m);
        Assert.Equal((625m, true), Answer(new CureQuestion(CureMethod.Dry, [PureNitrite(1m / 16m)]) { Meat = Pounds(100m) }));
    }

    /// <summary>A 6.25 % nitrite and 4 % nitrate cure at 4 oz to 100 lb brings 4 × (1 − 0.0625 − 0.04) = 3.59 oz of salt.</summary>
    [Fact]
    public void A_cure_brings_salt_of_its_own()
    {
        Assert.Equal(3.59m, 4m * (1m - 0.0625m - 0.04m));
        Assert.Equal(Weight.FromOunces(3.59m), Of(Weight.FromOunces(4m), 6.25m, 4m).RestAsSalt);
    }

    /// <summary>1 oz nitrite to 1 lb of salt is 1/17, 5.88 %, and not 6.25 %.</summary>
    [Fact]
    public void The_strength_decides_and_not_the_colour()
    {
        Assert.Equal(5.88m, decimal.Round(100m / 17m, 2));
        Assert.Equal(147m, Check(Weight.FromPounds(100m), Of(Weight.FromOunces(4m), 5.88m)).NitritePpm); // 4 × 0.0588 / 1600
    }
}
