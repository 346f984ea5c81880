namespace ProcessorDesk.Trade.Kitchen.Planning;

/// <summary>A cheap order to go through many points once, and what none can cost less than.</summary>
internal static class NearChain
{
    private const int Improved = 4;

    /// <summary>From each point always to the cheapest next; of the best of these, stretches are moved elsewhere as long as that makes it cheaper.</summary>
    /// <param name="between">The cost from a row to a column.</param>
    public static IReadOnlyList<int> Of(int[][] between) =>
        Enumerable.Range(0, between.Length)
            .Select(first => From(first, between))
            .OrderBy(chain => Cost(chain, between))
            .Take(Improved)
            .Select(chain => AsCheapAsMoved(chain, between))
            .MinBy(chain => Cost(chain, between)) ?? [];

    /// <summary>Every point but the last is left at its cheapest way out at least, and every one but the first come to at its cheapest way in.</summary>
    public static int AtLeast(int[][] between)
    {
        var all = Enumerable.Range(0, between.Length).ToList();
        var ways = all.ConvertAll(point => all.Where(other => other != point).Select(other => (Out: between[point][other], In: between[other][point])).ToList());
        return Math.Max(AllButOne(ways.ConvertAll(way => way.Min(one => one.Out))), AllButOne(ways.ConvertAll(way => way.Min(one => one.In))));
    }

    private static int AllButOne(List<int> costs) => costs.Sum() - costs.Max();

    private static List<int> From(int first, int[][] between)
    {
        List<int> chain = [first];
        while (chain.Count < between.Length)
            chain.Add(Enumerable.Range(0, between.Length).Except(chain).MinBy(next => between[chain[^1]][next]));
        return chain;
    }

    private static List<int> AsCheapAsMoved(List<int> chain, int[][] between)
    {
        while (Moved(chain).FirstOrDefault(other => Cost(other, between) < Cost(chain, between)) is { } better)
            chain = better;
        return chain;
    }

    private static IEnumerable<List<int>> Moved(List<int> order) =>
        from start in Enumerable.Range(0, order.Count)
        from length in Enumerable.Range(1, order.Count - start)
        let stretch = order.GetRange(start, length)
        let others = order.Except(stretch).ToList()
        from to in Enumerable.Range(0, others.Count + 1)
        where to != start
        select (List<int>)[.. others.Take(to), .. stretch, .. others.Skip(to)];

    private static int Cost(List<int> chain, int[][] between) => chain.Zip(chain.Skip(1), (from, to) => between[from][to]).Sum();
}
