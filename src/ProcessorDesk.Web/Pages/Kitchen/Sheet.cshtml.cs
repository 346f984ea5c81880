using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Paper;
using ProcessorDesk.Records;
using ProcessorDesk.Trade.Safety;
using ProcessorDesk.Web.Forms;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Kitchen;

/// <summary>The batch sheet on paper: each load with its amounts, lines to write on.</summary>
public sealed class SheetModel(RecordsContext records, ShopDay shop) : StationPage
{
    public IActionResult OnGet(int id)
    {
        var parts = records.LoadParts.Where(part => part.Load.BatchId == id).WithWhose()
            .Include(part => part.Load).ThenInclude(load => load.Batch).ThenInclude(batch => batch.FormulaVersion).ThenInclude(formula => formula.Ingredients)
            .ToList();
        if (parts.Count == 0 || Ticketed(id) is not { Code: { } code } ticketed)
            return NotFound();
        var batch = parts[0].Load.Batch;
        var entries = batch.Placed();
        var loads = SheetLoad.Of(batch, LugsOf(batch), shop.Settings);
        var sheet = new BatchSheet(
            shop.Settings.Name, batch.Product.Name, $"{batch.Number}", code.Print(), batch.Pooling == Pooling.Pooled, loads.Any(load => load.Cure is not null),
            entries.Any(entry => entry.Job.NoPork),
            [.. entries.GroupBy(entry => entry.JobId).Select(job => new BatchOwner(
                job.First().Job.Owner.Name, $"{job.First().Job.Number}",
                shop.Print(shop.Settings.BenchDivision.Sum(batch.Loads.SelectMany(load => load.Parts).Where(part => part.Entry.JobId == job.Key).Select(part => part.Lean)))))],
            PrintedDate.Of(shop.DayOf(batch.PlannedAt)), $"version {batch.FormulaVersion.Number}", shop.Local(shop.Now),
            [.. KitchenHold.OfBatch(records, id, batch.Loads, shop).Select(hold => hold.ToNotice())],
            [.. SafetyCautions.For(ticketed.Species).Select(caution => new Caution(caution.Heading, caution.AtTable, caution.Source))],
            [.. AllergenWords.Shown(batch.FormulaVersion.Contains, shop.Settings).Select(Wording.Of).Concat(batch.FormulaVersion.Ingredients.Select(line => line.AllergenWords).OfType<string>()).Distinct()],
            loads, shop.Print(shop.Settings.BenchDivision.Sum(batch.Loads.Select(load => load.Green))), SheetAfter.Of(batch, shop));
        return File(BatchSheet.Draw([sheet]), "application/pdf");
    }

    /// <summary>The batch's ticket, and the animals its meat is from; one query.</summary>
    private (Trade.Tickets.TicketCode? Code, IReadOnlyList<Trade.Species> Species) Ticketed(int id)
    {
        var rows =
            (from ticket in records.Tickets.AsNoTracking()
             where ticket.Kind == TicketKind.Batch && ticket.TargetId == id && ticket.VoidedAt == null
             from entry in records.BatchEntries.Where(entry => entry.BatchId == id)
             from share in records.Shares.Where(share => share.JobId == entry.JobId)
             select new { ticket.Number, share.Animal.Species }).ToList();
        return (rows.Count == 0 ? null : Trade.Tickets.TicketCode.FromNumber(rows[0].Number), [.. rows.Select(row => row.Species).Distinct()]);
    }

    /// <summary>The lugs the owners' lean lies in, and what of it is free for this batch; one query.</summary>
    private List<SheetLug> LugsOf(Batch batch)
    {
        var jobs = batch.Placed().Select(entry => entry.JobId).Distinct().ToList();
        return
        [
            .. records.Fillings.AsNoTracking()
                .Where(filling => jobs.Contains(filling.JobId)
                    && (filling.EmptiedAt == null || records.Draws.Any(draw => draw.FillingId == filling.Id && draw.StruckAt == null && draw.Load.BatchId == batch.Id)))
                .OrderBy(filling => filling.Id)
                .Select(filling => new SheetLug(
                    filling.JobId, filling.Lug.Number,
                    records.WeighIns.Where(one => one.FillingId == filling.Id && one.Kind == WeighInKind.LeanTrim && !records.Strikes.Any(strike => strike.WeighInId == one.Id)).Sum(one => one.Net.Milligrams)
                        - records.Draws.Where(draw => draw.FillingId == filling.Id && draw.StruckAt == null && draw.Load.BatchId != batch.Id).Sum(draw => draw.Weighed.Milligrams)))
        ];
    }
}
