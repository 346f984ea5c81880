using FsCheck;
using FsCheck.Fluent;
using ProcessorDesk.Trade.Blending;

namespace ProcessorDesk.Trade.Tests.Blending;

/// <summary>Blocks with an answer and without, bounds loose and tight, divisions fine and coarse, prices and fats that tie.</summary>
public static class BlendCases
{
    private const int MostDivisions = 10_000_000;

    private static readonly Gen<Proportion> Fats = Parts(Gen.Elements(0, 20, 20, 100), 0, 100);

    private static readonly Gen<Weight?> Stocks =
        from division in Gen.Elements(Divisions)
        from count in Gen.OneOf(Gen.Elements(0, 1, MostDivisions), Gen.Choose(0, 100), Gen.Choose(0, MostDivisions))
        select (Weight?)division.FromCount(count);

    private static readonly Gen<BlendMaterial> Materials =
        from name in Gen.Elements("Lean", "Trim", "Belly", "Suet")
        from fat in Fats
        from price in Gen.OneOf(Gen.Elements(0, 1, 300, 300), Gen.Choose(0, 2_000))
        from least in Gen.Frequency((5, Gen.Constant(Proportion.Zero)), (1, Parts(Gen.Elements(0, 100), 0, 60)))
        from most in Gen.Frequency((2, Gen.Constant(Proportion.Whole)), (1, Parts(Gen.Elements(0, 50, 100), 20, 100)))
        from stock in Gen.Frequency((3, Gen.Constant((Weight?)null)), (1, Stocks))
        select new BlendMaterial(name, fat, PricePerPound.FromCents(price), least, most, stock);

    private static ScaleDivision[] Divisions =>
    [
        ScaleDivision.HundredthPound,
        ScaleDivision.Of(WeightUnit.Pound, 0.5m),
        ScaleDivision.Of(WeightUnit.Kilogram, 0.005m),
        ScaleDivision.Of(WeightUnit.Ounce, 0.1m),
    ];

    public static Arbitrary<BlendWanted> Blocks() => Arb.From(
        from division in Gen.Elements(Divisions)
        from count in Gen.OneOf(Gen.Elements(1, MostDivisions), Gen.Choose(1, 100), Gen.Choose(1, MostDivisions))
        from beside in Gen.Choose(-2, 2)
        from one in Fats
        from other in Gen.OneOf(Gen.Constant(one), Fats)
        from size in Gen.Choose(1, 7)
        from materials in Materials.ArrayOf(size)
        select new BlendWanted(
            division.FromCount(count) + Weight.FromMilligrams(beside),
            division,
            one < other ? new FatBand(one, other) : new FatBand(other, one),
            materials));

    /// <summary>Whole percents, where bounds meet exactly, and any part per million.</summary>
    private static Gen<Proportion> Parts(Gen<int> percents, int least, int most) => Gen.OneOf(
        percents.Select(percent => Proportion.FromPercent(percent)),
        Gen.Choose(least, most).Select(percent => Proportion.FromPercent(percent)),
        Gen.Choose(least * 10_000, most * 10_000).Select(Proportion.FromPartsPerMillion));
}
