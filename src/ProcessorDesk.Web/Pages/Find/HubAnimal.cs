using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;

namespace ProcessorDesk.Web.Pages.Find;

/// <summary>An animal of a job on its hub: what of it is the job's, its standing holds, its parts and tickets.</summary>
/// <param name="Owners">Every share of the animal, the earliest given first.</param>
/// <param name="Ticket">Number of the carcass ticket; null where none is out.</param>
public sealed record HubAnimal(Share Share, IReadOnlyList<ShareRow> Owners, IReadOnlyList<Hold> Holds, IReadOnlyList<HubAnimal.PartOut> Parts, long? Ticket)
{
    public Animal Animal => Share.Animal;

    internal SharedAnimal Shared => new(Animal.Id, Animal.Species, Animal.Tag, Animal.ArrivalState, Animal.ArrivedAt, ShareRow.Of(Owners, Share.JobId));

    public static IReadOnlyList<HubAnimal> Of(RecordsContext records, int jobId) =>
    [
        .. records.Shares.AsNoTracking()
            .Include(share => share.Animal)
            .Where(share => share.JobId == jobId)
            .OrderBy(share => share.AnimalId)
            .Select(share => new
            {
                Share = share,
                Owners = records.Shares.Where(one => one.AnimalId == share.AnimalId).OrderBy(one => one.Id)
                    .Select(one => new ShareRow(one.JobId, one.Numerator, one.Denominator)).ToList(),
                Holds = records.Holds.Where(hold => hold.AnimalId == share.AnimalId && hold.ReleasedAt == null).ToList(),
                Parts = records.Parts.Where(part => part.AnimalId == share.AnimalId).Select(part => new PartOut(
                    part,
                    records.Tickets.Where(ticket => ticket.Kind == TicketKind.Part && ticket.TargetId == part.Id && ticket.VoidedAt == null)
                        .Select(ticket => (long?)ticket.Number).FirstOrDefault())).ToList(),
                Ticket = records.Tickets.Where(ticket => ticket.Kind == TicketKind.Carcass && ticket.TargetId == share.AnimalId && ticket.VoidedAt == null)
                    .Select(ticket => (long?)ticket.Number).FirstOrDefault(),
            })
            .AsSingleQuery()
            .AsEnumerable()
            .Select(one => new HubAnimal(one.Share, one.Owners, one.Holds, [.. one.Parts.OrderBy(part => part.Part.Id)], one.Ticket))
    ];

    /// <param name="Ticket">Number of its ticket; null where none is out.</param>
    public sealed record PartOut(Part Part, long? Ticket);
}
