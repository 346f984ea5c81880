namespace ProcessorDesk.Trade.Kitchen.Planning;

/// <summary>A number of cuts that no arrangement in the fewest loads stays under, found without searching.</summary>
internal static class FewestCuts
{
    /// <summary>
    /// A contribution of more than a load is cut until its pieces fit. Of the others, each that is cut could be taken out and given a
    /// load of its own; what is then packed uncut takes as many loads as uncut packing needs, and that many less the loads there are
    /// must have been cut.
    /// </summary>
    public static long AtLeast(LoadQuestion question)
    {
        var large = question.Weights.Sum(weight => question.LoadsOf(weight) - 1);
        var small = question.Weights.Where(weight => weight <= question.Capacity).OrderDescending().ToArray();
        return large + Math.Max(0, Uncut(small, question.Capacity) - question.Loads);
    }

    /// <summary>
    /// Loads that uncut packing needs at least. For each threshold: what is over half a load lies alone among its like; what
    /// is lighter, but not lighter than the threshold, fills the room that these leave, and room under the threshold is of no use to it.
    /// </summary>
    private static long Uncut(long[] weights, long capacity)
    {
        var most = 0L;
        foreach (var threshold in weights.Where(weight => 2 * weight <= capacity).Append(0))
        {
            var (alone, room, rest) = (0L, 0L, 0L);
            foreach (var weight in weights.Where(weight => weight >= threshold))
            {
                if (2 * weight <= capacity)
                    rest += weight;
                else
                    (alone, room) = (alone + 1, room + (weight > capacity - threshold ? 0 : capacity - weight));
            }

            most = Math.Max(most, alone + Math.Max(0, (rest - room + capacity - 1) / capacity));
        }

        return most;
    }
}
