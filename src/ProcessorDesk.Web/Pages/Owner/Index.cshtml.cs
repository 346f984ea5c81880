using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using ProcessorDesk.Trade.Safety;
using ProcessorDesk.Trade.Yields;

namespace ProcessorDesk.Web.Pages.OwnersPage;

/// <summary>What an owner sees of the job from home: where it is, what became of it, what is owed. Opened by its link alone, and only looked at.</summary>
[LookOnly]
[IgnoreAntiforgeryToken]
public sealed class IndexModel(RecordsContext records, ShopDay day, OwnerLinks links, WrongLinks wrong) : PageModel
{
    public ShopSettings Shop => day.Settings;

    /// <summary>Null where the link is wrong, altered or renewed, whichever it is.</summary>
    public OwnersJob? Job { get; private set; }

    public IReadOnlyList<OwnersStep> Steps { get; private set; } = [];

    public bool TooManyTries { get; private set; }

    public ScaleDivision Bench => Shop.BenchDivision;

    /// <summary>Animals of which an owner may ask whether they were tested: the deer family, and whatever was.</summary>
    public IEnumerable<OwnersAnimal> Tested => Job!.Animals.Where(animal => SafetyCautions.IsCervid(animal.Animal.Species) || animal.Test != DiseaseTest.NotRequired);

    public bool IsGame => Job!.Animals.Any(animal => SafetyCautions.IsGame(animal.Animal.Species));

    public IReadOnlyList<SafetyCaution> Cautions => SafetyCautions.For(Job!.Animals.Select(animal => animal.Animal.Species));

    public IActionResult OnGet(string link)
    {
        if (wrong.AreTooMany(HttpContext.Connection.RemoteIpAddress))
        {
            TooManyTries = true;
            return Shown(StatusCodes.Status429TooManyRequests);
        }

        var number = OwnerLinks.JobNumberIn(link);
        var facts = JobFacts.Read(records, number ?? 0);
        // Proved in any case, so that a job that is not there takes as long as one that is.
        if (!links.Fits(link, number ?? 0, facts?.LinkGeneration ?? 0) || facts is null)
        {
            wrong.Note(HttpContext.Connection.RemoteIpAddress);
            return Shown(StatusCodes.Status404NotFound);
        }

        Job = OwnersJob.Read(records, facts, Bench);
        Steps = OwnersStep.Of(Job, day);
        return Page();
    }

    public string Print(Weight weight) => Bench.Print(weight);

    public string Date(DateTime utc) => day.Date(utc);

    public string Date(DateOnly date) => day.Date(date);

    /// <summary>What is still to be carried home.</summary>
    public Weight StillHere => Bench.Sum(Job!.Boxes.Where(box => box.TakenAt is null).Select(box => box.Net));

    public string Now => day.Moment(day.Now);

    /// <summary>"20.13 lb", or "about 20.00 lb (18.90 to 21.30)"; empty before anything is divided.</summary>
    public string YouGet(OwnersProduct product) => product switch
    {
        { State: KitchenState.Asked } => "",
        { State: KitchenState.ThrownOut } => "nothing",
        { Finished: { } finished } => Print(finished),
        _ when product.Low == product.High => Print(product.Typical),
        _ => $"about {Print(product.Typical)} ({Bench.Print(product.Low)} to {Bench.Print(product.High)})",
    };

    /// <summary>"24 packs of Ring sausage".</summary>
    public static string Packs((string Name, int Packs) content) =>
        FormattableString.Invariant($"{content.Name}, {content.Packs} {(content.Packs == 1 ? "pack" : "packs")}");

    public static string Sign(WayKind kind) => kind switch
    {
        WayKind.Stage => "",
        WayKind.Loss => "− ",
        WayKind.Added => "+ ",
    };

    /// <summary>What of the product is the owner's own and what came in.</summary>
    public string MadeOf(OwnersProduct product) => $"{Print(product.Lean)} of your own meat" + (product.AddedFat.IsPositive, product.Green > product.MeatBlock) switch
    {
        (true, true) => $", {Print(product.AddedFat)} of pork or fat and the seasoning added",
        (true, false) => $", {Print(product.AddedFat)} of pork or fat added",
        (false, true) => " and seasoning",
        (false, false) => ", nothing added",
    };

    private PageResult Shown(int status)
    {
        Response.StatusCode = status;
        return Page();
    }
}
