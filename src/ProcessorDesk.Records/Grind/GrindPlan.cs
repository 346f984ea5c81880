using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Grinding;

namespace ProcessorDesk.Records;

/// <summary>A job's asks held against an amount of lean: what each would get, at today's formulas.</summary>
public sealed class GrindPlan
{
    private GrindPlan(GrindSplit split, IReadOnlyList<PlannedAsk> asks)
    {
        Split = split;
        Lines = [.. split.Allotments.Zip(asks, (given, ask) => new PlannedLine(ask, given))];
    }

    public GrindSplit Split { get; }

    /// <summary>In the order asked; plain ground last where it takes what is left.</summary>
    public IReadOnlyList<PlannedLine> Lines { get; }

    /// <summary>The plan for asks at their products' newest formulas.</summary>
    /// <param name="asks">In order; empty makes all of it plain ground.</param>
    public static GrindPlan Of(Weight lean, IReadOnlyList<PlannedAsk> asks, PlannedAsk plainGround, ScaleDivision division)
    {
        var split = Splitting.Split(lean, [.. asks.Select(ask => ask.ToTrade())], plainGround.ToTrade(), division);
        return new GrindPlan(split, [.. asks, plainGround]);
    }

    public sealed record PlannedLine(PlannedAsk Ask, Allotment Given);
}
