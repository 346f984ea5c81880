using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Tickets;

namespace ProcessorDesk.Web.Pages.Counter;

/// <summary>An animal of a job as papers show it; holds are those that stand.</summary>
public sealed record PaperAnimal(
    Animal Animal, Ratio Share, WeighIn? Arrival, TicketCode? Code, IReadOnlyList<Hold> Holds, IReadOnlyList<(Part Part, TicketCode? Code)> Parts)
{
    /// <summary>"White-tail deer, male".</summary>
    public string What => Animal.Sex == Records.Sex.Unknown ? Wording.Of(Animal.Species) : $"{Wording.Of(Animal.Species)}, {Sex}";

    public string Sex => Animal.Sex == Records.Sex.Unknown ? "" : Wording.Of(Animal.Sex).ToLowerInvariant();

    public string Tag => Animal.Tag ?? "none yet";

    /// <summary>As it was keyed.</summary>
    public string Weight => Arrival is { } weighIn ? weighIn.KeyedDivision.Print(weighIn.Net) : "not weighed";

    /// <summary>One query. Where several weights or tickets stand, the newest counts.</summary>
    public static IReadOnlyList<PaperAnimal> Of(RecordsContext records, int jobId) =>
    [
        .. records.Shares.AsNoTracking()
            .Include(share => share.Animal)
            .Where(share => share.JobId == jobId)
            .OrderBy(share => share.AnimalId)
            .Select(share => new
            {
                Share = share,
                Holds = records.Holds.Where(hold => hold.AnimalId == share.AnimalId && hold.ReleasedAt == null).ToList(),
                Parts = records.Parts.Where(part => part.AnimalId == share.AnimalId).Select(part => new
                {
                    Part = part,
                    Ticket = records.Tickets.Where(ticket => ticket.Kind == TicketKind.Part && ticket.TargetId == part.Id && ticket.VoidedAt == null)
                        .Max(ticket => (long?)ticket.Number),
                }).ToList(),
                Arrivals = records.WeighIns.Where(weighIn => weighIn.AnimalId == share.AnimalId && weighIn.Kind == WeighInKind.Arrival
                    && !records.Strikes.Any(strike => strike.WeighInId == weighIn.Id)).ToList(),
                Ticket = records.Tickets.Where(ticket => ticket.Kind == TicketKind.Carcass && ticket.TargetId == share.AnimalId && ticket.VoidedAt == null)
                    .Max(ticket => (long?)ticket.Number),
            })
            .AsSingleQuery()
            .AsEnumerable()
            .Select(one => new PaperAnimal(
                one.Share.Animal, one.Share.Fraction, one.Arrivals.MaxBy(weighIn => weighIn.Id), CodeOf(one.Ticket), one.Holds,
                [.. one.Parts.OrderBy(part => part.Part.Id).Select(part => (part.Part, CodeOf(part.Ticket)))]))
    ];

    private static TicketCode? CodeOf(long? number) => number is { } known ? TicketCode.FromNumber(known) : null;
}
