using System.Globalization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Paper;
using ProcessorDesk.Trade.Tickets;

namespace ProcessorDesk.Web.Pages.Freezer;

/// <summary>The label of a box. It bears the owner's name only where the owner wants it on the package.</summary>
public sealed class LabelModel(RecordsContext records, ShopDay shop) : StationPage
{
    public IActionResult OnGet(int id, LabelStock stock = LabelStock.FourBySix)
    {
        var box = records.Boxes.AsNoTracking().Where(one => one.Id == id && one.UnpackedAt == null)
            .Select(one => new
            {
                one.Number,
                Job = one.Job.Number,
                one.Job.Owner.Name,
                one.Job.Owner.NameOnPacks,
                IsAll = one.Job.BoxedAt != null,
                Boxes = records.Boxes.Where(other => other.JobId == one.JobId).Max(other => other.Number),
                Unpacked = records.Boxes.Any(other => other.JobId == one.JobId && other.UnpackedAt != null),
                one.Weighed.Net,
                one.PackedAt,
                one.Place,
                Ticket = records.Tickets.Where(ticket => ticket.Kind == TicketKind.Box && ticket.TargetId == one.Id && ticket.VoidedAt == null).Select(ticket => ticket.Number).First(),
                Contents = one.Contents.OrderBy(content => content.Position).Select(content => new { content.Position, content.Name, content.Packs }).ToList(),
            })
            .AsSingleQuery()
            .SingleOrDefault();
        if (box is null)
            return NotFound();
        // "2 of 4" only when it is said that these are all, and no number is missing.
        var number = box.IsAll && !box.Unpacked ? $"{box.Number} of {box.Boxes}" : box.Number.ToString(CultureInfo.InvariantCulture);
        var label = new BoxLabel(
            shop.Settings.Name,
            number,
            box.Job.ToString(CultureInfo.InvariantCulture),
            [.. box.Contents.Select(content => new ContentLine(content.Name, content.Packs == 1 ? "1 pack" : $"{content.Packs} packs"))],
            shop.Print(box.Net),
            shop.DayOf(box.PackedAt),
            box.Place ?? "",
            box.NameOnPacks ? box.Name : "",
            TicketCode.FromNumber(box.Ticket).Print());
        return File(BoxLabel.Draw([label], stock), "application/pdf");
    }
}
