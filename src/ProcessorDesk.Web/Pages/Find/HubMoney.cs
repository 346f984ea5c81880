using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;

namespace ProcessorDesk.Web.Pages.Find;

/// <summary>What was agreed, invoiced and paid for one job; one query.</summary>
public sealed record HubMoney(HubMoney.Split? Agreed, IReadOnlyList<HubMoney.Issued> Invoices, IReadOnlyList<Payment> Payments)
{
    public Money Balance => Money.Sum(Invoices.Select(invoice => invoice.Total)) - Money.Sum(Payments.Select(payment => payment.Amount));

    public static HubMoney Of(RecordsContext records, int jobId)
    {
        var found = (
            from job in records.Jobs.AsNoTracking().Where(job => job.Id == jobId)
            join standing in records.AgreedSplits.Where(split => split.WithdrawnAt == null) on job.Id equals standing.JobId into splits
            from split in splits.DefaultIfEmpty()
            select new
            {
                Split = split,
                AgreedBy = records.Staff.Where(staff => staff.Id == split.AgreedById).Select(staff => staff.Name).FirstOrDefault(),
                Given = records.GrindAllotments.Where(one => one.AgreedSplitId == split.Id)
                    .Select(one => new Given(
                        one,
                        records.Products.Where(product => product.Id == one.ProductId).Select(product => product.Name).First(),
                        records.BatchEntries.Where(entry => entry.AllotmentId == one.Id && entry.LeftAt == null).Select(entry => (int?)entry.BatchId).FirstOrDefault(),
                        records.BatchEntries.Where(entry => entry.AllotmentId == one.Id && entry.LeftAt == null).Select(entry => (int?)entry.Batch.Number).FirstOrDefault(),
                        records.BatchEntries.Where(entry => entry.AllotmentId == one.Id && entry.LeftAt == null).Select(entry => entry.Batch.ReleasedAt).FirstOrDefault(),
                        records.BatchEntries.Where(entry => entry.AllotmentId == one.Id && entry.LeftAt == null).Select(entry => entry.Batch.EndedAt).FirstOrDefault(),
                        records.BatchEntries.Where(entry => entry.AllotmentId == one.Id && entry.LeftAt == null)
                            .SelectMany(entry => records.FinishedShares.Where(share => share.EntryId == entry.Id)).Sum(share => share.Weight.Milligrams))).ToList(),
                Invoices = records.Invoices.Where(invoice => invoice.JobId == job.Id)
                    .Select(invoice => new Issued(
                        invoice.Id, invoice.Number, invoice.IssuedAt,
                        records.Invoices.Where(other => other.Id == invoice.CreditsInvoiceId).Select(other => (int?)other.Number).FirstOrDefault(),
                        invoice.Total.Cents)).ToList(),
                Payments = records.Payments.Where(payment => payment.JobId == job.Id).ToList(),
            })
            .AsSingleQuery()
            .Single();
        return new HubMoney(
            found.Split is { } agreed ? new Split(agreed.AgreedAt, found.AgreedBy!, agreed.Lean, [.. found.Given.OrderBy(given => given.Allotment.Position)]) : null,
            [.. found.Invoices.OrderBy(invoice => invoice.Number)],
            [.. found.Payments.OrderBy(payment => payment.Id)]);
    }

    /// <param name="Credits">Number of the invoice it takes back; null for an invoice.</param>
    public sealed record Issued(int Id, int Number, DateTime At, int? Credits, long TotalCents)
    {
        public Money Total => Money.FromCents(TotalCents);
    }

    /// <param name="BatchId">Null where no batch has taken it yet.</param>
    /// <param name="CameMilligrams">What came back of it; zero before the release.</param>
    public sealed record Given(GrindAllotment Allotment, string Product, int? BatchId, int? BatchNumber, DateTime? ReleasedAt, DateTime? EndedAt, long CameMilligrams)
    {
        /// <summary>Null before the release.</summary>
        public Weight? Came => ReleasedAt is null ? null : Weight.FromMilligrams(CameMilligrams);

        public WayProduct OnTheWay => new(
            Allotment.AddedFat, Allotment.MeatBlock, Allotment.Green, Allotment.Finished, Came, EndedAt is not null);
    }

    public sealed record Split(DateTime At, string By, Weight Lean, IReadOnlyList<Given> Given);
}
