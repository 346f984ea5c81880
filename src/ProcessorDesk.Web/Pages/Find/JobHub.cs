using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;

namespace ProcessorDesk.Web.Pages.Find;

/// <summary>Everything about one job that its hub shows, read at once; each part is one query by the job.</summary>
public sealed record JobHub(
    Job Job,
    string TakenBy,
    IReadOnlyList<Hold> Holds,
    IReadOnlyList<Animal> Animals,
    JobWeights Weights,
    JobHub.Split? Agreed,
    IReadOnlyList<JobHub.Issued> Invoices,
    IReadOnlyList<Payment> Payments,
    IReadOnlyList<Part> Parts,
    IReadOnlyList<Ticket> Tickets,
    IReadOnlyList<FoundJob> OthersOfOwner)
{
    private const int MostOthers = 12;

    public Money Balance => Money.Sum(Invoices.Select(invoice => invoice.Total)) - Money.Sum(Payments.Select(payment => payment.Amount));

    public static JobHub? Read(RecordsContext records, int id, ScaleDivision division)
    {
        var job = records.Jobs.AsNoTracking()
            .Include(one => one.Owner).Include(one => one.People)
            .Include(one => one.CutOrder)
            .Include(one => one.Asks).ThenInclude(ask => ask.Product)
            .Include(one => one.Shares)
            .AsSplitQuery()
            .SingleOrDefault(one => one.Id == id);
        if (job is null)
            return null;
        var animals = records.Animals.AsNoTracking().Where(animal => animal.Shares.Any(share => share.JobId == id)).OrderBy(animal => animal.Id).ToList();
        var parts = records.Parts.AsNoTracking().Where(part => part.Animal.Shares.Any(share => share.JobId == id)).OrderBy(part => part.Id).ToList();
        return new JobHub(
            job,
            records.Staff.Where(staff => staff.Id == job.TakenById).Select(staff => staff.Name).First(),
            [.. records.Holds.AsNoTracking().Standing().OnJob(records, id)],
            animals,
            records.WeightsOf(id, division),
            records.AgreedSplits.AsNoTracking()
                .Where(split => split.JobId == id && split.WithdrawnAt == null)
                .Select(split => new Split(
                    split.AgreedAt,
                    records.Staff.Where(staff => staff.Id == split.AgreedById).Select(staff => staff.Name).First(),
                    split.Lean,
                    split.Allotments.OrderBy(one => one.Position)
                        .Select(one => new Given(one.Product.Name, one.Lean, one.AddedFat, one.FinishedLow, one.Finished, one.FinishedHigh)).ToList()))
                .AsSingleQuery()
                .SingleOrDefault(),
            [
                .. records.Invoices.AsNoTracking().Where(invoice => invoice.JobId == id).OrderBy(invoice => invoice.Number)
                    .Select(invoice => new Issued(invoice.Id, invoice.Number, invoice.IssuedAt, invoice.Credits == null ? null : invoice.Credits.Number, invoice.Total))
            ],
            [.. records.Payments.AsNoTracking().Where(payment => payment.JobId == id).OrderBy(payment => payment.Id)],
            parts,
            TicketsOf(records, id),
            [.. records.OthersOf(job.OwnerId, id).Take(MostOthers)]);
    }

    private static List<Ticket> TicketsOf(RecordsContext records, int id) =>
    [
        .. records.Tickets.AsNoTracking()
            .Where(ticket => ticket.VoidedAt == null && (
                ticket.Kind == TicketKind.Claim && ticket.TargetId == id
                || ticket.Kind == TicketKind.Carcass && records.Shares.Any(share => share.JobId == id && share.AnimalId == ticket.TargetId)
                || ticket.Kind == TicketKind.Part && records.Parts.Any(part => part.Id == ticket.TargetId && part.Animal.Shares.Any(share => share.JobId == id))
                || ticket.Kind == TicketKind.Filling && records.Fillings.Any(filling => filling.Id == ticket.TargetId && filling.JobId == id)))
            .OrderBy(ticket => ticket.Kind).ThenBy(ticket => ticket.Number)
    ];

    public sealed record Issued(int Id, int Number, DateTime At, int? Credits, Money Total);

    public sealed record Given(string Product, Weight Lean, Weight AddedFat, Weight Low, Weight Typical, Weight High);

    public sealed record Split(DateTime At, string By, Weight Lean, IReadOnlyList<Given> Given);
}
