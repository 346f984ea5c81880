using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>A product of a job's agreed split and how far it is.</summary>
/// <param name="BatchId">The batch it stands in; null where none is planned.</param>
/// <param name="Finished">What came back; null before the release.</param>
/// <param name="DiscardedBecause">Why its batch was thrown out; null where it was not.</param>
public sealed record MadeProduct(
    int AllotmentId, int ProductId, string Name, Weight Lean, Weight AddedFat, Weight Green, Weight Expected, int? BatchId, int? BatchNumber, bool IsReleased, Weight? Finished, string? DiscardedBecause);

/// <summary>How far a job's products are.</summary>
public static class MadeProducts
{
    /// <summary>In the order asked, those with meat in them; two queries.</summary>
    public static IReadOnlyList<MadeProduct> MadeOf(this RecordsContext records, int jobId)
    {
        var products =
            (from one in records.GrindAllotments.AsNoTracking()
             join split in records.AgreedSplits on one.AgreedSplitId equals split.Id
             where split.JobId == jobId && split.WithdrawnAt == null && one.Green.Milligrams > 0
             join entry in records.BatchEntries.Where(entry => entry.LeftAt == null) on one.Id equals entry.AllotmentId into entries
             from entry in entries.DefaultIfEmpty()
             orderby one.Position
             select new
             {
                 one.Id,
                 one.ProductId,
                 one.Product.Name,
                 one.Lean,
                 one.AddedFat,
                 one.Green,
                 one.Finished,
                 EntryId = (int?)entry.Id,
                 BatchId = (int?)entry.BatchId,
                 BatchNumber = (int?)entry.Batch.Number,
                 entry.Batch.ReleasedAt,
                 entry.Batch.EndedBecause,
             }).ToList();
        var entryIds = products.Select(one => one.EntryId).OfType<int>().ToList();
        var finished = records.FinishedShares.AsNoTracking().Where(share => entryIds.Contains(share.EntryId))
            .Select(share => new { share.EntryId, share.Weight }).ToList().ToLookup(share => share.EntryId, share => share.Weight);
        return
        [
            .. products.Select(one => new MadeProduct(
                one.Id, one.ProductId, one.Name, one.Lean, one.AddedFat, one.Green, one.Finished, one.BatchId, one.BatchNumber, one.ReleasedAt is not null,
                one.ReleasedAt is null ? null : finished[one.EntryId!.Value].Aggregate(Weight.Zero, (sum, weight) => sum + weight),
                one.EndedBecause))
        ];
    }
}
