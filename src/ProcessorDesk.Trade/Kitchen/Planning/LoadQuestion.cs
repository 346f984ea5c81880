namespace ProcessorDesk.Trade.Kitchen.Planning;

/// <summary>
/// Contributions to divide over the fewest loads, all figures in divisions. Contributions that share loads, directly or through
/// others, form a group. A group of k loads that weighs s needs k − 1 cuts at least, as its loads and contributions hang together by
/// their pieces; lined up and cut where a load is full, it needs no more. It is possible exactly when k·fill ≤ s ≤ k·capacity. So the
/// fewest cuts are the loads less the most groups.
/// </summary>
/// <remarks>
/// With the fewest loads L = ⌈W / C⌉ the room left over, L·C − W, is less than one load; and the room that the groups leave adds up to it.
/// So each group has the fewest loads for its own weight, and how much room a set of whole groups leaves is known from its weight alone.
/// That also makes every set of whole groups a smaller question of the same kind.
/// </remarks>
/// <param name="Weights">One or more, each one or more.</param>
/// <param name="Capacity">One or more.</param>
/// <param name="Fill">The least a load holds: 1 to capacity.</param>
internal sealed record LoadQuestion(IReadOnlyList<long> Weights, long Capacity, long Fill)
{
    public long Total { get; } = Weights.Sum();

    public long Loads => LoadsOf(Total);

    /// <summary>Room left over in all the loads together; less than a load.</summary>
    public long Room => RoomIn(Total);

    /// <summary>
    /// The smallest fill gives way where the total is too small for it: then no load is more than a division under the average, which
    /// is as full as the emptiest can be.
    /// </summary>
    public static LoadQuestion Of(IReadOnlyList<long> weights, long capacity, long smallestFill)
    {
        var total = weights.Sum();
        return new LoadQuestion(weights, capacity, Math.Clamp(smallestFill, 1, total / ((total + capacity - 1) / capacity)));
    }

    public LoadQuestion Part(IEnumerable<int> members) => new([.. members.Select(member => Weights[member])], Capacity, Fill);

    public long LoadsOf(long sum) => (sum + Capacity - 1) / Capacity;

    public long RoomIn(long sum) => LoadsOf(sum) * Capacity - sum;

    public bool IsFilled(long sum) => sum >= Fill * LoadsOf(sum);
}
