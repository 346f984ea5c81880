using System.Numerics;

namespace ProcessorDesk.Trade.Kitchen.Planning;

/// <summary>The cheapest order to go through all points once, from any to any, by the method of Held and Karp.</summary>
internal static class ShortestChain
{
    /// <param name="between">The cost from a row to a column.</param>
    /// <returns>Of the cheapest orders the first, as words are put in order.</returns>
    public static IReadOnlyList<int> Of(int[][] between)
    {
        var sets = 1 << between.Length;
        // What it costs to go through the set from a point outside it.
        var costs = new int[sets, between.Length];
        for (var set = 1; set < sets; set++)
        {
            for (var outside = sets - 1 - set; outside != 0; outside &= outside - 1)
            {
                var (from, least) = (BitOperations.TrailingZeroCount(outside), int.MaxValue);
                for (var inside = set; inside != 0; inside &= inside - 1)
                {
                    var next = BitOperations.TrailingZeroCount(inside);
                    least = Math.Min(least, between[from][next] + costs[set ^ (1 << next), next]);
                }

                costs[set, from] = least;
            }
        }

        var order = new List<int>();
        for (var left = sets - 1; left != 0; left ^= 1 << order[^1])
            order.Add(In(left, between.Length).MinBy(next => (order.Count == 0 ? 0 : between[order[^1]][next]) + costs[left ^ (1 << next), next]));
        return order;
    }

    private static IEnumerable<int> In(int set, int count) => Enumerable.Range(0, count).Where(point => (set >> point & 1) == 1);
}
