using Microsoft.EntityFrameworkCore;

namespace ProcessorDesk.Records;

/// <summary>How far a trace reaches, as parts of queries: each goes by an index from the thing it starts from.</summary>
internal static class TraceReach
{
    /// <summary>Batches its meat is in or is planned for; of a box, those its packs were made in.</summary>
    public static IQueryable<int> BatchesOf(this RecordsContext records, TraceStart start) => start.Kind switch
    {
        TracedKind.Animal or TracedKind.Job => records.BatchesDrawnFrom(records.LugsOf(start)).Union(records.BatchesPlannedFor(records.JobsOf(start))),
        TracedKind.Lug => records.BatchesDrawnFrom(records.LugsOf(start)),
        TracedKind.Batch => records.Batches.Where(batch => batch.Id == start.Id).Select(batch => batch.Id),
        TracedKind.Box =>
            from content in records.BoxContents
            join entry in records.BatchEntries on content.AllotmentId equals entry.AllotmentId
            where content.BoxId == start.Id && entry.LeftAt == null
            select entry.BatchId,
        TracedKind.IngredientLot => records.LotUses.Where(use => use.LotId == start.Id && use.StruckAt == null).Select(use => use.Load.BatchId),
    };

    /// <summary>Fillings that hold or held its meat, before any batch; none of a batch, a box or a lot.</summary>
    public static IQueryable<int> LugsOf(this RecordsContext records, TraceStart start) => start.Kind switch
    {
        TracedKind.Animal => records.Set<FillingAnimal>().Where(one => one.AnimalId == start.Id).Select(one => one.FillingId),
        TracedKind.Job => records.Fillings.Where(filling => filling.JobId == start.Id).Select(filling => filling.Id),
        TracedKind.Lug or TracedKind.Batch or TracedKind.Box or TracedKind.IngredientLot =>
            records.Fillings.Where(filling => filling.Id == (start.Kind == TracedKind.Lug ? start.Id : 0)).Select(filling => filling.Id),
    };

    /// <summary>Jobs it belongs to by itself, whatever batch it met others in; none of a batch or a lot.</summary>
    public static IQueryable<int> JobsOf(this RecordsContext records, TraceStart start) => start.Kind switch
    {
        TracedKind.Animal => records.Shares.Where(share => share.AnimalId == start.Id).Select(share => share.JobId),
        TracedKind.Box => records.Boxes.Where(box => box.Id == start.Id).Select(box => box.JobId),
        TracedKind.Lug => records.Fillings.Where(filling => filling.Id == start.Id).Select(filling => filling.JobId),
        TracedKind.Job or TracedKind.Batch or TracedKind.IngredientLot =>
            records.Jobs.Where(job => job.Id == (start.Kind == TracedKind.Job ? start.Id : 0)).Select(job => job.Id),
    };

    private static IQueryable<int> BatchesDrawnFrom(this RecordsContext records, IQueryable<int> fillings) =>
        records.Draws.Where(draw => draw.StruckAt == null && fillings.Contains(draw.FillingId)).Select(draw => draw.Load.BatchId);

    private static IQueryable<int> BatchesPlannedFor(this RecordsContext records, IQueryable<int> jobs) => records.BatchEntries
        .Where(entry => entry.LeftAt == null && entry.Batch.MixedAt == null && entry.Batch.EndedAt == null && jobs.Contains(entry.JobId))
        .Select(entry => entry.BatchId);

    /// <summary>Boxes with cuts of it; of a lug where cuts were weighed in it.</summary>
    public static IQueryable<int> BoxesWithCutsOf(this RecordsContext records, TraceStart start)
    {
        var jobs = start.Kind switch
        {
            TracedKind.Animal or TracedKind.Job => records.JobsOf(start),
            TracedKind.Lug => records.WeighIns.Where(one => one.FillingId == start.Id && one.Kind == WeighInKind.CutPack && one.JobId != null).Select(one => one.JobId!.Value),
            TracedKind.Batch or TracedKind.Box or TracedKind.IngredientLot => records.Jobs.Where(job => job.Id == 0).Select(job => job.Id),
        };
        return records.Boxes.Where(box => jobs.Contains(box.JobId) && box.Contents.Any(content => content.AllotmentId == null)).Select(box => box.Id);
    }
}
