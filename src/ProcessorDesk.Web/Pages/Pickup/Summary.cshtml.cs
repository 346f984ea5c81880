using System.Globalization;
using Microsoft.AspNetCore.Mvc;
using ProcessorDesk.Paper;
using ProcessorDesk.Trade.Safety;

namespace ProcessorDesk.Web.Pages.Pickup;

/// <summary>One hand-over on paper, the owner's copy and the shop's: what left, what left before, what is still to come, how to keep and cook it.</summary>
public sealed class SummaryModel(RecordsContext records, ShopDay day) : StationPage
{
    public IActionResult OnGet(int id)
    {
        if (HandOverFacts.Read(records, id) is not { } facts)
            return NotFound();
        var summary = new PickupSummary(
            new ShopHeader(day.Settings.Name, [.. new[] { day.Settings.Address, day.Settings.Phone }.OfType<string>()]),
            facts.Owner,
            facts.JobNumber.ToString(CultureInfo.InvariantCulture),
            facts.Claim.Print(),
            day.DayOf(facts.Now.At),
            Boxes(facts.Now),
            Parts(facts.Now),
            facts.Now.Boxes.Count == 0 ? "" : $"{(facts.Now.Boxes.Count == 1 ? "1 box" : $"{facts.Now.Boxes.Count} boxes")}, {day.Print(facts.Now.Together(day.Settings.BenchDivision))}",
            [.. facts.Before.Select(before => new EarlierHandOver(day.DayOf(before.At), before.To, Boxes(before), Parts(before)))],
            [.. facts.StillToCome.Select(missing => new StillToCome(missing.What, missing.Why))],
            facts.Species.Any(SafetyCautions.IsGame),
            [.. SafetyCautions.For(facts.Species).Select(caution => new Caution(caution.Heading, caution.AtHome, caution.Source))],
            facts.Now.To == facts.Owner ? "" : facts.Now.To);
        return File(PickupSummary.Draw([summary]), "application/pdf");
    }

    private List<PickupBox> Boxes(HandOverFacts.Left left) =>
    [
        .. left.Boxes.Select(box => new PickupBox(
            box.Number.ToString(CultureInfo.InvariantCulture), box.Ticket?.Print() ?? "", [.. box.Contents.Select(content => new ContentLine(content.Name, content.InWords))], day.Print(box.Net)))
    ];

    private static List<PickupItem> Parts(HandOverFacts.Left left) => [.. left.Parts.Select(part => new PickupItem(part.InWords, "1", "", part.Ticket?.Print() ?? ""))];
}
