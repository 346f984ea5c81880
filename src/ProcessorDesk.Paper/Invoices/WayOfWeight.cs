using ProcessorDesk.Trade;

namespace ProcessorDesk.Paper;

/// <summary>What a step is on the way of the weight.</summary>
public enum WayKind
{
    /// <summary>What stands on the scale here.</summary>
    Stage,

    /// <summary>What went off since the step before.</summary>
    Loss,

    /// <summary>What came in: added pork, spices and water.</summary>
    Added,
}

/// <summary>One step on the way of the weight, from arrival to box.</summary>
/// <param name="Kind">Stage, loss or addition.</param>
/// <param name="Name">"Hanging", "Hide, head and feet", "Added pork".</param>
/// <param name="Weight">Zero or more, losses too.</param>
/// <param name="Printed">The figure as printed.</param>
public sealed record WayStep(WayKind Kind, string Name, Weight Weight, string Printed);

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
