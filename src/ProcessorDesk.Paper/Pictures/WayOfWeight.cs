using ProcessorDesk.Trade.Yields;

namespace ProcessorDesk.Paper;

/// <summary>A bar of the picture: where it begins and ends, as parts (0 to 1) of the widest point of the way.</summary>
public sealed record WayBar(WayStep Step, double From, double To);

/// <summary>The picture of where the weight went: bars that narrow with each loss and widen with what was added.</summary>
public static class WayOfWeight
{
    /// <summary>The bars in order, for paper and screen alike. A stage begins at zero; a loss or addition hangs at the end of what was there.</summary>
    public static IReadOnlyList<WayBar> Bars(IReadOnlyList<WayStep> steps)
    {
        var bars = new List<(WayStep Step, long From, long To)>();
        var at = 0L;
        foreach (var step in steps)
        {
            var (from, to) = step.Kind switch
            {
                WayKind.Stage => (0L, step.Weight.Milligrams),
                WayKind.Loss => (Math.Max(0, at - step.Weight.Milligrams), at),
                WayKind.Added => (at, at + step.Weight.Milligrams),
            };
            bars.Add((step, from, to));
            at = step.Kind == WayKind.Loss ? from : to;
        }

        double widest = Math.Max(1, bars.Select(bar => bar.To).DefaultIfEmpty().Max());
        return [.. bars.Select(bar => new WayBar(bar.Step, bar.From / widest, bar.To / widest))];
    }
}
