using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Paper;
using ProcessorDesk.Records;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Kitchen;

/// <summary>A standing hold that touches the kitchen: on a batch, on a job, on an animal with meat in a job.</summary>
/// <param name="BatchId">Null where it is not on a batch.</param>
/// <param name="JobIds">The jobs whose meat it holds; empty where it is on a batch.</param>
/// <param name="Whose">"This batch", "The whole job", "Tag TW-1001".</param>
/// <param name="StopsBatch">Whether it stops meat from going into a batch.</param>
public sealed record KitchenHold(
    int Id, int? BatchId, IReadOnlyList<int> JobIds, string Whose, HoldReason Reason, string? Note, string Since, bool StopsBatch, bool StopsRelease)
{
    /// <summary>The same on paper.</summary>
    public HoldNotice ToNotice() => new(
        $"{Whose}: {Wording.Of(Reason)}",
        (StopsBatch ? "Not drawn, mixed or released until it is lifted." : StopsRelease ? "Not released until it is lifted." : "Ask the manager.") + (Note is null ? "" : $" {Note}."));

    /// <summary>Every standing hold of the shop, on a batch or stopping meat from going into one; one query.</summary>
    public static IReadOnlyList<KitchenHold> All(RecordsContext records, ShopDay shop) => Of(records, records.Holds, shop);

    /// <summary>On one batch, and on the jobs whose meat is meant for it or in it; one query.</summary>
    /// <param name="loads">Of the batch, with their parts and draws.</param>
    public static IReadOnlyList<KitchenHold> OfBatch(RecordsContext records, int batchId, IReadOnlyCollection<Load> loads, ShopDay shop)
    {
        var jobs = loads.SelectMany(load => load.Parts).Select(part => part.Entry.JobId)
            .Concat(loads.SelectMany(load => load.Draws).Where(draw => draw.StruckAt is null).Select(draw => draw.Filling.JobId))
            .Distinct().Select(job => (int?)job).ToList();
        var animals = records.Shares.Where(share => jobs.Contains(share.JobId)).Select(share => (int?)share.AnimalId);
        return Of(records, records.Holds.Where(hold => hold.BatchId == batchId || jobs.Contains(hold.JobId) || animals.Contains(hold.AnimalId)), shop);
    }

    private static List<KitchenHold> Of(RecordsContext records, IQueryable<Hold> holds, ShopDay shop) =>
    [
        .. holds.AsNoTracking().Standing()
            .OrderBy(hold => hold.PlacedAt).ThenBy(hold => hold.Id)
            .Select(hold => new
            {
                hold.Id,
                hold.BatchId,
                hold.JobId,
                hold.Reason,
                hold.Note,
                hold.PlacedAt,
                hold.AnimalId,
                Tag = hold.Animal == null ? null : hold.Animal.Tag,
                Jobs = records.Shares.Where(share => share.AnimalId == hold.AnimalId).Select(share => share.JobId).ToList(),
                StopsBatch = records.HoldRules.Any(rule => rule.Reason == hold.Reason && rule.Act == HeldAct.Batch && rule.Stops),
                StopsRelease = records.HoldRules.Any(rule => rule.Reason == hold.Reason && rule.Act == HeldAct.Release && rule.Stops),
            })
            .AsEnumerable()
            .Select(hold => new KitchenHold(
                hold.Id, hold.BatchId, hold.JobId is { } job ? [job] : hold.Jobs,
                hold.BatchId is not null ? "This batch" : hold.AnimalId is null ? "The whole job" : hold.Tag is null ? "Animal without a tag" : "Tag " + hold.Tag,
                hold.Reason, hold.Note, shop.Moment(hold.PlacedAt), hold.StopsBatch, hold.StopsRelease))
    ];
}
