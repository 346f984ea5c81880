namespace ProcessorDesk.Trade.Kitchen.Planning;

/// <summary>In what order cleaning profiles follow each other with the least cleaning.</summary>
/// <remarks>
/// Only profiles are put in order: moving a batch next to its own kind costs nothing there and, as a batch in between never saves
/// cleaning, nothing where it is taken from. The first batch finds a clean kitchen. That uncured and pork-free come early, and
/// the fewest allergens first, is no rule of its own: it is what costs least.
/// </remarks>
/// <param name="Order">Places of the profiles handed in, each once.</param>
/// <param name="Minutes">Of cleaning between them.</param>
/// <param name="AtLeast">No order takes less.</param>
public sealed record CleaningOrder(IReadOnlyList<int> Order, int Minutes, int AtLeast)
{
    /// <summary>So many are ordered exactly.</summary>
    public const int MostExact = 15;

    public bool IsProved => Minutes == AtLeast;

    /// <summary>
    /// The order of least cleaning; exact for up to <see cref="MostExact"/> profiles, beyond that a good one with a bound. Of several that
    /// take as long, exactly the one that keeps to the order handed in, from its front on.
    /// </summary>
    /// <param name="profiles">Any number, in the order that decides where cleaning does not: earliest promise, then number.</param>
    public static CleaningOrder Of(IReadOnlyList<CleaningProfile> profiles, CleaningMinutes minutes)
    {
        var between = profiles.Select(before => profiles.Select(after => minutes.Between(before, after).Sum(cleaning => cleaning.Minutes)).ToArray()).ToArray();
        var isExact = profiles.Count <= MostExact;
        var order = isExact ? ShortestChain.Of(between) : NearChain.Of(between);
        var sum = order.Zip(order.Skip(1), (before, after) => between[before][after]).Sum();
        return new CleaningOrder(order, sum, isExact ? sum : Math.Max(NearChain.AtLeast(between), minutes.Species * (profiles.Select(profile => profile.Species).Distinct().Count() - 1)));
    }
}
