using System.Globalization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Paper;
using ProcessorDesk.Trade.Safety;
using ProcessorDesk.Trade.Tickets;

namespace ProcessorDesk.Web.Pages.Pickup;

/// <summary>The pickup summary as a PDF: what goes home, how to keep and cook it, who signs.</summary>
public sealed class SummaryModel(RecordsContext records, ShopDay day) : StationPage
{
    public IActionResult OnGet(int job)
    {
        var found = records.Jobs.AsNoTracking()
            .Where(one => one.Id == job)
            .Select(one => new
            {
                one.Number,
                Owner = one.Owner.Name,
                Collector = one.HandedOverTo ?? one.People.Where(person => person.Role == PersonRole.Collector).Select(person => person.Name).FirstOrDefault(),
                one.HandedOverAt,
                Ticket = records.Tickets.Where(ticket => ticket.Kind == TicketKind.Claim && ticket.TargetId == one.Id && ticket.VoidedAt == null)
                    .Select(ticket => (long?)ticket.Number).FirstOrDefault(),
                Species = one.Shares.Select(share => share.Animal.Species).ToList(),
            })
            .AsSplitQuery()
            .SingleOrDefault();
        if (found?.Ticket is not { } ticket)
            return NotFound();
        var summary = new PickupSummary(
            new ShopHeader(day.Settings.Name, [.. new[] { day.Settings.Address, day.Settings.Phone }.OfType<string>()]),
            found.Owner,
            found.Number.ToString(CultureInfo.InvariantCulture),
            TicketCode.FromNumber(ticket).Print(),
            found.HandedOverAt is { } at ? day.DayOf(at) : day.Today,
            [],
            [.. Made(job), .. Cuts(job), .. PartsGiven(job)],
            "",
            [],
            StillHere(job),
            found.Species.Any(SafetyCautions.IsGame),
            [.. SafetyCautions.For(found.Species).Select(caution => new Caution(caution.Heading, caution.AtHome, caution.Source))],
            found.Collector is { } collector && collector != found.Owner ? collector : "");
        return File(PickupSummary.Draw([summary]), "application/pdf");
    }

    private IEnumerable<PickupItem> Made(int job) =>
        records.MadeOf(job).Where(made => made.IsReleased).Select(made => new PickupItem(made.Name, "", day.Print(made.Finished!.Value)));

    private IEnumerable<PickupItem> Cuts(int job)
    {
        var nets = records.WeighIns.AsNoTracking().Standing()
            .Where(weighIn => weighIn.JobId == job && weighIn.Kind == WeighInKind.CutPack)
            .Select(weighIn => weighIn.Net)
            .ToList();
        return nets.Count == 0 ? [] : [new PickupItem("Cuts", "", day.Print(day.Settings.BenchDivision.Sum(nets)))];
    }

    private IEnumerable<PickupItem> PartsGiven(int job) =>
        Parts(job).Where(part => part.GivenAt != null).Select(part => part.Kind).AsEnumerable().Select(kind => new PickupItem(Wording.Of(kind), "1", ""));

    private List<StillToCome> StillHere(int job) =>
        [.. Parts(job).Where(part => part.GivenAt == null).Select(part => part.Kind).AsEnumerable().Select(kind => new StillToCome(Wording.Of(kind), "Still in the shop"))];

    private IQueryable<Part> Parts(int job) =>
        records.Parts.AsNoTracking().Where(part => part.Animal.Shares.Any(share => share.JobId == job)).OrderBy(part => part.Id);
}
