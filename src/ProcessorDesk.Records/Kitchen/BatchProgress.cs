using ProcessorDesk.Trade.Process;

namespace ProcessorDesk.Records;

/// <summary>How far an open batch is.</summary>
/// <param name="OpenLoad">The first load not mixed yet, those with meat in them first; null where the mixing is done.</param>
/// <param name="OpenLoadIsFull">All the lean planned for that load is drawn.</param>
/// <param name="RestStartedAt">Null where it was not noted, or undone; the rest then counts from the mixing.</param>
public sealed record BatchProgress(
    bool IsHeld, int? OpenLoad, bool OpenLoadIsFull, DateTime? MixedAt, int RestMinutes, DateTime? RestStartedAt, DateTime? StuffedAt, DateTime? HeatStartedAt, DateTime? ChillStartedAt,
    ProcessNeeds Needs, bool IsWeighed)
{
    /// <summary>When the mix has rested long enough to be stuffed; null where it need not rest, or is not mixed.</summary>
    public DateTime? RestedAt => RestMinutes > 0 && MixedAt is { } mixed ? (RestStartedAt ?? mixed).AddMinutes(RestMinutes) : null;

    public bool IsHeated => Needs.HasFlag(ProcessNeeds.Lethality);

    public NextInKitchen NextAt(DateTime now) => this switch
    {
        { IsHeld: true } => NextInKitchen.Held,
        { MixedAt: null, OpenLoadIsFull: true } => NextInKitchen.Mix,
        { MixedAt: null } => NextInKitchen.Draw,
        { IsWeighed: true } => NextInKitchen.Release,
        { StuffedAt: null, RestedAt: { } rested } when now < rested => NextInKitchen.Rest,
        { IsHeated: true, StuffedAt: null, HeatStartedAt: null } => NextInKitchen.Stuff,
        { IsHeated: true, HeatStartedAt: null } => NextInKitchen.Heat,
        { IsHeated: true, ChillStartedAt: null } => NextInKitchen.Cook,
        { IsHeated: true, IsChilled: false } => NextInKitchen.Chill,
        _ => NextInKitchen.Weigh,
    };

    /// <summary>Thaw and drip lose a little: a load counts as drawn with nineteen parts in twenty of it in.</summary>
    public static bool IsFull(long leanMilligrams, long drawnMilligrams) => drawnMilligrams > 0 && drawnMilligrams / 19m >= leanMilligrams / 20m;

    /// <summary>The chilling was shown to its end, or the batch is packed; only the record's own page works that out.</summary>
    public bool IsChilled { get; init; }
}
