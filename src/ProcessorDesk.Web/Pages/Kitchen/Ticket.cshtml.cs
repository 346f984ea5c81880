using Microsoft.AspNetCore.Mvc;
using ProcessorDesk.Paper;
using ProcessorDesk.Records;
using ProcessorDesk.Web.Forms;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Kitchen;

/// <summary>The ticket that goes with a batch through smokehouse and cooler.</summary>
public sealed class TicketModel(RecordsContext records, ShopDay shop) : StationPage
{
    public IActionResult OnGet(int id)
    {
        if (records.ReadBatch(id) is not { } batch || records.LinesOf(id).Ticket is not { } code)
            return NotFound();
        var jobs = batch.Placed().Select(entry => entry.Job).ToList();
        var ticket = new BatchTicket(
            shop.Settings.Name, $"{batch.Number}", batch.Product.Name, [.. jobs.Select(job => job.Owner.Name).Distinct()], batch.Pooling == Pooling.Pooled, jobs.Any(job => job.NoPork),
            shop.Print(shop.Settings.BenchDivision.Sum(batch.Loads.Select(load => load.Green))), shop.DayOf(batch.PlannedAt), code.Print(),
            [.. KitchenHold.OfBatch(records, id, batch.Loads, shop).Select(hold => hold.ToNotice())]);
        return File(BatchTicket.Draw([ticket]), "application/pdf");
    }
}
