using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;

namespace ProcessorDesk.Web.Pages.Find;

/// <summary>A batch that was found.</summary>
public sealed record FoundBatch(int Id, int Number, string Product)
{
    public string Name => $"Batch {Number}, {Product}";
}

/// <summary>Looks batches up.</summary>
internal static class BatchSearch
{
    public static FoundBatch? BatchNumbered(this RecordsContext records, int number) =>
        records.Batches.AsNoTracking().Where(batch => batch.Number == number).Select(batch => new FoundBatch(batch.Id, batch.Number, batch.Product.Name)).SingleOrDefault();

    /// <summary>Ids of the jobs planned into a batch, and of those whose lugs went in by mistake.</summary>
    public static IQueryable<int> JobsInBatch(this RecordsContext records, int batchId) =>
        records.BatchEntries.Where(entry => entry.BatchId == batchId).Select(entry => entry.JobId)
            .Concat(records.Draws.Where(draw => draw.Load.BatchId == batchId && draw.StruckAt == null).Select(draw => draw.Filling.JobId));
}
