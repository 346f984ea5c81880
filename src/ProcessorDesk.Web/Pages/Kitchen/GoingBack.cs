using ProcessorDesk.Records;
using ProcessorDesk.Trade;

namespace ProcessorDesk.Web.Pages.Kitchen;

/// <summary>What one job gets back of a batch.</summary>
/// <param name="Green">The green weight its meat made, as drawn; what the finished weight is divided by.</param>
/// <param name="Finished">Null where nothing is weighed yet.</param>
/// <param name="Pieces">Whole pieces; null where they were not counted.</param>
public sealed record GoingBack(Job Job, Weight Green, Weight? Finished, int? Pieces)
{
    internal static IReadOnlyList<GoingBack> Of(BatchView view, ScaleDivision division)
    {
        var shares = view.Lines.Shares is { Count: > 0 } released ? released : view.Batch.SharesOf(view.Lines, division);
        var mixed = view.Loads.Where(load => load.MixedAt is not null).ToList();
        return
        [
            .. view.Entries.GroupBy(entry => entry.JobId).Select(entries => new GoingBack(
                entries.First().Job,
                division.Sum(entries.SelectMany(entry => mixed.Select(load => view.Batch.GreenOf(load, entry.Id, division)))),
                shares.Count == 0 ? null : division.Sum(shares.Where(share => entries.Any(entry => entry.Id == share.EntryId)).Select(share => share.Weight)),
                shares.Count == 0 || shares.Any(share => share.Pieces is null) ? null : shares.Where(share => entries.Any(entry => entry.Id == share.EntryId)).Sum(share => share.Pieces)))
        ];
    }
}
