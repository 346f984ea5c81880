using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Trade.Tickets;

namespace ProcessorDesk.Web.Pages.Pickup;

/// <summary>Tells what a scanned ticket stands for, seen from the job that is being handed over.</summary>
internal static class TickingOff
{
    /// <summary>Ticks the box or part the ticket stands for; answers what was ticked, or why nothing was.</summary>
    public static (string? Ticked, string? Refusal) Tick(RecordsContext records, ShopDay day, PickupJob job, HandOverInput input)
    {
        if (!TicketCode.Parse(input.Scan).Try(out var code, out var problem))
            return (null, problem);
        if (job.Goods.BoxesHere.FirstOrDefault(box => box.Ticket == code) is { } box)
            return Tick(input.Boxes, box.Id, $"Box {box.Number}: {box.InWords}");
        if (job.Goods.PartsHere.FirstOrDefault(part => part.Ticket == code) is { } part)
            return Tick(input.Parts, part.Id, part.InWords);
        if (job.Goods.Boxes.FirstOrDefault(one => one.Ticket == code) is { LeftAt: { } left } gone)
            return (null, $"Box {gone.Number} left on {day.Date(left)} already. Look at what stands before you.");
        if (job.Goods.Parts.FirstOrDefault(one => one.Ticket == code) is { GivenAt: { } given } away)
            return (null, $"{away.InWords} was given to {away.GivenTo} on {day.Date(given)}. Look at what stands before you.");
        return (null, Foreign(records, code, job.Id));
    }

    private static (string? Ticked, string? Refusal) Tick(List<int> ticked, int id, string what)
    {
        if (ticked.Contains(id))
            return ($"{what} was ticked before.", null);
        ticked.Add(id);
        return ($"{what} is ticked.", null);
    }

    /// <summary>A ticket that is for nothing this job could hand over now.</summary>
    private static string Foreign(RecordsContext records, TicketCode code, int jobId)
    {
        var ticket = records.Tickets.AsNoTracking().SingleOrDefault(one => one.Number == code.Number);
        if (ticket is null)
            return $"No ticket has the code {code.Print()}. Scan it again.";
        if (ticket.VoidedAt is not null)
            return $"Ticket {code.Print()} was made void. What bears it has a new ticket or was unpacked; ask the freezer.";
        var other = ticket.Kind switch
        {
            TicketKind.Box => records.Boxes.AsNoTracking().Where(box => box.Id == ticket.TargetId).Select(box => new { box.JobId, What = "box " + box.Number, Job = box.Job.Number, Owner = box.Job.Owner.Name }).Single(),
            TicketKind.Part => records.Parts.AsNoTracking().Where(part => part.Id == ticket.TargetId)
                .SelectMany(part => part.Animal.Shares).OrderBy(share => share.Id)
                .Select(share => new { share.JobId, What = "a part", Job = share.Job.Number, Owner = share.Job.Owner.Name }).First(),
            TicketKind.Claim or TicketKind.Carcass or TicketKind.Filling or TicketKind.Batch => null,
        };
        return other is null || other.JobId == jobId
            ? $"This is a {Wording.Of(ticket.Kind).ToLowerInvariant()}, not the ticket of a box or a part."
            : $"This is {other.What} of job {other.Job}, {other.Owner}. It does not go out with this job: set it aside.";
    }
}
