using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Kitchen;
using ProcessorDesk.Trade.Kitchen.Planning;

namespace ProcessorDesk.Reference.Tests.Planning;

/// <summary>A pooled batch made up from a seed: 2 to 12 owners with 2 to 45 lb each over a mixer of 25 or 40 lb, half of them with a smallest good fill.</summary>
public sealed record RandomBatch(IReadOnlyList<long> Greens, long Capacity, long Fill, ScaleDivision Division)
{
    public static RandomBatch Of(int seed)
    {
        var random = new Random(seed);
        // Bench scales of 0.1 and of 0.01 lb; a figure is so many divisions.
        var toPound = random.Next(2) == 0 ? 10 : 100;
        var capacity = (random.Next(3) == 0 ? 40 : 25) * toPound;
        var fill = random.Next(2) == 0 ? 0 : capacity * random.Next(30, 95) / 100;
        var kind = random.Next(5);
        return new RandomBatch([.. Enumerable.Range(0, random.Next(2, 13)).Select(_ => Green(random, kind, toPound))], capacity, fill, ScaleDivision.Of(WeightUnit.Pound, 1m / toPound));
    }

    public long LeastLoads => (Greens.Sum() + Capacity - 1) / Capacity;

    public LoadDivision Divide(long steps = PooledLoads.UsualSteps) => PooledLoads.Divide(
        [.. Greens.Select(green => new BatchPart(Weight.Zero, Weight.Zero, Division.FromCount(green)))], Division.FromCount(Capacity), Division.FromCount(Fill), Division, steps);

    /// <summary>
    /// Each contribution whole into the first load with room for it, what is over a load into full loads first: loads, cuts and
    /// the spread, as a shop hand would do it.
    /// </summary>
    public (long Loads, long Cuts, long Spread) FirstFit()
    {
        var (loads, cuts) = (new List<long>(), 0L);
        foreach (var green in Greens)
        {
            var left = green;
            for (; left > Capacity; left -= Capacity, cuts++)
                loads.Add(Capacity);
            var fits = loads.FindIndex(load => load + left <= Capacity);
            if (fits >= 0)
                loads[fits] += left;
            else
                loads.Add(left);
        }

        return (loads.Count, cuts, loads.Max() - loads.Min());
    }

    public override string ToString() => $"{string.Join(' ', Greens)} over {Capacity}, fill {Fill}, of {Division}";

    private static long Green(Random random, int kind, int toPound) => kind switch
    {
        0 => random.Next(2 * toPound, 45 * toPound), // as it was weighed
        1 => 5 * toPound * random.Next(1, 7),        // as it is asked for: 5, 10, … 30 lb
        2 or 3 => random.Next(10 * toPound, 22 * toPound), // too much for two in a small mixer
        _ => random.Next(2 * toPound, 13 * toPound),
    };
}
