using Microsoft.EntityFrameworkCore;

namespace ProcessorDesk.Records;

/// <summary>A batch with all that is in it.</summary>
/// <remarks>
/// Read from the leaves up: a query that begins at the batch joins its collections as whole tables, which SQLite then reads from end to
/// end. What is read is tracked, so that the two queries find each other.
/// </remarks>
public static class BatchGraph
{
    /// <summary>With its product and formula, its loads, their parts and whose they are, what was drawn from whose lug, and what was weighed in; two queries. Null where there is no such batch.</summary>
    public static Batch? ReadBatch(this RecordsContext records, int id)
    {
        var parts = records.LoadParts.Where(part => part.Load.BatchId == id).WithWhose()
            .Include(part => part.Load).ThenInclude(load => load.Ingredients)
            .ToList();
        records.Draws.Where(draw => draw.Load.BatchId == id).Include(draw => draw.Filling).ThenInclude(filling => filling.Job).ThenInclude(job => job.Owner).Load();
        return parts.Count == 0 ? null : parts[0].Load.Batch;
    }

    /// <summary>Parts with their load, batch, product, formula and rules, and with the entry, job and owner they are of.</summary>
    public static IQueryable<LoadPart> WithWhose(this IQueryable<LoadPart> parts) => parts
        .Include(part => part.Load).ThenInclude(load => load.Batch).ThenInclude(batch => batch.Product)
        .Include(part => part.Load).ThenInclude(load => load.Batch).ThenInclude(batch => batch.FormulaVersion)
        .Include(part => part.Load).ThenInclude(load => load.Batch).ThenInclude(batch => batch.Rules)
        .Include(part => part.Entry).ThenInclude(entry => entry.Job).ThenInclude(job => job.Owner)
        .AsSingleQuery();

    /// <summary>Each entry with a part in a load, in order. The loads' parts must have been loaded.</summary>
    public static IReadOnlyList<BatchEntry> Placed(this Batch batch) =>
        [.. batch.Loads.SelectMany(load => load.Parts).Select(part => part.Entry).DistinctBy(entry => entry.Id).OrderBy(entry => entry.Id)];
}
