using Microsoft.EntityFrameworkCore;

namespace ProcessorDesk.Web.Pages.Pickup;

/// <summary>What can go out: split agreed and not handed over, the oldest promise first; and what went out lately.</summary>
public sealed class IndexModel(RecordsContext records, ShopDay day) : StationPage
{
    private const int LatelyShown = 10;

    public IReadOnlyList<Row> Waiting { get; private set; } = [];

    public IReadOnlyList<GoneRow> Gone { get; private set; } = [];

    public void OnGet()
    {
        Waiting = records.Jobs.AsNoTracking()
            .Where(job => job.HandedOverAt == null && job.SplitAgreedAt != null)
            .OrderBy(job => job.PromisedFor == null).ThenBy(job => job.PromisedFor).ThenBy(job => job.Number)
            .Select(job => new Row(
                job.Id,
                job.Number,
                job.Owner.Name,
                job.Owner.Phone,
                job.PromisedFor,
                records.Invoices.Any(invoice => invoice.JobId == job.Id && invoice.CreditsInvoiceId == null && !records.Invoices.Any(credit => credit.CreditsInvoiceId == invoice.Id)),
                records.Invoices.Where(invoice => invoice.JobId == job.Id).Sum(invoice => invoice.Total.Cents)
                    - records.Payments.Where(payment => payment.JobId == job.Id).Sum(payment => payment.Amount.Cents),
                records.Holds.Any(hold => hold.ReleasedAt == null
                    && (hold.JobId == job.Id || job.Shares.Any(share => share.AnimalId == hold.AnimalId)))))
            .ToList();
        Gone = records.Jobs.AsNoTracking()
            .Where(job => job.HandedOverAt != null)
            .OrderByDescending(job => job.HandedOverAt)
            .Take(LatelyShown)
            .Select(job => new GoneRow(job.Id, job.Number, job.Owner.Name, job.HandedOverTo, job.HandedOverAt!.Value))
            .ToList();
    }

    public string Date(DateOnly date) => day.Date(date);

    public string Moment(DateTime utc) => day.Moment(utc);

    public sealed record Row(int Id, int Number, string Owner, string Phone, DateOnly? PromisedFor, bool IsInvoiced, long BalanceCents, bool IsHeld)
    {
        public string Money => !IsInvoiced ? "Not invoiced" : BalanceCents <= 0 ? "Paid" : $"{Trade.Money.FromCents(BalanceCents).Print()} owed";
    }

    public sealed record GoneRow(int Id, int Number, string Owner, string? To, DateTime At);
}
