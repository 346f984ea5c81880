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

    /// <param name="claim">The job's own ticket.</param>
    public static IReadOnlyList<PaperAnimal> Of(RecordsContext records, int jobId, out TicketCode? claim)
    {
        var shares = records.Shares.AsNoTracking().Where(share => share.JobId == jobId)
            .Include(share => share.Animal).ThenInclude(animal => animal.Parts)
            .Include(share => share.Animal).ThenInclude(animal => animal.Holds.Where(hold => hold.ReleasedAt == null))
            .OrderBy(share => share.AnimalId).ToList();
        var ids = shares.Select(share => share.AnimalId).ToList();
        var parts = shares.SelectMany(share => share.Animal.Parts.Select(part => part.Id)).ToList();
        var weights = records.WeighIns.AsNoTracking().Standing()
            .Where(weighIn => weighIn.Kind == WeighInKind.Arrival && weighIn.AnimalId != null && ids.Contains(weighIn.AnimalId.Value))
            .OrderBy(weighIn => weighIn.Id).ToList();
        var tickets = records.Tickets.AsNoTracking()
            .Where(ticket => ticket.VoidedAt == null
                && ((ticket.Kind == TicketKind.Claim && ticket.TargetId == jobId)
                    || (ticket.Kind == TicketKind.Carcass && ids.Contains(ticket.TargetId))
                    || (ticket.Kind == TicketKind.Part && parts.Contains(ticket.TargetId))))
            .OrderBy(ticket => ticket.Number).ToList();
        claim = CodeOf(TicketKind.Claim, jobId);
        return
        [
            .. shares.Select(share => new PaperAnimal(
                share.Animal, share.Fraction, weights.LastOrDefault(weighIn => weighIn.AnimalId == share.AnimalId), CodeOf(TicketKind.Carcass, share.AnimalId),
                [.. share.Animal.Holds], [.. share.Animal.Parts.Select(part => (part, CodeOf(TicketKind.Part, part.Id)))]))
        ];

        TicketCode? CodeOf(TicketKind kind, int target) => tickets.LastOrDefault(ticket => ticket.Kind == kind && ticket.TargetId == target)?.Code;
    }
}
