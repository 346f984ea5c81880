using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>What lies open in the kitchen.</summary>
public static class OpenBatchQueries
{
    /// <summary>In the order they were planned; one query, a row for each load and owner of a batch.</summary>
    public static IReadOnlyList<OpenBatch> OpenBatches(this RecordsContext records)
    {
        var rows =
            from batch in records.Batches.AsNoTracking()
            join load in records.Loads on batch.Id equals load.BatchId
            join entry in records.BatchEntries on batch.Id equals entry.BatchId
            where batch.ReleasedAt == null && batch.EndedAt == null
            orderby batch.PlannedAt, batch.Id, load.Number, entry.Id
            select new
            {
                batch.Id,
                batch.Number,
                Product = batch.Product.Name,
                batch.Product.ProcessKind,
                batch.Product.Cured,
                batch.FormulaVersion.RestMinutes,
                batch.Pooling,
                batch.PlannedAt,
                batch.MixedAt,
                IsHeld = records.Holds.Any(hold => hold.BatchId == batch.Id && hold.ReleasedAt == null),
                IsWeighed = records.WeighIns.Any(weighIn => weighIn.BatchId == batch.Id && weighIn.Kind == WeighInKind.FinishedProduct && !records.Strikes.Any(strike => strike.WeighInId == weighIn.Id)),
                RestStarted = records.BatchSteps.Where(step => step.BatchId == batch.Id && step.UndoneAt == null && step.Kind == BatchStepKind.RestStarted).Select(step => (DateTime?)step.At).FirstOrDefault(),
                Stuffed = records.BatchSteps.Where(step => step.BatchId == batch.Id && step.UndoneAt == null && step.Kind == BatchStepKind.Stuffed).Select(step => (DateTime?)step.At).FirstOrDefault(),
                HeatStarted = records.BatchSteps.Where(step => step.BatchId == batch.Id && step.UndoneAt == null && step.Kind == BatchStepKind.HeatStarted).Select(step => (DateTime?)step.At).FirstOrDefault(),
                ChillStarted = records.BatchSteps.Where(step => step.BatchId == batch.Id && step.UndoneAt == null && step.Kind == BatchStepKind.ChillStarted).Select(step => (DateTime?)step.At).FirstOrDefault(),
                IsPacked = records.BatchSteps.Any(step => step.BatchId == batch.Id && step.UndoneAt == null && step.Kind == BatchStepKind.Packed),
                Owner = entry.Job.Owner.Name,
                Load = load.Number,
                LoadMixedAt = load.MixedAt,
                Lean = load.Lean.Milligrams,
                Green = load.Green.Milligrams,
                Drawn = records.Draws.Where(draw => draw.LoadId == load.Id && draw.StruckAt == null).Sum(draw => draw.Weighed.Milligrams),
            };
        return
        [
            .. rows.AsEnumerable().GroupBy(row => row.Id).Select(group =>
            {
                var batch = group.First();
                var loads = group.DistinctBy(row => row.Load).ToList();
                var open = loads.Where(load => load.LoadMixedAt is null).OrderByDescending(load => load.Drawn > 0).ThenBy(load => load.Load).FirstOrDefault();
                return new OpenBatch(
                    batch.Id, batch.Number, batch.Product, batch.Pooling, batch.PlannedAt, [.. group.Select(row => row.Owner).Distinct()],
                    Weight.FromMilligrams(loads.Sum(load => load.Green)),
                    new BatchProgress(
                        batch.IsHeld, open?.Load, open is not null && BatchProgress.IsFull(open.Lean, open.Drawn), batch.MixedAt, batch.RestMinutes,
                        batch.RestStarted, batch.Stuffed, batch.HeatStarted, batch.ChillStarted, batch.ProcessKind.ToTrade().NeedsOf(batch.Cured), batch.IsWeighed)
                    {
                        IsChilled = batch.IsPacked,
                    });
            })
        ];
    }
}
