namespace ProcessorDesk.Trade.Grinding;

/// <summary>
/// What the split gives one ask. Every weight is on the scale's division; each is worked from the printed figure of the one
/// before it, so that a pocket calculator follows: fat from lean, block = lean + fat, green from block, finished from green.
/// </summary>
/// <param name="Lean">The owner's own lean that goes in.</param>
/// <param name="AddedFat">Fat or fat trim to add to it.</param>
/// <param name="MeatBlock">Lean and added fat: what cure, salt and spice are weighed against.</param>
/// <param name="Green">The raw mix, additions in.</param>
/// <param name="Finished">After the usual loss.</param>
/// <param name="FinishedLow">After the most that is usually lost.</param>
/// <param name="FinishedHigh">After the least that is usually lost.</param>
/// <param name="Reasons">Why it is not what was asked, in sentences; empty where it is.</param>
public sealed record Allotment(
    GrindAsk Ask,
    Weight Lean,
    Weight AddedFat,
    Weight MeatBlock,
    Weight Green,
    Weight Finished,
    Weight FinishedLow,
    Weight FinishedHigh,
    IReadOnlyList<string> Reasons)
{
    /// <summary>Works the other weights out from the lean, which prints as <paramref name="leanCount"/> divisions.</summary>
    internal static Allotment From(
        GrindAsk ask, Weight lean, long leanCount, IReadOnlyList<string> reasons, ScaleDivision division)
    {
        var blend = ask.Blend;
        var leanShare = blend.LeanShare.ToRatio();
        var fat = ((Ratio.One - leanShare) / leanShare).NearestOf(leanCount);
        var green = (Ratio.One + blend.Additions).NearestOf(leanCount + fat);
        return new Allotment(
            ask,
            lean,
            division.FromCount(fat),
            division.FromCount(leanCount + fat),
            division.FromCount(green),
            After(blend.Loss),
            After(blend.LossHigh),
            After(blend.LossLow),
            reasons);

        Weight After(Proportion loss) => division.FromCount((Ratio.One - loss.ToRatio()).NearestOf(green));
    }
}
