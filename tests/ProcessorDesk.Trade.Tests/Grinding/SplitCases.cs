using FsCheck;
using FsCheck.Fluent;
using ProcessorDesk.Trade.Grinding;

namespace ProcessorDesk.Trade.Tests.Grinding;

/// <summary>One measured lean and its asks, at one of the divisions a shop's scales have.</summary>
public sealed record SplitCase(Weight Lean, IReadOnlyList<GrindAsk> Asks, ScaleDivision Division)
{
    public GrindSplit Split() => Splitting.Split(Lean, Asks, Grind.PlainGround, Division);
}

/// <summary>Cases with zero, one division and the maximum among them, and lean a few milligrams beside the division.</summary>
public static class SplitCases
{
    private static readonly ScaleDivision[] Divisions =
    [
        ScaleDivision.HundredthPound,
        ScaleDivision.Of(WeightUnit.Pound, 0.5m),
        ScaleDivision.Of(WeightUnit.Kilogram, 0.005m),
        ScaleDivision.Of(WeightUnit.Ounce, 0.1m),
    ];

    private const int MostDivisions = 10_000_000;

    private static readonly Gen<int> Counts = Gen.OneOf(
        Gen.Elements(0, 1, MostDivisions), Gen.Choose(0, 100), Gen.Choose(0, MostDivisions));

    private static readonly Gen<int> Percents = Gen.OneOf(
        Gen.Elements(0, 1, 1_000_000), Gen.Choose(0, 1_000_000), Gen.Choose(0, 100).Select(percent => percent * 10_000));

    public static Arbitrary<SplitCase> Cases() => Arb.From(
        from division in Gen.Elements(Divisions)
        from lean in Counts
        from beside in Gen.Choose(-2, 2)
        from asks in Asks(division)
        select new SplitCase(Beside(division.FromCount(lean), beside), asks, division));

    private static Weight Beside(Weight weight, int milligrams) =>
        Weight.Max(Weight.Zero, weight + Weight.FromMilligrams(milligrams));

    private static Gen<IReadOnlyList<GrindAsk>> Asks(ScaleDivision division) =>
        from count in Gen.Choose(0, 6)
        from asks in Ask(division).ArrayOf(count)
        from rest in Gen.Choose(-3, count - 1)
        select (IReadOnlyList<GrindAsk>)[.. asks.Select((ask, i) => i == rest ? ask with { Kind = AskKind.Rest } : ask)];

    private static Gen<GrindAsk> Ask(ScaleDivision division) =>
        from kind in Gen.Elements(AskKind.OwnLean, AskKind.Finished, AskKind.Percent)
        from amount in Counts
        from percent in Percents
        from blend in Blend(division)
        select new GrindAsk("Product", kind, division.FromCount(amount), Proportion.FromPartsPerMillion(percent), blend);

    private static Gen<GrindBlend> Blend(ScaleDivision division) =>
        from lean in Percents
        from additions in Gen.Choose(0, 300_000)
        from loss in Gen.OneOf(Gen.Elements(0, 999_999), Gen.Choose(0, 700_000))
        from low in Gen.Choose(0, loss)
        from high in Gen.Choose(loss, 999_999)
        from smallest in Gen.OneOf(Gen.Constant(0), Counts)
        from step in Gen.OneOf(Gen.Constant(0), Gen.Constant(0), Counts)
        select new GrindBlend(
            Proportion.FromPartsPerMillion(Math.Max(lean, 1)),
            Ratio.Of(additions, 1_000_000),
            Proportion.FromPartsPerMillion(loss),
            Proportion.FromPartsPerMillion(low),
            Proportion.FromPartsPerMillion(high),
            division.FromCount(smallest),
            division.FromCount(step));
}
