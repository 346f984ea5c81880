using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Yields;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Cooler;

/// <summary>A weight of a whole animal, struck or standing, as the page shows it.</summary>
public sealed record CarcassWeight(int Id, WeighInKind Kind, Weight Net, string Weight, string When, string By, string? Struck)
{
    public bool Stands => Struck is null;
}

/// <summary>What the standing weights of an animal say together.</summary>
public static class CarcassWeights
{
    public static Weight? Last(this IEnumerable<CarcassWeight> weights, WeighInKind kind) =>
        weights.LastOrDefault(weight => weight.Kind == kind && weight.Stands)?.Net;

    /// <summary>Why a figure looks wrong beside what was weighed before; null where it does not.</summary>
    public static string? Doubt(this IReadOnlyList<CarcassWeight> weights, WeighInKind kind, Weight typed, ShopDay shop)
    {
        if (kind == WeighInKind.Arrival)
            return null;
        if (weights.Last(WeighInKind.Arrival) is { } arrival && typed > arrival)
            return $"{shop.PrintRail(typed)} is more than the {shop.PrintRail(arrival)} it came in with. Type it again, or say that it is right.";
        return kind == WeighInKind.ChilledHanging && weights.Last(WeighInKind.HotHanging) is { } hot && typed > hot
            ? $"{shop.PrintRail(typed)} chilled is more than the {shop.PrintRail(hot)} it weighed hot. Type it again, or say that it is right."
            : null;
    }

    /// <summary>"1.5 lb, 1.6 %", with what is published; null until both weights stand.</summary>
    public static string? Shrink(this IReadOnlyList<CarcassWeight> weights, Species species, ShopDay shop)
    {
        if (weights.Last(WeighInKind.HotHanging) is not { IsPositive: true } hot || weights.Last(WeighInKind.ChilledHanging) is not { } chilled)
            return null;
        var statement = ChillStatement.Of(species, hot, chilled);
        return $"{shop.PrintRail(statement.Lost)}, {statement.Part.PrintPercent()} of the hot weight. {statement.Standing}";
    }
}
