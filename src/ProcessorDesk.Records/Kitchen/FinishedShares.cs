using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Kitchen;

namespace ProcessorDesk.Records;

/// <summary>How a batch's finished weight goes back to its owners.</summary>
public static class FinishedShares
{
    /// <summary>
    /// By green weight as drawn, and where pieces were counted, whole pieces by the same: of each load weighed alone among those with meat in it, or of all loads among all. The shares sum to what
    /// was weighed. Empty for a weight that holds none of the owners' meat. The batch must have been loaded with its loads.
    /// </summary>
    public static IReadOnlyList<FinishedShare> SharesOf(this Batch batch, BatchLines lines, ScaleDivision division) =>
    [
        .. lines.Finished.GroupBy(one => one.LoadId).OrderBy(part => part.Key).SelectMany(part =>
        {
            var greens = batch.Placed()
                .Select(entry => (entry.Id, Green: division.CountOf(division.Sum(batch.Loads
                    .Where(load => load.MixedAt is not null && (part.Key is null || load.Id == part.Key)).Select(load => batch.GreenOf(load, entry.Id, division))))))
                .Where(entry => entry.Green > 0)
                .ToList();
            if (greens.Count == 0)
                return [];
            List<long> shares = greens.ConvertAll(one => one.Green);
            var weights = division.Split(division.Sum(part.Select(one => one.Net)), shares);
            var pieces = part.All(one => one.Pieces is not null) ? LargestRemainder.Split(part.Sum(one => (long)one.Pieces!.Value), shares) : null;
            return greens.Select((one, i) => new FinishedShare(one.Id, part.Key, weights[i], (int?)pieces?[i]));
        }),
    ];

    /// <summary>The green weight that an entry's meat makes in a load, as it was drawn. Meat drawn beside the plan counts as the entry's other meat does.</summary>
    public static Weight GreenOf(this Batch batch, Load load, int entryId, ScaleDivision division)
    {
        var parts = batch.Loads.SelectMany(one => one.Parts).Where(part => part.EntryId == entryId).ToList();
        var own = parts.Where(part => part.LoadId == load.Id).ToList();
        if (own.Count == 0)
            own = load.DrawnOf(entryId).IsZero ? own : parts;
        return GreenAsDrawn.Of(division.Sum(own.Select(part => part.Lean)), division.Sum(own.Select(part => part.Green)), load.DrawnOf(entryId), division);
    }
}
