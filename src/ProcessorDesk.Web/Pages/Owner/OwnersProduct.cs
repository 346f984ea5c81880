using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Trade.Grinding;

namespace ProcessorDesk.Web.Pages.OwnersPage;

/// <summary>What was asked of the trim and what became of it.</summary>
/// <param name="Asked">Null for the plain ground that takes what no ask takes.</param>
/// <param name="Reasons">Why it is not what was asked, one sentence each.</param>
/// <param name="Finished">What came back; null before the release.</param>
/// <param name="Held">What its batch waits for; null where it does not wait.</param>
public sealed record OwnersProduct(
    string Name,
    OwnersAsk? Asked,
    Weight Lean,
    Weight AddedFat,
    Weight MeatBlock,
    Weight Green,
    Weight Low,
    Weight Typical,
    Weight High,
    IReadOnlyList<string> Reasons,
    KitchenState State,
    DateTime? Since,
    Weight? Finished,
    HoldReason? Held,
    bool IsInvoiced)
{
    public WayProduct OnTheWay => new(AddedFat, MeatBlock, Green, Typical, Finished, State == KitchenState.ThrownOut);

    /// <summary>As agreed where a split stands, otherwise as asked; one query.</summary>
    public static IReadOnlyList<OwnersProduct> Of(RecordsContext records, JobFacts facts) =>
        facts.SplitAgreedAt is null ? Asks(records, facts.Id) : Agreed(records, facts.Id);

    private static List<OwnersProduct> Asks(RecordsContext records, int jobId) =>
    [
        .. records.GrindOrders.AsNoTracking().Where(ask => ask.JobId == jobId).OrderBy(ask => ask.Position)
            .Select(ask => new { ask.Product.Name, ask.Kind, ask.Amount, ask.Percent })
            .AsEnumerable()
            .Select(ask => new OwnersProduct(
                ask.Name, new OwnersAsk(ask.Kind, ask.Amount, ask.Percent), default, default, default, default, default, default, default, [], KitchenState.Asked, null, null, null, false))
    ];

    private static List<OwnersProduct> Agreed(RecordsContext records, int jobId) =>
    [
        .. (from one in records.GrindAllotments.AsNoTracking()
            join split in records.AgreedSplits on one.AgreedSplitId equals split.Id
            where split.JobId == jobId && split.WithdrawnAt == null
            join asked in records.GrindOrders on new { split.JobId, one.Position } equals new { asked.JobId, asked.Position } into asks
            from ask in asks.DefaultIfEmpty()
            join placed in records.BatchEntries.Where(entry => entry.LeftAt == null) on one.Id equals placed.AllotmentId into entries
            from entry in entries.DefaultIfEmpty()
            orderby one.Position
            select new
            {
                one.Product.Name,
                AskKind = (AskKind?)ask.Kind,
                AskAmount = (long?)ask.Amount.Milligrams,
                AskPercent = (int?)ask.Percent.PartsPerMillion,
                one.Lean,
                one.AddedFat,
                one.MeatBlock,
                one.Green,
                one.FinishedLow,
                one.Finished,
                one.FinishedHigh,
                one.Reasons,
                split.AgreedAt,
                PlannedAt = (DateTime?)entry.Batch.PlannedAt,
                entry.Batch.MixedAt,
                entry.Batch.ReleasedAt,
                entry.Batch.EndedAt,
                Came = records.FinishedShares.Where(share => share.EntryId == entry.Id).Sum(share => share.Weight.Milligrams),
                Held = records.Holds.Where(hold => hold.ReleasedAt == null && hold.BatchId == entry.BatchId).Select(hold => (HoldReason?)hold.Reason).FirstOrDefault(),
                IsInvoiced = records.Invoices.Standing().Any(invoice => invoice.JobId == jobId && invoice.Lines.Any(line => line.For == PriceFor.Product && line.OfId == one.Id)),
            })
            .AsEnumerable()
            .Select(one => new OwnersProduct(
                one.Name,
                one.AskKind is { } kind ? new OwnersAsk(kind, Weight.FromMilligrams(one.AskAmount!.Value), Proportion.FromPartsPerMillion(one.AskPercent!.Value)) : null,
                one.Lean, one.AddedFat, one.MeatBlock, one.Green, one.FinishedLow, one.Finished, one.FinishedHigh,
                one.Reasons.Split('\n', StringSplitOptions.RemoveEmptyEntries),
                StateOf(one.PlannedAt, one.MixedAt, one.ReleasedAt, one.EndedAt),
                one.EndedAt ?? one.ReleasedAt ?? one.MixedAt ?? one.PlannedAt ?? one.AgreedAt,
                one.ReleasedAt is null ? null : Weight.FromMilligrams(one.Came),
                one.Held,
                one.IsInvoiced))
    ];

    private static KitchenState StateOf(DateTime? plannedAt, DateTime? mixedAt, DateTime? releasedAt, DateTime? endedAt) => (plannedAt, mixedAt, releasedAt, endedAt) switch
    {
        (_, _, _, not null) => KitchenState.ThrownOut,
        (_, _, not null, _) => KitchenState.Made,
        (_, not null, _, _) => KitchenState.Mixed,
        (not null, _, _, _) => KitchenState.Planned,
        _ => KitchenState.Waiting,
    };
}
