using Microsoft.EntityFrameworkCore;

namespace ProcessorDesk.Records;

/// <summary>What waits for the kitchen.</summary>
public static class WaitingAllotmentQueries
{
    /// <summary>By product, what was promised first at the top; one query, a row for each animal the meat is from.</summary>
    public static IReadOnlyList<WaitingAllotment> WaitingAllotments(this RecordsContext records)
    {
        var rows =
            from job in records.Jobs.AsNoTracking()
            join split in records.AgreedSplits on job.Id equals split.JobId
            join one in records.GrindAllotments on split.Id equals one.AgreedSplitId
            from share in records.Shares.Where(share => share.JobId == job.Id).DefaultIfEmpty()
            where job.HandedOverAt == null && job.SplitAgreedAt != null && job.MadeAt == null
                && split.WithdrawnAt == null
                && one.Green.Milligrams > 0 && !records.BatchEntries.Any(entry => entry.AllotmentId == one.Id && entry.LeftAt == null)
            orderby one.Product.Name, one.FormulaVersion.Number, job.PromisedFor == null, job.PromisedFor, job.Number, one.Position
            select new
            {
                one.Id,
                one.ProductId,
                Product = one.Product.Name,
                one.FormulaVersionId,
                FormulaNumber = one.FormulaVersion.Number,
                JobId = job.Id,
                job.Number,
                job.OwnerId,
                Owner = job.Owner.Name,
                job.Pooling,
                job.NoPork,
                job.PromisedFor,
                one.Lean,
                one.AddedFat,
                one.Green,
                Species = (Trade.Species?)share.Animal.Species,
            };
        return
        [
            .. from row in rows.AsEnumerable()
               group row by row.Id into animals
               let one = animals.First()
               select new WaitingAllotment(
                   one.Id, one.ProductId, one.Product, one.FormulaVersionId, one.FormulaNumber, one.JobId, one.Number, one.OwnerId, one.Owner, one.Pooling, one.NoPork, one.PromisedFor,
                   one.Lean, one.AddedFat, one.Green,
                   [.. animals.Select(row => row.Species).OfType<Trade.Species>().Distinct()])
        ];
    }
}
