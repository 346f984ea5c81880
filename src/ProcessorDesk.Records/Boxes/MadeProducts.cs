using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>How far a job's products are.</summary>
public static class MadeProducts
{
    /// <summary>In the order asked, those with meat in them; one query, with a row for each step of a product's batch.</summary>
    public static IReadOnlyList<MadeProduct> MadeOf(this RecordsContext records, int jobId)
    {
        var invoiced = records.Invoices.Standing().Where(invoice => invoice.JobId == jobId);
        var rows =
            (from split in records.AgreedSplits.AsNoTracking()
             join one in records.GrindAllotments on split.Id equals one.AgreedSplitId
             where split.JobId == jobId && split.WithdrawnAt == null && one.Green.Milligrams > 0
             join entry in records.BatchEntries.Where(entry => entry.LeftAt == null) on one.Id equals entry.AllotmentId into entries
             from entry in entries.DefaultIfEmpty()
             join step in records.BatchSteps on entry.BatchId equals step.BatchId into steps
             from step in steps.DefaultIfEmpty()
             orderby one.Position
             select new
             {
                 Allotment = one,
                 one.Product.Name,
                 BatchId = (int?)entry.BatchId,
                 BatchNumber = (int?)entry.Batch.Number,
                 PlannedAt = (DateTime?)entry.Batch.PlannedAt,
                 entry.Batch.MixedAt,
                 entry.Batch.ReleasedAt,
                 entry.Batch.EndedAt,
                 entry.Batch.EndedBecause,
                 StepKind = (BatchStepKind?)step.Kind,
                 StepAt = (DateTime?)step.At,
                 step.UndoneAt,
                 Finished = records.FinishedShares.Where(share => share.EntryId == entry.Id).Sum(share => share.Weight.Milligrams),
                 IsInvoiced = invoiced.Any(invoice => invoice.Lines.Any(line => line.For == PriceFor.Product && line.OfId == one.Id)),
             })
            .ToList();
        return
        [
            .. from row in rows
               group row by row.Allotment.Id into product
               let one = product.First()
               let steps = product.Where(row => row.StepKind is not null).Select(row => new MadeProduct.Step(row.StepKind!.Value, row.StepAt!.Value, row.UndoneAt)).ToList()
               select new MadeProduct(
                   one.Allotment.Id, one.Allotment.ProductId, one.Name, one.Allotment.Lean, one.Allotment.AddedFat, one.Allotment.Green, one.Allotment.Finished,
                   one.BatchId is { } id ? new MadeProduct.InBatch(id, one.BatchNumber!.Value, one.PlannedAt!.Value, one.MixedAt, one.ReleasedAt, one.EndedAt, one.EndedBecause, steps) : null,
                   one.ReleasedAt is null ? null : Weight.FromMilligrams(one.Finished),
                   one.IsInvoiced)
        ];
    }
}
