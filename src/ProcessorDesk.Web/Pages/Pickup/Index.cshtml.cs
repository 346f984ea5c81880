using Microsoft.EntityFrameworkCore;

namespace ProcessorDesk.Web.Pages.Pickup;

/// <summary>What can go out, whole or in part, and how long it has waited; what left owing; what left lately.</summary>
public sealed class IndexModel(RecordsContext records, ShopDay day) : StationPage
{
    private const int LatelyShown = 10;
    private const int LookedBackDays = 90;

    /// <summary>All of it is in boxes; the longest waiting first.</summary>
    public IReadOnlyList<Row> Ready { get; private set; } = [];

    /// <summary>Some boxes are here, the rest is being made.</summary>
    public IReadOnlyList<Row> InPart { get; private set; } = [];

    public IReadOnlyList<GoneRow> Owing { get; private set; } = [];

    public IReadOnlyList<GoneRow> Gone { get; private set; } = [];

    public int UnclaimedAfter => day.Settings.UnclaimedAfterDays;

    public void OnGet()
    {
        var here = records.Boxes.Here();
        var rows = records.Jobs.AsNoTracking()
            .Where(job => job.HandedOverAt == null && (job.BoxedAt != null || here.Any(box => box.JobId == job.Id)))
            .Select(job => new Row(
                job.Id, job.Number, job.Owner.Name, job.Owner.Phone, job.PromisedFor, job.BoxedAt,
                here.Where(box => box.JobId == job.Id).Min(box => (DateTime?)box.PackedAt),
                here.Count(box => box.JobId == job.Id),
                records.HandOvers.Any(one => one.JobId == job.Id),
                records.Invoices.Any(invoice => invoice.JobId == job.Id && invoice.CreditsInvoiceId == null && !records.Invoices.Any(credit => credit.CreditsInvoiceId == invoice.Id)),
                records.Invoices.Where(invoice => invoice.JobId == job.Id).Sum(invoice => invoice.Total.Cents)
                    - records.Payments.Where(payment => payment.JobId == job.Id).Sum(payment => payment.Amount.Cents),
                records.Holds.Any(hold => hold.ReleasedAt == null && hold.JobId == job.Id)
                    || job.Shares.Any(share => records.Holds.Any(hold => hold.ReleasedAt == null && hold.AnimalId == share.AnimalId))
                    || records.BatchEntries.Any(entry => entry.JobId == job.Id && records.Holds.Any(hold => hold.ReleasedAt == null && hold.BatchId == entry.BatchId))))
            .ToList();
        Ready = [.. rows.Where(row => row.BoxedAt is not null).OrderBy(row => row.BoxedAt)];
        InPart = [.. rows.Where(row => row.BoxedAt is null).OrderBy(row => row.FirstPackedAt)];
        var since = day.Now.AddDays(-LookedBackDays);
        Gone = [.. Left(records.HandOvers.Where(one => one.At > since).OrderByDescending(one => one.At).ThenByDescending(one => one.Id).Take(LatelyShown))];
        Owing = [.. Left(records.HandOvers.Where(one => one.At > since && one.Owing)).Where(row => row.BalanceCents > 0).DistinctBy(row => row.JobId)];
    }

    private IEnumerable<GoneRow> Left(IQueryable<HandOver> handOvers) => handOvers.AsNoTracking()
        .OrderByDescending(one => one.At).ThenByDescending(one => one.Id)
        .Select(one => new GoneRow(
            one.Id, one.JobId, one.Job.Number, one.Job.Owner.Name, one.Job.Owner.Phone, one.To, one.At, one.Job.HandedOverAt != null,
            records.Invoices.Where(invoice => invoice.JobId == one.JobId).Sum(invoice => invoice.Total.Cents)
                - records.Payments.Where(payment => payment.JobId == one.JobId).Sum(payment => payment.Amount.Cents)))
        .AsEnumerable();

    /// <summary>Whole days on the shop's calendar since then.</summary>
    public int DaysSince(DateTime utc) => day.Today.DayNumber - day.DayOf(utc).DayNumber;

    public string Waited(DateTime utc) => DaysSince(utc) switch { 0 => "Since today", 1 => "1 day", var days => $"{days} days" };

    public bool IsUnclaimed(Row row) => row.BoxedAt is { } boxed && day.IsUnclaimed(boxed);

    public string Date(DateOnly date) => day.Date(date);

    public string Day(DateTime utc) => day.Date(utc);

    public string Moment(DateTime utc) => day.Moment(utc);

    public sealed record Row(
        int Id, int Number, string Owner, string Phone, DateOnly? PromisedFor, DateTime? BoxedAt, DateTime? FirstPackedAt, int Boxes, bool SomeLeft, bool IsInvoiced, long BalanceCents,
        bool IsHeld)
    {
        public string BoxWords => Boxes == 1 ? "1 box" : $"{Boxes} boxes";

        public string Money => BalanceCents > 0 ? $"{Trade.Money.FromCents(BalanceCents).Print()} owed" : !IsInvoiced ? "Not invoiced" : "Paid";
    }

    public sealed record GoneRow(int Id, int JobId, int Number, string Owner, string Phone, string To, DateTime At, bool IsAll, long BalanceCents)
    {
        public string Money => Trade.Money.FromCents(BalanceCents).Print();
    }
}
