namespace ProcessorDesk.Trade.Kitchen.Planning;

/// <summary>What an arrangement by hand costs against the plan of the same allotments.</summary>
internal static class HandCosts
{
    /// <param name="loads">With nothing in them that is refused.</param>
    public static IReadOnlyList<Finding> Of(IReadOnlyList<HandLoad> loads, Dictionary<int, WaitingMeat> meat, DaySettings settings)
    {
        List<WaitingMeat> taken = [.. loads.SelectMany(load => load.Pieces).Select(piece => meat[piece.Allotment]).DistinctBy(one => one.Id)];
        var plan = DayPlanning.Plan(taken, settings with { Day = null, Smokehouse = null });
        var products = from load in loads.Select(load => new Filled(load, meat, settings.Division))
                       group load by load.Kind into hand
                       join batch in HandLoad.Of(plan).Select(load => new Filled(load, meat, settings.Division)) on hand.Key equals batch.Kind into planned
                       select OfProduct([.. hand], [.. planned], settings);
        return
        [
            .. products.SelectMany(costs => costs),
            .. Over("The day", taken, settings.Day, settings.Division),
            .. Over("The smokehouse", taken.Where(one => one.Product.IsSmoked), settings.Smokehouse, settings.Division),
        ];
    }

    private static IEnumerable<Finding> OfProduct(List<Filled> hand, List<Filled> planned, DaySettings settings)
    {
        var (name, division) = (hand[0].First.Product.Name, settings.Division);
        if (hand.Count > planned.Count)
            yield return Worse($"{name}: {Counted(hand.Count, "load")}; the plan has {planned.Count}.", hand.Count, planned.Count);
        var (cuts, fewest) = (Filled.Cuts(hand), Filled.Cuts(planned));
        if (cuts > fewest)
            yield return Worse($"{name}: {Counted(cuts, "cut")} between loads; the plan has {fewest}.", cuts, fewest);
        var fill = Math.Min(division.CountOf(settings.SmallestFill), division.CountDown(settings.MixerCapacity));
        var (under, fewestUnder) = (hand.Count(load => load.Count < fill), planned.Count(load => load.Count < fill));
        if (under > fewestUnder)
            yield return Worse($"{name}: {Counted(under, "load")} under the smallest good fill of {division.Print(division.FromCount(fill))}; the plan has {fewestUnder}.", under, fewestUnder);
        var (spread, least) = (Filled.Spread(hand), Filled.Spread(planned));
        if (spread > least)
        {
            yield return new Finding(
                "", $"{name}: {division.Print(division.FromCount(spread))} between the fullest and the emptiest load; in the plan {division.Print(division.FromCount(least))}.",
                division.Print(division.FromCount(spread)), division.Print(division.FromCount(least)));
        }
    }

    private static IEnumerable<Finding> Over(string what, IEnumerable<WaitingMeat> taken, Weight? capacity, ScaleDivision division)
    {
        var sum = division.Sum(taken.Select(one => one.Part.Green));
        if (capacity is { } most && division.CountOf(sum) > division.CountDown(most))
            yield return new Finding("", $"{what} takes {division.Print(most)}; this is {division.Print(sum)}. Leave something for another day.", division.Print(sum), division.Print(most));
    }

    private static Finding Worse(string text, long hand, long plan) => new("", text, $"{hand}", $"{plan}");

    private static string Counted(long count, string what) => count == 1 ? $"1 {what}" : $"{count} {what}s";

    /// <summary>A load, counted.</summary>
    private sealed class Filled(HandLoad load, Dictionary<int, WaitingMeat> meat, ScaleDivision division)
    {
        private readonly List<WaitingMeat> _meat = [.. load.Pieces.Select(piece => meat[piece.Allotment]).DistinctBy(one => one.Id)];

        public long Count { get; } = load.Pieces.Sum(piece => division.CountOf(piece.Green));

        public WaitingMeat First => _meat[0];

        public (int Product, Species Species, bool HoldsPork) Kind => (First.Product.Key, First.Species, First.HoldsPork);

        /// <summary>Its owner where an own ask is in it; null for a pooled load.</summary>
        private int? OwnOf => _meat.Find(one => !one.IsPooled)?.Owner;

        /// <summary>Of contributions to pooling; cuts between the own asks of one owner are free.</summary>
        public static int Cuts(List<Filled> loads)
        {
            List<WaitingMeat> pieces = [.. loads.SelectMany(load => load._meat).Where(one => one.IsPooled)];
            return pieces.Count - pieces.DistinctBy(one => one.Id).Count();
        }

        /// <summary>The widest among the loads of one batch.</summary>
        public static long Spread(List<Filled> loads) =>
            loads.GroupBy(load => load.OwnOf).Max(batch => batch.Max(load => load.Count) - batch.Min(load => load.Count));
    }
}
