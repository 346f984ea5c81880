using System.Globalization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Trade.Tickets;

namespace ProcessorDesk.Web.Pages.Freezer;

/// <summary>What is to be boxed next, what waits in the kitchen, where boxes stand; and a box by its ticket.</summary>
public sealed class IndexModel(RecordsContext records, ShopDay shop) : StationPage
{
    /// <summary>A box's ticket, scanned or typed.</summary>
    [BindProperty(SupportsGet = true)]
    public string? Ticket { get; set; }

    public IReadOnlyList<FreezerShelves.OpenJob> ToBox { get; private set; } = [];

    public IReadOnlyList<FreezerShelves.OpenJob> InKitchen { get; private set; } = [];

    public IReadOnlyList<FreezerShelves.Place> Places { get; private set; } = [];

    public IActionResult OnGet()
    {
        if (!string.IsNullOrWhiteSpace(Ticket) && Found() is { } address)
            return LocalRedirect(address);
        var shelves = FreezerShelves.Read(records);
        ToBox = [.. shelves.Jobs.Where(job => job.IsForFreezer)];
        InKitchen = [.. shelves.Jobs.Where(job => !job.IsForFreezer && job.InKitchen.Count > 0)];
        Places = shelves.Places;
        return Page();
    }

    public string Date(DateOnly? date) => date is { } day ? shop.Date(day) : "No date";

    /// <summary>Where the box with this ticket is told of; otherwise says what the ticket is.</summary>
    private string? Found()
    {
        if (!TicketCode.Parse(Ticket).Try(out var code, out var problem))
        {
            ModelState.AddModelError("Ticket", problem);
            return null;
        }

        var found = records.Tickets.AsNoTracking().Where(ticket => ticket.Number == code.Number)
            .Select(ticket => new
            {
                ticket.Kind,
                ticket.TargetId,
                ticket.VoidedAt,
                JobId = records.Boxes.Where(box => ticket.Kind == TicketKind.Box && box.Id == ticket.TargetId).Select(box => (int?)box.JobId).FirstOrDefault(),
            })
            .SingleOrDefault();
        if (found is { JobId: { } jobId, VoidedAt: null })
            return string.Create(CultureInfo.InvariantCulture, $"/Freezer/Job/{jobId}#box-{found.TargetId}");
        ModelState.AddModelError("Ticket", found is null ? "No ticket has this code. Check the characters."
            : found.VoidedAt is { } at ? $"This ticket was made void on {shop.Date(at)}. Throw it away."
            : $"This is a {Wording.Of(found.Kind).ToLowerInvariant()}, not a box's. The Find box at the top takes any ticket.");
        return null;
    }
}
