namespace ProcessorDesk.Trade.Blending;

/// <summary>
/// The lean and fat square: how much of two materials makes a block of the fat wanted. Where the fat contents are l and a
/// and the target t, the added part of the block is (t − l) / (a − l), exactly.
/// </summary>
/// <param name="LeanFat">Fat in the lean material, 0 to 100 %.</param>
/// <param name="AddedFat">Fat in the material added, 0 to 100 %; it may also be the leaner of the two.</param>
/// <param name="Target">Fat wanted in the block.</param>
public sealed record LeanFatSquare(Proportion LeanFat, Proportion AddedFat, Proportion Target)
{
    /// <summary>The square by lean points: 90 and 50 lean to 80 lean.</summary>
    public static LeanFatSquare OfLeanPoints(Proportion lean, Proportion added, Proportion target) =>
        new(FatOf(lean), FatOf(added), FatOf(target));

    /// <summary>Why no mix of the two reaches the target; empty where one does.</summary>
    public IReadOnlyList<Finding> Findings()
    {
        var findings = new List<Finding>();
        if (LeanFat > Proportion.Whole)
            findings.Add(OverWhole(nameof(LeanFat), LeanFat));
        if (AddedFat > Proportion.Whole)
            findings.Add(OverWhole(nameof(AddedFat), AddedFat));
        if (findings.Count == 0 && Unreachable() is { } why)
            findings.Add(new Finding(nameof(Target), why, Target.Print(), $"{Leanest.Print()} to {Fattest.Print()}"));
        return findings;
    }

    /// <summary>The added material as a part of the block, exactly.</summary>
    /// <exception cref="InvalidOperationException">No mix reaches the target: <see cref="Findings"/> says why.</exception>
    public Ratio AddedShare
    {
        get
        {
            if (Findings() is [var finding, ..])
                throw new InvalidOperationException(finding.Text);
            return LeanFat == AddedFat ? Ratio.Zero : (Of(Target) - Of(LeanFat)) / (Of(AddedFat) - Of(LeanFat));
        }
    }

    /// <summary>The lean material as a part of the block, exactly.</summary>
    /// <inheritdoc cref="AddedShare" path="/exception"/>
    public Ratio LeanShare => Ratio.One - AddedShare;

    /// <summary>The lean share to the nearest part per million, as a product of the grind holds it.</summary>
    /// <inheritdoc cref="AddedShare" path="/exception"/>
    public Proportion LeanShareToPpm => Proportion.FromPartsPerMillion((int)(LeanShare * Ratio.Of(1_000_000, 1)).Nearest());

    /// <summary>The parts of a block: the added one on the division, the lean what is left, so that they sum.</summary>
    /// <inheritdoc cref="AddedShare" path="/exception"/>
    public BlendParts PartsOf(Weight block, ScaleDivision division)
    {
        var added = Weight.Min(Portion.Nearest(block, AddedShare, division), block);
        return new BlendParts(block - added, added);
    }

    /// <summary>Fat in a mix of the two as weighed, as a part of it, exactly.</summary>
    /// <exception cref="DivideByZeroException">Nothing was weighed.</exception>
    public Ratio FatIn(Weight lean, Weight added) => WeighedMeat.FatIn([new(lean, LeanFat), new(added, AddedFat)]);

    /// <summary>What a pound of the block costs in dollars, unrounded.</summary>
    /// <inheritdoc cref="AddedShare" path="/exception"/>
    public Ratio DollarsPerPound(PricePerPound lean, PricePerPound added) =>
        (LeanShare * Ratio.Of(lean.CentsPerPound, 1) + AddedShare * Ratio.Of(added.CentsPerPound, 1)) / Ratio.Of(100, 1);

    private Proportion Leanest => LeanFat < AddedFat ? LeanFat : AddedFat;

    private Proportion Fattest => LeanFat < AddedFat ? AddedFat : LeanFat;

    private string? Unreachable()
    {
        if (Target < Leanest)
            return $"No mix comes down to {Target.Print()} fat: the leaner of the two has {Leanest.Print()} already. Trim it closer or add a leaner meat.";
        if (Target > Fattest)
            return $"No mix comes up to {Target.Print()} fat: the fatter of the two has only {Fattest.Print()}. Add a fatter trim.";
        return null;
    }

    private static Finding OverWhole(string field, Proportion fat) =>
        new(field, "Fat is at most 100 % of a meat.", fat.Print(), "100 %");

    private static Proportion FatOf(Proportion lean) =>
        Proportion.FromPartsPerMillion(Proportion.Whole.PartsPerMillion - lean.PartsPerMillion);

    private static Ratio Of(Proportion fat) => fat.ToRatio();
}
