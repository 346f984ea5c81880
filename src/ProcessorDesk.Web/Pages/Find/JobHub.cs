using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Tickets;

namespace ProcessorDesk.Web.Pages.Find;

/// <summary>Everything about one job that its hub shows, in five queries: the order, the animals, what was weighed, what was agreed and paid, other jobs.</summary>
public sealed record JobHub(
    Job Job,
    string TakenBy,
    IReadOnlyList<JobHub.AskedFor> Asks,
    IReadOnlyList<Hold> Holds,
    IReadOnlyList<HubAnimal> Animals,
    JobWeights Weights,
    HubMoney Money,
    IReadOnlyList<JobHub.TicketOut> Tickets,
    IReadOnlyList<HubBox> Boxes,
    IReadOnlyList<FoundJob> OthersOfOwner)
{
    private const int MostOthers = 12;

    public TicketCode? Claim => Tickets.Where(ticket => ticket.Kind == TicketKind.Claim).Select(ticket => (TicketCode?)ticket.Code).FirstOrDefault();

    public static JobHub? Read(RecordsContext records, int id, ScaleDivision division)
    {
        var order = records.Jobs.AsNoTracking()
            .Include(job => job.Owner).Include(job => job.People).Include(job => job.CutOrder)
            .Where(job => job.Id == id)
            .Select(job => new
            {
                Job = job,
                TakenBy = records.Staff.Where(staff => staff.Id == job.TakenById).Select(staff => staff.Name).First(),
                Asks = job.Asks.Select(ask => new AskedFor(ask, records.Products.Where(product => product.Id == ask.ProductId).Select(product => product.Name).First())).ToList(),
                Holds = records.Holds.Where(hold => hold.JobId == job.Id && hold.ReleasedAt == null).ToList(),
                Claim = records.Tickets.Where(ticket => ticket.Kind == TicketKind.Claim && ticket.TargetId == job.Id && ticket.VoidedAt == null)
                    .Select(ticket => (long?)ticket.Number).FirstOrDefault(),
            })
            .AsSingleQuery()
            .SingleOrDefault();
        if (order is null)
            return null;
        var animals = HubAnimal.Of(records, id);
        var weighed = HubWeighIn.Of(records, id);
        return new JobHub(
            order.Job,
            order.TakenBy,
            [.. order.Asks.OrderBy(asked => asked.Ask.Position)],
            [.. order.Holds.Concat(animals.SelectMany(animal => animal.Holds)).OrderBy(hold => hold.Id)],
            animals,
            JobWeights.Of(animals.Select(animal => animal.Shared), weighed.Where(one => one.Stands).Select(one => one.Net), division),
            HubMoney.Of(records, id),
            [
                .. TicketOut.Of(TicketKind.Claim, [order.Claim]),
                .. TicketOut.Of(TicketKind.Carcass, animals.Select(animal => animal.Ticket)),
                .. TicketOut.Of(TicketKind.Part, animals.SelectMany(animal => animal.Parts).Select(part => part.Ticket)),
                .. TicketOut.Of(TicketKind.Filling, weighed.Where(one => one.Box is null).Select(one => one.Ticket)),
                .. TicketOut.Of(TicketKind.Box, weighed.Where(one => one.Box is not null).Select(one => one.Ticket)),
            ],
            [.. weighed.Select(one => one.Box).OfType<HubBox>().OrderBy(box => box.Box.Number)],
            [.. records.OthersOf(order.Job.OwnerId, id).Take(MostOthers)]);
    }

    public sealed record AskedFor(GrindOrder Ask, string Product);

    /// <summary>A ticket that is not void.</summary>
    public sealed record TicketOut(TicketKind Kind, TicketCode Code)
    {
        internal static IEnumerable<TicketOut> Of(TicketKind kind, IEnumerable<long?> numbers) =>
            numbers.OfType<long>().Distinct().Order().Select(number => new TicketOut(kind, TicketCode.FromNumber(number)));
    }
}
