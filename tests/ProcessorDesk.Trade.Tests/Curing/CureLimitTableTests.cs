using ProcessorDesk.Trade.Curing;
using Xunit;
using static ProcessorDesk.Trade.Tests.Curing.Cure;

namespace ProcessorDesk.Trade.Tests.Curing;

/// <summary>
/// Every method at each of its limits, with pure salts weighed in ounces; the base is 100 lb, which is 1,600 oz, and a pump or pick-up is 10 %.
/// Source: 9 CFR 424.21(c) and 424.22(b), text of the 2015 edition.
/// </summary>
public sealed class CureLimitTableTests
{
    [Theory]
    [InlineData(CureMethod.Comminuted, CuringSalt.Sodium, "0.25", "156.25")]
    [InlineData(CureMethod.Comminuted, CuringSalt.Potassium, "0.25", "156.25")]
    [InlineData(CureMethod.Dry, CuringSalt.Sodium, "1", "625")]
    [InlineData(CureMethod.Dry, CuringSalt.Potassium, "1", "625")]
    [InlineData(CureMethod.Pumped, CuringSalt.Sodium, "3.2", "200")]
    [InlineData(CureMethod.Pumped, CuringSalt.Potassium, "3.2", "200")]
    [InlineData(CureMethod.ImmersionPickup, CuringSalt.Sodium, "3.2", "200")]
    [InlineData(CureMethod.ImmersionEquilibrium, CuringSalt.Sodium, "0.32", "200")]
    [InlineData(CureMethod.BaconPumped, CuringSalt.Sodium, "1.92", "120")]
    [InlineData(CureMethod.BaconPumped, CuringSalt.Potassium, "2.368", "148")]
    [InlineData(CureMethod.BaconImmersion, CuringSalt.Sodium, "1.92", "120")]
    [InlineData(CureMethod.BaconImmersion, CuringSalt.Potassium, "2.368", "148")]
    [InlineData(CureMethod.BaconDry, CuringSalt.Sodium, "0.32", "200")]
    [InlineData(CureMethod.BaconDry, CuringSalt.Potassium, "0.3936", "246")]
    public void The_limit_of_nitrite_meets_and_a_ten_thousandth_of_an_ounce_more_does_not(CureMethod method, CuringSalt salt, string ounces, string limit)
    {
        Assert.Equal(Figure(limit), Figure(ounces) * Pump(method) / 1600m * 1_000_000m);

        var at = IngoingCure.Check(On(method, salt, Figure(ounces), nitrite: true));
        var over = IngoingCure.Check(On(method, salt, Figure(ounces) + 0.0001m, nitrite: true));

        Assert.Equal((Figure(limit), true, false), (at.NitritePpm, at.Meets, at.BelowMinimum));
        Assert.Equal(Figure(limit), at.Rule.Nitrite.PartsPerMillion);
        Assert.Empty(at.Findings);
        Assert.False(over.Meets);
        Assert.Equal("Cure", Assert.Single(over.Findings).Field);
    }

    [Theory]
    [InlineData(CureMethod.Comminuted, "2.75", "1718.75")]
    [InlineData(CureMethod.Dry, "3.5", "2187.5")]
    [InlineData(CureMethod.Pumped, "11.2", "700")]
    [InlineData(CureMethod.ImmersionPickup, "11.2", "700")]
    [InlineData(CureMethod.ImmersionEquilibrium, "1.12", "700")]
    public void The_limit_of_nitrate_meets_and_a_ten_thousandth_of_an_ounce_more_does_not(CureMethod method, string ounces, string limit)
    {
        Assert.Equal(Figure(limit), Figure(ounces) * Pump(method) / 1600m * 1_000_000m);

        var at = IngoingCure.Check(On(method, CuringSalt.Sodium, Figure(ounces), nitrite: false));

        Assert.Equal((Figure(limit), true), (at.NitratePpm, at.Meets));
        Assert.Equal(Figure(limit), at.Rule.NitrateAllowed!.PartsPerMillion);
        Assert.False(IngoingCure.Check(On(method, CuringSalt.Sodium, Figure(ounces) + 0.0001m, nitrite: false)).Meets);
    }

    [Theory]
    [InlineData(CureMethod.BaconPumped)]
    [InlineData(CureMethod.BaconImmersion)]
    [InlineData(CureMethod.BaconDry)]
    public void No_nitrate_at_all_goes_into_bacon(CureMethod method)
    {
        var question = On(method, CuringSalt.Sodium, 0.3m, nitrite: true);
        Assert.True(IngoingCure.Check(question).Meets);

        var check = IngoingCure.Check(question with { Cures = [.. question.Cures, CureAmount.Of("Saltpetre", 0.001m, WeightUnit.Gram, Proportion.Zero, Proportion.Whole)] });

        Assert.False(check.Meets);
        Assert.Null(check.Rule.NitrateAllowed);
        Assert.Contains(check.Findings, finding => finding.Text.StartsWith("No nitrate goes into ", StringComparison.Ordinal) && finding.Allowed == "none");
        var most = CureDose.Most(question with { Cures = [] }, Pink, Proportion.FromPercent(1m), ScaleDivision.TenthGram);
        Assert.Equal(Weight.Zero, most.Amount);
        Assert.StartsWith("No nitrate goes into ", most.Why, StringComparison.Ordinal);
    }

    /// <summary>Pounds of meat or pickle, the cure 6.25 %; grams worked by decimals and cut to 0.1 g.</summary>
    [Theory]
    [InlineData(CureMethod.Comminuted, CuringSalt.Sodium, "156.25", "113.3")]
    [InlineData(CureMethod.Dry, CuringSalt.Sodium, "625", "453.5")]
    [InlineData(CureMethod.Pumped, CuringSalt.Sodium, "200", "1451.4")]
    [InlineData(CureMethod.ImmersionPickup, CuringSalt.Sodium, "200", "1451.4")]
    [InlineData(CureMethod.ImmersionEquilibrium, CuringSalt.Sodium, "200", "145.1")]
    [InlineData(CureMethod.BaconPumped, CuringSalt.Sodium, "120", "870.8")]
    [InlineData(CureMethod.BaconPumped, CuringSalt.Potassium, "148", "1074.1")]
    [InlineData(CureMethod.BaconImmersion, CuringSalt.Sodium, "120", "870.8")]
    [InlineData(CureMethod.BaconDry, CuringSalt.Sodium, "200", "145.1")]
    [InlineData(CureMethod.BaconDry, CuringSalt.Potassium, "246", "178.5")]
    public void The_most_on_100_lb_in_tenths_of_a_gram(CureMethod method, CuringSalt salt, string limit, string grams)
    {
        var exact = 45_359.237m * Figure(limit) / 1_000_000m / Pump(method) / 0.0625m;
        Assert.Equal(Figure(grams), decimal.Floor(exact * 10m) / 10m);

        var most = CureDose.Most(On(method, salt, 0m, nitrite: true) with { Cures = [] }, Pink, Proportion.Zero, ScaleDivision.TenthGram);

        Assert.Equal(Weight.FromGrams(Figure(grams)), most.Amount);
        Assert.Equal(Figure(limit), most.Decides!.PartsPerMillion);
        Assert.Contains("nitrite decides", most.Why, StringComparison.Ordinal);
    }

    private static decimal Pump(CureMethod method) => On(method, CuringSalt.Sodium, 0m, true).Pump is { } pump ? pump.Percent / 100m : 1m;

    private static CureQuestion On(CureMethod method, CuringSalt salt, decimal ounces, bool nitrite)
    {
        var cure = CureAmount.Of("Pure salt", ounces, WeightUnit.Ounce, nitrite ? Proportion.Whole : Proportion.Zero, nitrite ? Proportion.Zero : Proportion.Whole);
        var question = new CureQuestion(method, [cure]) { Salt = salt };
        return method switch
        {
            CureMethod.Comminuted or CureMethod.Dry or CureMethod.BaconDry => question with { Meat = Pounds(100m) },
            CureMethod.ImmersionEquilibrium => question with { Meat = Pounds(60m), Pickle = Pounds(40m) },
            CureMethod.Pumped or CureMethod.ImmersionPickup or CureMethod.BaconImmersion => question with { Pickle = Pounds(100m), Pump = Proportion.FromPercent(10m) },
            CureMethod.BaconPumped => question with { Pickle = Pounds(100m), Pump = Proportion.FromPercent(10m), Accelerator = new CureAccelerator(AcceleratorKind.Salt, 550m) },
        };
    }
}
