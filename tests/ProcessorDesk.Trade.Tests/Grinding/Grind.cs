using ProcessorDesk.Trade.Grinding;
using Xunit;

namespace ProcessorDesk.Trade.Tests.Grinding;

/// <summary>The small cast of the split's tests.</summary>
internal static class Grind
{
    public static readonly ScaleDivision Hundredth = ScaleDivision.HundredthPound;

    public static readonly GrindAsk PlainGround = GrindAsk.OfRest("Plain ground", GrindBlend.Plain);

    public static Weight Lb(decimal pounds) => Weight.FromPounds(pounds);

    public static GrindBlend Blend(
        decimal lean = 100m, decimal additions = 0m, decimal loss = 0m, decimal smallest = 0m, decimal step = 0m) =>
        new(
            Proportion.FromPercent(lean),
            Ratio.FromDecimal(additions / 100m),
            Proportion.FromPercent(loss),
            Proportion.FromPercent(loss),
            Proportion.FromPercent(loss),
            Lb(smallest),
            Lb(step));

    public static GrindSplit Split(decimal lean, params GrindAsk[] asks) =>
        Splitting.Split(Lb(lean), asks, PlainGround, Hundredth);

    public static decimal[] Leans(this GrindSplit split) =>
        [.. split.Allotments.Select(allotment => Hundredth.Figure(allotment.Lean))];

    public static void AddsUp(GrindSplit split, ScaleDivision division)
    {
        Assert.Equal(split.Lean.Milligrams, split.Allotments.Sum(allotment => allotment.Lean.Milligrams));
        Assert.Equal(division.Figure(split.Lean), split.Allotments.Sum(allotment => division.Figure(allotment.Lean)));
    }
}
