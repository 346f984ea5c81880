using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Paper;
using ProcessorDesk.Records;
using ProcessorDesk.Web.Forms;
using ProcessorDesk.Web.Hosting;
using ProcessorDesk.Web.Pages.Shared;

namespace ProcessorDesk.Web.Pages.Cutting;

/// <summary>The ticket of a lug as it is filled now.</summary>
public sealed class LugModel(RecordsContext records, ShopDay shop) : StationPage
{
    public IActionResult OnGet(int id)
    {
        var filling = records.Fillings.AsNoTracking().Where(one => one.Id == id)
            .Select(one => new
            {
                Lug = one.Lug.Number,
                one.JobId,
                JobNumber = one.Job.Number,
                Owner = one.Job.Owner.Name,
                one.OpenedAt,
                Tags = one.Animals.Select(animal => records.Animals.Where(known => known.Id == animal.AnimalId).Select(known => known.Tag).FirstOrDefault() ?? "no tag").ToList(),
                Kinds = records.WeighIns.Where(weighIn => weighIn.FillingId == one.Id && !records.Strikes.Any(strike => strike.WeighInId == weighIn.Id)).Select(weighIn => weighIn.Kind).ToList(),
            })
            .SingleOrDefault();
        var ticket = records.Tickets.AsNoTracking()
            .Where(one => one.Kind == TicketKind.Filling && one.TargetId == id && one.VoidedAt == null)
            .Select(one => (long?)one.Number)
            .FirstOrDefault();
        if (filling is null || ticket is not { } number)
            return NotFound();
        // A hold of one animal holds the lug it is in.
        var holds = StandingHold.Of(records, records.Holds.AsNoTracking().Standing()
            .Where(hold => hold.JobId == filling.JobId
                || records.Fillings.Where(one => one.Id == id).SelectMany(one => one.Animals).Select(animal => (int?)animal.AnimalId).Contains(hold.AnimalId)), shop);
        var paper = new LugTicket(
            shop.Settings.Name, $"{filling.Lug}", filling.Owner, filling.Tags, $"{filling.JobNumber}",
            string.Join(", ", filling.Kinds.Distinct().Order().Select(Wording.Of)),
            shop.DayOf(filling.OpenedAt), Trade.Tickets.TicketCode.FromNumber(number).Print(),
            [.. holds.Select(hold => hold.ToNotice())]);
        return File(LugTicket.Draw([paper]), "application/pdf");
    }
}
