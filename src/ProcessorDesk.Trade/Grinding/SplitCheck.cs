using System.Globalization;

namespace ProcessorDesk.Trade.Grinding;

/// <summary>What is wrong with a list of asks before any lean is split over it.</summary>
public static class SplitCheck
{
    /// <returns>Findings with fields "Asks[0].Amount", "Asks[1].Kind" and so on; empty where the asks can be split.</returns>
    public static IReadOnlyList<Finding> Check(IReadOnlyList<GrindAsk> asks)
    {
        var findings = new List<Finding>();
        var rest = false;
        for (var i = 0; i < asks.Count; i++)
        {
            foreach (var found in Of(asks[i]))
                findings.Add(found with { Field = FieldOf(i, found.Field) });
            if (rest && asks[i].Kind == AskKind.Rest)
                findings.Add(new Finding(FieldOf(i, nameof(GrindAsk.Kind)), "Another product takes the rest already; give this one a weight or a percent."));
            rest |= asks[i].Kind == AskKind.Rest;
        }

        return findings;
    }

    private static string FieldOf(int ask, string name) => string.Create(CultureInfo.InvariantCulture, $"Asks[{ask}].{name}");

    private static IEnumerable<Finding> Of(GrindAsk ask)
    {
        var blend = ask.Blend;
        if (ask.Amount.IsNegative)
            yield return new Finding(nameof(ask.Amount), "A weight asked for is zero or more.");
        if (ask.Percent > Proportion.Whole)
            yield return new Finding(nameof(ask.Percent), "No more than all the lean can be asked for.", ask.Percent.Print(), "100 %");
        if (blend.LeanShare.IsZero || blend.LeanShare > Proportion.Whole)
            yield return new Finding(nameof(blend.LeanShare), "The lean share is above 0 and at most 100 % of the meat block.", blend.LeanShare.Print(), "100 %");
        if (blend.Additions.Sign < 0)
            yield return new Finding(nameof(blend.Additions), "Additions are zero or more.");
        if (blend.Loss >= Proportion.Whole)
            yield return new Finding(nameof(blend.Loss), "The loss is under 100 % of the green weight.", blend.Loss.Print());
        if (blend.LossLow > blend.LossHigh || blend.LossHigh >= Proportion.Whole)
            yield return new Finding(nameof(blend.LossHigh), "The loss runs from a low to a high figure under 100 %.", blend.LossHigh.Print());
        if (blend.SmallestRun.IsNegative)
            yield return new Finding(nameof(blend.SmallestRun), "The smallest run is zero or more.");
        if (blend.Step.IsNegative)
            yield return new Finding(nameof(blend.Step), "The step is zero or more.");
    }
}
