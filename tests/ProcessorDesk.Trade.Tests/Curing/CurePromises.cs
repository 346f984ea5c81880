using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using ProcessorDesk.Trade.Curing;
using Xunit;

namespace ProcessorDesk.Trade.Tests.Curing;

/// <summary>A meat block, the strengths of a cure, and the small scale it is weighed on.</summary>
public sealed record CureCase(Weight Block, Proportion Nitrite, Proportion Nitrate, ScaleDivision Small)
{
    public CureAmount Of(Weight amount) => new("Cure", amount, Nitrite, Nitrate);

    /// <summary>The limit on the cure's weight in divisions of the small scale, worked by decimals alone.</summary>
    public decimal MostInDivisions
    {
        get
        {
            var byNitrite = Nitrite.IsZero ? decimal.MaxValue : Block.Milligrams / (6400m * Nitrite.Percent / 100m);
            var byNitrate = Nitrate.IsZero ? decimal.MaxValue : Block.Milligrams * 11m / (6400m * Nitrate.Percent / 100m);
            return Math.Min(byNitrite, byNitrate) / (Small.Step * UnitFactors.MilligramsPer(Small.Unit));
        }
    }
}

public static class CureCases
{
    public static Arbitrary<CureCase> Cases() => Arb.From(
        from block in Gen.OneOf(Blocks(WeightUnit.Pound, 0.01m), Blocks(WeightUnit.Kilogram, 0.005m), Blocks(WeightUnit.Gram, 0.001m))
        from nitrite in Gen.OneOf(Gen.Elements(0, 1, 62_500, 58_800, 1_000_000), Gen.Choose(1, 100_000))
        from nitrate in Gen.OneOf(Gen.Elements(0, 0, 1, 40_000, 10_000), Gen.Choose(0, 100_000))
        from small in Gen.Elements(
            ScaleDivision.TenthGram,
            ScaleDivision.Of(WeightUnit.Gram, 0.01m),
            ScaleDivision.Of(WeightUnit.Gram, 1m),
            ScaleDivision.Of(WeightUnit.Ounce, 0.05m),
            ScaleDivision.Of(WeightUnit.Ounce, 1m))
        select new CureCase(
            block,
            Proportion.FromPartsPerMillion(nitrite),
            Proportion.FromPartsPerMillion(nitrite == 1_000_000 ? 0 : nitrite + nitrate == 0 ? 1 : nitrate),
            small));

    private static Gen<Weight> Blocks(WeightUnit unit, decimal division) =>
        Gen.OneOf(Gen.Elements(1, 2, 2500, 10_000_000), Gen.Choose(1, 10_000), Gen.Choose(1, 10_000_000))
            .Select(count => Weight.From(count * division, unit));
}

/// <summary>What the cure's arithmetic promises, over thousands of made-up mixes.</summary>
[Properties(MaxTest = 2000, Arbitrary = [typeof(CureCases)])]
public sealed class CurePromises
{
    [Property]
    public void The_most_passes_the_check(CureCase mix)
    {
        var most = ComminutedCure.Most(mix.Block, mix.Nitrite, mix.Nitrate, mix.Small);

        Assert.False(most.IsNegative);
        Assert.Equal(mix.Small.Round(most), most);
        if (most.IsPositive)
            Assert.True(ComminutedCure.Check(mix.Block, [mix.Of(most)]).Meets);
    }

    [Property]
    public void The_most_is_the_limit_rounded_down_and_one_small_division_more_fails(CureCase mix)
    {
        var most = mix.Small.CountOf(ComminutedCure.Most(mix.Block, mix.Nitrite, mix.Nitrate, mix.Small));

        // Block and cure are kept in whole milligrams: half of one of each is all that keying may have moved the limit.
        var keying = mix.MostInDivisions / mix.Block.Milligrams / 2m + 1m / (mix.Small.Step * UnitFactors.MilligramsPer(mix.Small.Unit));
        Assert.InRange(most, mix.MostInDivisions - keying - 1m, mix.MostInDivisions + keying);
        Assert.False(ComminutedCure.Check(mix.Block, [mix.Of(mix.Small.FromCount(most + 1))]).Meets);
    }

    [Property]
    public void Nothing_is_a_cure_at_no_weight(CureCase mix)
    {
        Assert.False(ComminutedCure.Check(mix.Block, [mix.Of(Weight.Zero)]).Meets);
        Assert.Equal(Weight.Zero, ComminutedCure.Most(Weight.Zero, mix.Nitrite, mix.Nitrate, mix.Small));
    }

    [Property]
    public void One_dose_in_two_weighings_is_judged_like_one(CureCase mix)
    {
        var most = ComminutedCure.Most(mix.Block, mix.Nitrite, mix.Nitrate, mix.Small);
        var part = Weight.FromMilligrams(most.Milligrams / 3);
        var parts = ComminutedCure.Check(mix.Block, [mix.Of(part), mix.Of(most - part)]);

        Assert.Equal(most.IsPositive, parts.Meets);
    }

    [Property]
    public void Both_ways_agree(CureCase mix)
    {
        if (mix.Nitrite.IsZero)
            return;
        var amount = CureDose.AmountFor(CureQuestion.Comminuted(mix.Block, []), CureLimits.ComminutedNitrite.Figure, mix.Nitrite, mix.Small);

        var ppm = ComminutedCure.Check(mix.Block, [mix.Of(amount) with { Nitrate = Proportion.Zero }]).NitritePpm;

        // Half a milligram of cure and half a milligram of meat are what keying may lose.
        var keying = (mix.Nitrite.PartsPerMillion + 156.25m) / 2m / mix.Block.Milligrams;
        Assert.InRange(ppm, 0m, 156.25m + keying + 0.0000000001m);
        Assert.True(ComminutedCure.Most(mix.Block, mix.Nitrite, Proportion.Zero, mix.Small) >= amount);
    }
}
