using Microsoft.AspNetCore.Mvc;
using ProcessorDesk.Paper;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Web.Forms;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Counter;

/// <summary>The carcass tickets of a job, then those of the parts to give back, in one PDF to a ticket printer.</summary>
public sealed class TicketsModel(RecordsContext records, ShopDay shop) : StationPage
{
    public IActionResult OnGet(int job)
    {
        if (JobPapers.Of(records, job) is not { Animals.Count: > 0 } papers)
            return NotFound();
        var notices = HoldNotices.ByReason(records, papers.AllHolds);
        var carcasses = papers.Animals.Where(animal => animal.Code is not null).Select((animal, i) => Carcass(papers, animal, i, notices)).ToList();
        var parts = papers.Animals.SelectMany(animal => animal.Parts.Where(part => part.Code is not null).Select(part => Part(papers, animal, part.Part, part.Code!.Value.Print(), notices))).ToList();
        return File(AnimalTickets.Draw(carcasses, parts), "application/pdf");
    }

    private CarcassTicket Carcass(JobPapers papers, PaperAnimal animal, int i, IReadOnlyDictionary<HoldReason, HoldNotice> notices) => new(
        shop.Settings.Name, papers.Job.Owner.Name, Wording.Of(animal.Animal.Species), animal.Sex, animal.Tag, Number(papers),
        Position(papers, animal, i), shop.DayOf(animal.Animal.ArrivedAt), animal.Weight, Wording.Of(animal.Animal.ArrivalState),
        animal.Code!.Value.Print(), Holds(papers, animal, notices));

    private PartTicket Part(JobPapers papers, PaperAnimal animal, Part part, string code, IReadOnlyDictionary<HoldReason, HoldNotice> notices) => new(
        shop.Settings.Name, Wording.Of(part.Kind), papers.Job.Owner.Name, animal.Tag, Wording.Of(animal.Animal.Species), Number(papers),
        part.Note ?? "", shop.DayOf(animal.Animal.ArrivedAt), code, Holds(papers, animal, notices));

    private static string Position(JobPapers papers, PaperAnimal animal, int i) => string.Join(", ", new[]
    {
        papers.Animals.Count > 1 ? $"Animal {i + 1} of {papers.Animals.Count}" : null,
        animal.Share == Ratio.One ? null : $"share {animal.Share}",
    }.OfType<string>());

    private static List<HoldNotice> Holds(JobPapers papers, PaperAnimal animal, IReadOnlyDictionary<HoldReason, HoldNotice> notices) =>
        [.. animal.Holds.Concat(papers.Holds).Select(hold => hold.Reason).Distinct().Select(reason => notices[reason])];

    private static string Number(JobPapers papers) => papers.Job.Number.ToString(System.Globalization.CultureInfo.InvariantCulture);
}
