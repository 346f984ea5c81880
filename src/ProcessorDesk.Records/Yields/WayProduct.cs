using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>A product of the agreed split as the way of the weight tells it.</summary>
/// <param name="Expected">Finished weight, foretold.</param>
/// <param name="Finished">What came back; null before the release.</param>
/// <param name="IsThrownOut">Its batch was, after meat was in.</param>
public sealed record WayProduct(Weight AddedFat, Weight MeatBlock, Weight Green, Weight Expected, Weight? Finished, bool IsThrownOut);

/// <summary>Reads the products of a job for the way of its weight.</summary>
public static class WayProductQueries
{
    /// <summary>In the order asked; one query.</summary>
    public static IReadOnlyList<WayProduct> ProductsOnTheWay(this RecordsContext records, int jobId) =>
    [
        .. (from one in records.GrindAllotments.AsNoTracking()
            join split in records.AgreedSplits on one.AgreedSplitId equals split.Id
            where split.JobId == jobId && split.WithdrawnAt == null
            join entry in records.BatchEntries.Where(entry => entry.LeftAt == null) on one.Id equals entry.AllotmentId into entries
            from entry in entries.DefaultIfEmpty()
            orderby one.Position
            select new
            {
                one.AddedFat,
                one.MeatBlock,
                one.Green,
                one.Finished,
                entry.Batch.ReleasedAt,
                entry.Batch.EndedAt,
                Came = records.FinishedShares.Where(share => share.EntryId == entry.Id).Sum(share => share.Weight.Milligrams),
            })
            .AsEnumerable()
            .Select(one => new WayProduct(
                one.AddedFat, one.MeatBlock, one.Green, one.Finished, one.ReleasedAt is null ? null : Weight.FromMilligrams(one.Came), one.EndedAt is not null))
    ];
}
