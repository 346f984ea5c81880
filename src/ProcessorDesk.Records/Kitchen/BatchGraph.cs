using Microsoft.EntityFrameworkCore;

namespace ProcessorDesk.Records;

/// <summary>A batch with all that is in it.</summary>
public static class BatchGraph
{
    /// <summary>
    /// With its product and formula, loads, their parts and whose they are, what was drawn from which lug, and what bears cure; one query. The
    /// batch's own entries are those of its parts.
    /// </summary>
    public static IQueryable<Batch> WithLoads(this IQueryable<Batch> batches) => batches
        .Include(batch => batch.Product)
        .Include(batch => batch.FormulaVersion)
        .Include(batch => batch.Loads).ThenInclude(load => load.Parts).ThenInclude(part => part.Entry).ThenInclude(entry => entry.Job).ThenInclude(job => job.Owner)
        .Include(batch => batch.Loads).ThenInclude(load => load.Draws).ThenInclude(draw => draw.Filling).ThenInclude(filling => filling.Job).ThenInclude(job => job.Owner)
        .Include(batch => batch.Loads).ThenInclude(load => load.Ingredients.Where(line => line.Nitrite.PartsPerMillion > 0 || line.Nitrate.PartsPerMillion > 0))
        .AsSingleQuery();

    /// <summary>Each entry with a part in a load, in order. The loads' parts must have been loaded.</summary>
    public static IReadOnlyList<BatchEntry> Placed(this Batch batch) =>
        [.. batch.Loads.SelectMany(load => load.Parts).Select(part => part.Entry).DistinctBy(entry => entry.Id).OrderBy(entry => entry.Id)];
}
