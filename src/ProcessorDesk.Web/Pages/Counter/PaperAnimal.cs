using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Tickets;

namespace ProcessorDesk.Web.Pages.Counter;

/// <summary>An animal as papers show it.</summary>
public sealed record PaperAnimal(
    int Id, Species Species, Sex Sex, string? Tag, ArrivalState State, DateTime ArrivedAt, Ratio Share, string Weight, TicketCode? Code,
    IReadOnlyList<(HoldReason Reason, string? Note)> Holds, IReadOnlyList<PaperPart> Parts)
{
    /// <summary>"White-tail deer, male".</summary>
    public string What => Sex == Sex.Unknown ? Wording.Of(Species) : $"{Wording.Of(Species)}, {Wording.Of(Sex).ToLowerInvariant()}";

    public static IReadOnlyList<PaperAnimal> Of(RecordsContext records, int jobId)
    {
        var animals = records.Shares.AsNoTracking().Where(share => share.JobId == jobId)
            .Include(share => share.Animal).ThenInclude(animal => animal.Parts)
            .Include(share => share.Animal).ThenInclude(animal => animal.Holds.Where(hold => hold.ReleasedAt == null))
            .OrderBy(share => share.AnimalId).ToList();
        var ids = animals.Select(share => share.AnimalId).ToList();
        var weights = records.WeighIns.AsNoTracking().Standing()
            .Where(weighIn => weighIn.Kind == WeighInKind.Arrival && weighIn.AnimalId != null && ids.Contains(weighIn.AnimalId.Value)).ToList();
        var parts = animals.SelectMany(share => share.Animal.Parts.Select(part => part.Id)).ToList();
        var tickets = records.Tickets.AsNoTracking()
            .Where(ticket => ticket.VoidedAt == null && ((ticket.Kind == TicketKind.Carcass && ids.Contains(ticket.TargetId)) || (ticket.Kind == TicketKind.Part && parts.Contains(ticket.TargetId))))
            .ToList();
        return
        [
            .. animals.Select(share =>
            {
                var animal = share.Animal;
                var weight = weights.LastOrDefault(weighIn => weighIn.AnimalId == animal.Id);
                return new PaperAnimal(
                    animal.Id, animal.Species, animal.Sex, animal.Tag, animal.ArrivalState, animal.ArrivedAt, share.Fraction,
                    weight is null ? "not weighed" : weight.KeyedDivision.Print(weight.Net), CodeOf(TicketKind.Carcass, animal.Id),
                    [.. animal.Holds.Select(hold => (hold.Reason, hold.Note))],
                    [.. animal.Parts.Select(part => new PaperPart(part.Kind, part.Note, CodeOf(TicketKind.Part, part.Id)))]);
            })
        ];

        TicketCode? CodeOf(TicketKind kind, int target) => tickets.LastOrDefault(ticket => ticket.Kind == kind && ticket.TargetId == target)?.Code;
    }

    internal static TicketCode? CodeFor(RecordsContext records, TicketKind kind, int target) =>
        records.Tickets.AsNoTracking().Where(ticket => ticket.Kind == kind && ticket.TargetId == target && ticket.VoidedAt == null)
            .OrderBy(ticket => ticket.Number).LastOrDefault()?.Code;
}

/// <summary>A part to give back as papers show it.</summary>
public sealed record PaperPart(PartKind Kind, string? Note, TicketCode? Code);
