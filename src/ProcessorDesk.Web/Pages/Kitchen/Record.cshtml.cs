using Microsoft.AspNetCore.Mvc;
using ProcessorDesk.Paper;
using ProcessorDesk.Records;
using ProcessorDesk.Trade.Curing;
using ProcessorDesk.Web.Forms;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Kitchen;

/// <summary>The process record on paper: what went in, what was read, what the published rules say of it, who did what.</summary>
public sealed class RecordModel(RecordsContext records, ShopDay shop) : StationPage
{
    private const string Practice = "common practice, no source";

    public IActionResult OnGet(int id)
    {
        if (BatchView.Find(records, id, shop) is not { } view || view.Batch.MixedAt is null)
            return NotFound();
        var batch = view.Batch;
        var record = new ProcessRecord(
            shop.Settings.Name, batch.Product.Name, $"{batch.Number}", Code(view), Standing(batch), $"version {batch.FormulaVersion.Number}", shop.Local(shop.Now),
            [.. view.Holds.Select(hold => hold.ToNotice())],
            [.. view.GoingBack.Select(one => new ProcessOwner(
                one.Job.Owner.Name, $"{one.Job.Number}", shop.Print(one.Green), one.Finished is { } finished ? shop.Print(finished) : "–", $"{one.Pieces}"))],
            RecordLoads.Of(view, shop),
            RecordParts.Of(view, shop),
            RecordWords.Rules(batch.RulesInForce, view.Needs),
            batch.Programme?.Split('\n', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries) ?? [],
            [.. view.Dispositions.Select(one => new ProcessEnding(
                Wording.Of(one.Kind) + (one.Stage is { } stage ? $", {Wording.Of(stage).ToLowerInvariant()}" : ""), one.Name, PrintedDate.Of(one.On), one.Reference, $"{shop.Moment(one.At)}, {one.By}"))],
            Steps(view),
            RecordWords.Balance(view.Balance!, shop),
            batch.Product.Cured ? [.. CuringCautions.All.Select(caution => new Caution("", caution.Text, caution.Source == Practice ? "" : caution.Source))] : []);
        return File(ProcessRecord.Draw([record]), "application/pdf");
    }

    /// <summary>The code it went through the shop with, though nobody scans it any more.</summary>
    private static string Code(BatchView view) =>
        Trade.Tickets.TicketCode.FromNumber(view.Lines.Of(BatchLineKind.Ticket).Last().Amount).Print();

    private string Standing(Batch batch) => batch.Stage switch
    {
        BatchStage.Planned => "Planned",
        BatchStage.Mixed => "Open",
        BatchStage.Released => "Released " + shop.Moment(batch.ReleasedAt!.Value),
        BatchStage.Ended => $"Thrown out {shop.Moment(batch.EndedAt!.Value)}: {batch.EndedBecause}",
    };

    private List<ProcessStep> Steps(BatchView view) =>
    [
        .. view.Lines.All.Where(line => line.Kind is BatchLineKind.Mixed or BatchLineKind.CureAgain or BatchLineKind.Step or BatchLineKind.Finished or BatchLineKind.LeftInMachines)
            .Select(line => new ProcessStep(RecordWords.Step(line, view, shop), shop.Moment(line.TakenAt), line.By, line.Stands
                ? line.Because ?? ""
                : $"{(line.Kind == BatchLineKind.Step ? "Undone" : "Struck out")} by {line.StruckBy}, {shop.Moment(line.StruckAt!.Value)}: {line.Because}"))
    ];
}
