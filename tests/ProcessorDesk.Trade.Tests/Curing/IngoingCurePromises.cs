using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using ProcessorDesk.Trade.Curing;
using Xunit;

namespace ProcessorDesk.Trade.Tests.Curing;

/// <summary>A cure by any method: what it is worked on, its strengths, and the small scale.</summary>
public sealed record MethodCase(CureQuestion Beside, Proportion Nitrite, Proportion Nitrate, ScaleDivision Small)
{
    public CureAmount Of(Weight amount) => new("Cure", amount, Nitrite, Nitrate);

    public CureQuestion With(params CureAmount[] more) => Beside with { Cures = [.. Beside.Cures, .. more] };

    /// <summary>The part of the cure's nitrite that goes in, in ppm for each milligram; worked from the rule's words by decimals.</summary>
    public decimal PpmOf(decimal milligrams)
    {
        var (meat, pickle, pump) = (Figure(Beside.Meat), Figure(Beside.Pickle), (Beside.Pump?.Percent ?? 0m) / 100m);
        return milligrams * 1_000_000m * Beside.Method switch
        {
            CureMethod.Comminuted or CureMethod.Dry or CureMethod.BaconDry => 1m / meat,
            CureMethod.Pumped or CureMethod.ImmersionPickup or CureMethod.BaconPumped or CureMethod.BaconImmersion => pump / pickle,
            CureMethod.ImmersionEquilibrium => 1m / (meat + pickle),
        };
    }

    private static decimal Figure(KeyedWeight? weight) => weight is null ? 0m : (decimal)weight.Milligrams.Numerator / (decimal)weight.Milligrams.Denominator;
}

public static class MethodCases
{
    public static Arbitrary<MethodCase> Cases() => Arb.From(
        from method in Gen.Elements(Enum.GetValues<CureMethod>())
        from salt in Gen.Elements(Enum.GetValues<CuringSalt>())
        from meat in Weights(WeightUnit.Pound, 0.01m)
        from pickle in Gen.OneOf(Weights(WeightUnit.Pound, 0.01m), Weights(WeightUnit.Gram, 0.1m))
        from pump in Gen.OneOf(Gen.Elements(10_000, 100_000, 1_000_000), Gen.Choose(10_000, 500_000))
        from nitrite in Gen.OneOf(Gen.Elements(0, 5_000, 58_800, 62_500, 1_000_000), Gen.Choose(1_000, 500_000))
        from nitrate in Gen.OneOf(Gen.Elements(0, 0, 0, 10_000, 40_000), Gen.Choose(0, 500_000))
        from already in Gen.Elements(0, 0, 1, 100)
        from small in Gen.Elements(
            ScaleDivision.TenthGram,
            ScaleDivision.Of(WeightUnit.Gram, 0.001m),
            ScaleDivision.Of(WeightUnit.Gram, 0.0025m),
            ScaleDivision.Of(WeightUnit.Gram, 5m),
            ScaleDivision.Of(WeightUnit.Ounce, 0.001m),
            ScaleDivision.Of(WeightUnit.Ounce, 0.05m))
        select new MethodCase(
            new CureQuestion(method, already == 0 ? [] : [new CureAmount("Seasoning", Weight.FromMilligrams(already), Proportion.FromPercent(1m), Proportion.Zero)])
            {
                Meat = meat,
                Pickle = pickle,
                Pump = Proportion.FromPartsPerMillion(pump),
                Salt = salt,
                Accelerator = method == CureMethod.BaconPumped ? new CureAccelerator(AcceleratorKind.Salt, 550m) : null,
            },
            Proportion.FromPartsPerMillion(nitrite),
            Proportion.FromPartsPerMillion(nitrite == 1_000_000 ? 0 : nitrite + nitrate == 0 ? 1_000 : nitrate),
            small));

    private static Gen<KeyedWeight> Weights(WeightUnit unit, decimal division) =>
        Gen.OneOf(Gen.Elements(1, 2, 2500, 10_000_000), Gen.Choose(1, 10_000), Gen.Choose(1, 10_000_000)).Select(count => KeyedWeight.Of(count * division, unit));
}

/// <summary>What the cure's arithmetic promises, by every method.</summary>
[Properties(MaxTest = 4000, Arbitrary = [typeof(MethodCases)])]
public sealed class IngoingCurePromises
{
    [Property]
    public void The_most_meets_and_one_division_more_does_not(MethodCase cure)
    {
        var most = CureDose.Most(cure.Beside, cure.Nitrite, cure.Nitrate, cure.Small).Amount;

        Assert.False(most.IsNegative);
        Assert.Equal(cure.Small.Round(most), most);
        if (most.IsPositive)
            Assert.True(IngoingCure.Check(cure.With(cure.Of(most))).Meets);
        Assert.False(IngoingCure.Check(cure.With(cure.Of(cure.Small.FromCount(cure.Small.CountOf(most) + 1)))).Meets);
    }

    [Property]
    public void The_ppm_are_those_of_the_rule_and_grow_with_the_dose(MethodCase cure)
    {
        var dose = CureAmount.Of("Cure", 2m, WeightUnit.Gram, cure.Nitrite, cure.Nitrate);
        var (once, thrice) = (IngoingCure.Check(cure.Beside with { Cures = [dose] }), IngoingCure.Check(cure.Beside with { Cures = [dose, dose, dose] }));

        var expected = cure.PpmOf(2000m * cure.Nitrite.Percent / 100m);
        Assert.InRange(once.NitritePpm - expected, -0.000000001m * (1m + expected), 0.000000001m * (1m + expected));
        Assert.InRange(thrice.NitritePpm - 3m * once.NitritePpm, -0.0000000002m, 0.0000000002m);
        Assert.InRange(thrice.NitratePpm - 3m * once.NitratePpm, -0.0000000002m, 0.0000000002m);
    }

    [Property]
    public void An_amount_for_a_target_is_within_a_division_under_it(MethodCase cure)
    {
        if (cure.Nitrite.IsZero)
            return;
        var amount = CureDose.AmountFor(cure.Beside, Ratio.Of(100, 1_000_000), cure.Nitrite, cure.Small);

        // What the amount is kept in, half a milligram, may lift it; a division more is past the target.
        Assert.True(cure.PpmOf((amount.Milligrams - 0.5m) * cure.Nitrite.Percent / 100m) <= 100.0000001m);
        Assert.True(cure.PpmOf((cure.Small.FromCount(cure.Small.CountOf(amount) + 1).Milligrams + 0.5m) * cure.Nitrite.Percent / 100m) >= 99.9999999m);
    }

    [Property]
    public void Without_a_dose_nothing_meets(MethodCase cure) =>
        Assert.False(IngoingCure.Check(cure.Beside with { Cures = [cure.Of(Weight.Zero)] }).Meets);
}
