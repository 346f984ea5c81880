using System.Globalization;
using Microsoft.AspNetCore.Mvc;
using ProcessorDesk.Paper;
using ProcessorDesk.Records;
using ProcessorDesk.Web.Door;
using ProcessorDesk.Web.Forms;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Counter;

/// <summary>What the owner takes home: the claim on the job, with the order, the forecast and the terms.</summary>
public sealed class ClaimModel(RecordsContext records, ShopDay day, OwnerLinks links) : StationPage
{
    public IActionResult OnGet(int job)
    {
        if (JobPapers.Of(records, job) is not { Claim: { } claim } papers)
            return NotFound();
        var settings = day.Settings;
        var outlook = KeptOrder.Outlook(records, day, papers);
        var notices = HoldNotices.ByReason(records, papers.AllHolds);
        var ticket = new ClaimTicket(
            new ShopHeader(settings.Name, [.. new[] { settings.Address, settings.Phone }.OfType<string>()]),
            papers.Job.Owner.Name,
            papers.Job.Number.ToString(CultureInfo.InvariantCulture),
            claim.Print(),
            day.DayOf(papers.Job.TakenAt),
            [.. papers.Animals.Select(animal => new ClaimItem(What(animal), animal.Tag, Wording.Of(animal.Animal.ArrivalState), animal.Weight))],
            [.. papers.Animals.SelectMany(animal => animal.Parts.Select(part => Wording.Of(part.Part.Kind))).Distinct()],
            [.. papers.AllHolds.Select(hold => notices[hold.Reason])],
            [.. Order(papers)],
            Forecast(outlook),
            papers.Job.PromisedFor is { } promise ? PrintedDate.Of(promise) : "We will call you",
            string.Join(", ", papers.Deposits.Select(payment => $"{payment.Amount.Print()} paid, {Wording.Of(payment.Method).ToLowerInvariant()}")),
            outlook.Price.Print(),
            $"Bring this ticket, or tell us your name and the job number.{(settings.Phone is { } phone ? $" We call when it is ready; questions: {phone}." : " We call when it is ready.")}",
            [.. (settings.Terms ?? "").Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)],
            links.Address(settings, papers.Job.Number, papers.Job.LinkGeneration) ?? "");
        return File(ClaimTicket.Draw([ticket]), "application/pdf");
    }

    private static string What(PaperAnimal animal) => animal.Share == Trade.Ratio.One ? animal.What : $"{animal.What}, {animal.Share}";

    /// <summary>Muscle groups that become the same stand on one line; the asks follow in their order.</summary>
    private IEnumerable<Fact> Order(JobPapers papers)
    {
        foreach (var same in papers.Cuts.GroupBy(JobPapers.Wanted))
            yield return new Fact(string.Join(", ", same.Select(line => CutMenu.GroupName(line.Group))), same.Key);
        foreach (var (ask, i) in papers.Asks.Select((ask, i) => (ask, i)))
            yield return new Fact($"{i + 1}. {ask.Product}", JobPapers.Wanted(ask.Ask, day.Settings.BenchDivision));
        if (papers.Job.NoPork)
            yield return new Fact("No pork", "in anything");
        yield return new Fact(Wording.Of(papers.Job.Pooling), Wording.Of(papers.Job.Wrap));
    }

    private static string Forecast(Outlook outlook) => outlook.Lean.Boneless is { } boneless
        ? $"Boneless meat to expect: {boneless.Print()}. Shot damage and trimming give less. Source: {boneless.Source}."
        : string.Join(' ', outlook.Lean.Gaps);
}
