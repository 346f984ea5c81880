using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Yields;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Cooler;

/// <summary>Where one animal stands in the order of what to do next, and why, in words.</summary>
/// <param name="IsHeld">What is wrong comes first: somebody has to see to it.</param>
/// <param name="IsWarm">Came in too warm and has not been weighed cold since.</param>
/// <param name="DaysLeft">Days until the guidance or the promise runs out, whichever is sooner; null where neither says anything.</param>
/// <param name="Since">When it came; the longest here goes first among equals.</param>
/// <param name="Reasons">Sentences, the weightiest first.</param>
public sealed record NextToCut(bool IsHeld, bool IsWarm, int? DaysLeft, DateTime Since, IReadOnlyList<string> Reasons)
{
    public static NextToCut Of(
        bool isHeld, Species species, ArrivalState state, Temperature? surface, bool weighedCold,
        DateTime arrivedAt, DateTime? hungAt, DateOnly? promised, ShopDay shop)
    {
        var guidance = HangingGuidance.For(species);
        var isBoned = state is ArrivalState.FreshBoned or ArrivalState.FrozenBoned;
        var warm = !weighedCold && surface is { } reading && guidance.Judge(reading) is not null;
        var since = shop.DayOf(hungAt ?? arrivedAt);
        var hanging = guidance.Say(since, shop.Today);
        var promisedIn = promised is { } day ? day.DayNumber - shop.Today.DayNumber : (int?)null;
        List<string> reasons = [];
        if (warm)
            reasons.Add($"Came in at {surface!.Value.Print()}, above {guidance.WarnAbove.Print()}: see that it is cold.");
        reasons.Add(isBoned ? $"{Wording.Of(state)}, here since {shop.Date(arrivedAt)}."
            : hungAt is null ? $"Not hung yet, here since {shop.Date(arrivedAt)}."
            : hanging.Text);
        if (promised is { } promise)
            reasons.Add($"Promised {shop.Date(promise)}{Late(promisedIn!.Value)}.");
        int?[] ends = [isBoned ? null : hanging.DaysLeft, promisedIn];
        return new NextToCut(isHeld, warm, ends.Min(), arrivedAt, reasons);
    }

    /// <summary>Held first, then warm, then by the days left, then by how long it has been here.</summary>
    public static IEnumerable<T> Sort<T>(IEnumerable<T> animals, Func<T, NextToCut> of) =>
        animals.OrderByDescending(one => of(one).IsHeld)
            .ThenByDescending(one => of(one).IsWarm)
            .ThenBy(one => of(one).DaysLeft ?? int.MaxValue)
            .ThenBy(one => of(one).Since);

    private static string Late(int days) => days switch
    {
        < -1 => $", {-days} days late",
        -1 => ", one day late",
        0 => ", today",
        1 => ", tomorrow",
        _ => "",
    };
}
