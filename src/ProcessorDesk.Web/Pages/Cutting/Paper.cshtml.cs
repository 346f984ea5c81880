using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Paper;
using ProcessorDesk.Records;
using ProcessorDesk.Trade.Safety;
using ProcessorDesk.Web.Forms;
using ProcessorDesk.Web.Hosting;
using ProcessorDesk.Web.Pages.Shared;

namespace ProcessorDesk.Web.Pages.Cutting;

/// <summary>The cut sheet on paper, with its revision.</summary>
public sealed class PaperModel(RecordsContext records, ShopDay shop) : StationPage
{
    private const int LugBoxes = 8;

    public IActionResult OnGet(int id)
    {
        if (SheetContent.Find(records, id, shop) is not { } job || Code(id) is not { } code)
            return NotFound();
        var weights = job.Weights([], shop.Settings.BenchDivision).Animals.ToDictionary(animal => animal.AnimalId, WeightWords);
        var holds = StandingHold.Of(records, records.Holds.AsNoTracking().Standing().OnJob(records, id), shop);
        var sheet = new CutSheet(
            shop.Settings.Name, job.Revision, shop.Local(shop.Now), job.Owner, $"{job.Number}", code,
            job.Promised is { } day ? PrintedDate.Of(day) : "", job.NoPork,
            [.. job.Animals.Select(animal => new CutSheetAnimal(animal.Name, animal.Tag ?? "no tag", animal.Share, weights[animal.Id], string.Join(", ", animal.GiveBack)))],
            [.. holds.Select(hold => hold.ToNotice())],
            [.. job.Cuts.Select(cut => new CutSheetLine(cut.Group, cut.Instruction, cut.Pack))],
            [.. CutMenu.Checklist.Select(item => item.Name)],
            [.. job.Asks.Select(ask => new CutSheetAsk(ask.Product, ask.Wanted, ask.Blend))],
            LugBoxes, [.. SafetyCautions.For(job.Animals.Select(animal => animal.Species)).Select(caution => new Caution(caution.Heading, caution.AtTable, caution.Source))], job.Notes ?? "");
        return File(CutSheet.Draw([sheet]), "application/pdf");
    }

    /// <summary>The job's own ticket; that of its first animal where it has none. Null where nothing of it has a ticket.</summary>
    private string? Code(int jobId) =>
        records.Tickets.AsNoTracking()
            .Where(ticket => ticket.VoidedAt == null
                && (ticket.Kind == TicketKind.Claim && ticket.TargetId == jobId
                    || ticket.Kind == TicketKind.Carcass && records.Shares.Where(share => share.JobId == jobId).Select(share => share.AnimalId).Contains(ticket.TargetId)))
            .OrderBy(ticket => ticket.Kind).ThenBy(ticket => ticket.Number)
            .Select(ticket => (long?)ticket.Number)
            .FirstOrDefault() is { } number
            ? Trade.Tickets.TicketCode.FromNumber(number).Print()
            : null;

    private string WeightWords(AnimalWeights animal) => animal switch
    {
        { ChilledHanging: { } chilled } => $"{shop.PrintRail(chilled)} chilled",
        { HotHanging: { } hot } => $"{shop.PrintRail(hot)} hot",
        { Arrival: { } arrival } => $"{shop.PrintRail(arrival)} {Wording.Of(animal.ArrivalState).ToLowerInvariant()}",
        _ => "not weighed",
    };
}
