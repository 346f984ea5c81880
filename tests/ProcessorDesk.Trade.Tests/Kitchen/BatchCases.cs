using FsCheck;
using FsCheck.Fluent;
using ProcessorDesk.Trade.Kitchen;

namespace ProcessorDesk.Trade.Tests.Kitchen;

/// <summary>The parts of one batch and the mixer it is made in.</summary>
public sealed record BatchCase(IReadOnlyList<BatchPart> Parts, Weight Capacity, ScaleDivision Division)
{
    public IReadOnlyList<MixerLoad> Plan() => MixerLoads.Plan(Parts, Capacity, Division);

    public override string ToString() =>
        $"mixer {Division.Print(Capacity)}: {string.Join("; ", Parts.Select(part => $"{Division.Print(part.Lean)} + {Division.Print(part.AddedFat)} -> {Division.Print(part.Green)}"))}";
}

/// <summary>One division and much, on the division and a few milligrams beside it; mixers of one division up to all of the batch.</summary>
public static class BatchCases
{
    private const int MostDivisions = 400_000;
    private const int MostLoads = 30;

    private static readonly ScaleDivision[] s_divisions =
        [ScaleDivision.HundredthPound, ScaleDivision.Of(WeightUnit.Pound, 0.5m), ScaleDivision.Of(WeightUnit.Kilogram, 0.005m), ScaleDivision.Of(WeightUnit.Ounce, 0.1m)];

    public static Arbitrary<BatchCase> Cases() => Arb.From(
        from division in Gen.Elements(s_divisions)
        from size in Gen.Choose(1, 6)
        from parts in Part(division).ArrayOf(size)
        from loads in Gen.Choose(1, MostLoads)
        from odd in Gen.Choose(0, 3)
        let total = parts.Sum(part => division.CountOf(part.Green))
        select new BatchCase(parts, division.FromCount(Math.Max(1, total / loads + odd)), division));

    private static Gen<BatchPart> Part(ScaleDivision division) =>
        from green in Gen.OneOf(Gen.Elements(1, 2, MostDivisions), Gen.Choose(1, 300), Gen.Choose(1, MostDivisions))
        from lean in Gen.OneOf(Gen.Elements(0, 1, green), Gen.Choose(0, green))
        from fat in Gen.Choose(0, green - Math.Min(lean, green))
        from beside in Gen.Choose(-2, 2)
        select new BatchPart(Beside(division, lean, beside), Beside(division, fat, -beside), Beside(division, green, beside));

    /// <summary>An agreed weight need not lie on the division to the milligram.</summary>
    private static Weight Beside(ScaleDivision division, int count, int milligrams) =>
        count == 0 ? Weight.Zero : division.FromCount(count) + Weight.FromMilligrams(milligrams);
}
