using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Web.Forms;
using ProcessorDesk.Web.Hosting;
using ProcessorDesk.Web.Pages.Trace;

namespace ProcessorDesk.Web.Pages.Counter;

/// <summary>What is known of one animal: put right or completed later, with the holds that follow from it.</summary>
public sealed class AnimalModel(RecordsContext records, Verbs verbs, ShopDay shop) : StationPage
{
    [BindProperty]
    public AnimalInput Input { get; set; } = new();

    [BindProperty]
    public HoldInput Hold { get; set; } = new();

    public Animal Animal { get; private set; } = null!;

    public IReadOnlyList<Share> Shares { get; private set; } = [];

    public IReadOnlyList<WeighIn> Weights { get; private set; } = [];

    public bool IsStale { get; private set; }

    public int? ReleaseOf { get; private set; }

    public ShopDay Shop => shop;

    public string? ToTrace => TraceAddress.IfOpen(SignedIn, TracedKind.Animal, Animal.Id);

    public HoldList Holds => new([.. Animal.Holds], SignedIn.Role == StaffRole.Manager, Hold, "this animal");

    private WeighIn? Arrival => Weights.LastOrDefault(weighIn => weighIn.Strike is null);

    public IActionResult OnGet(int id)
    {
        if (!Load(id))
            return NotFound();
        Input = KeptOrder.Of(Animal, Arrival);
        Version = Animal.Version;
        return Page();
    }

    public IActionResult OnPost(int id)
    {
        if (!Load(id))
            return NotFound();
        var facts = Input.Read(ModelState, "Input", null, shop.Today);
        var weighedAgain = facts.ArrivalWeight is { } weight && Arrival is { } before && before.Net != weight;
        if (weighedAgain && Input.WeightBecause.Trim() == "")
            ModelState.AddModelError("Input.WeightBecause", $"The weight was {Arrival!.KeyedDivision.Print(Arrival.Net)}. Say why it is changed; the old one stays, struck out.");
        if (!ModelState.IsValid)
            return Page();
        return Finish(id, "put an animal's details right", "The animal is saved.", act =>
        {
            var animal = records.Animals.Include(one => one.Holds).Include(one => one.Parts).Single(one => one.Id == id);
            return animal.Version == Version ? facts.Change(records, animal, shop.Today, act) : Outcome.Stale();
        });
    }

    public IActionResult OnPostHold(int id)
    {
        if (!Load(id))
            return NotFound();
        return Finish(id, "put an animal on hold", "The animal is on hold.", act =>
        {
            records.Animals.Include(one => one.Holds).Single(one => one.Id == id).PutOnHold(Hold.Reason, Hold.Note, act.Now, act.Hand.Id);
            return Outcome.Done(id);
        });
    }

    public IActionResult OnPostRelease(int id, int hold)
    {
        ReleaseOf = hold;
        if (!Load(id))
            return NotFound();
        return Finish(id, "release a hold", "The hold is released.", act => HoldActs.Release(records, act, hold, SignedIn.Role, Hold.Because));
    }

    private IActionResult Finish(int id, string verb, string said, Func<Act, Outcome> work)
    {
        var outcome = verbs.Run(verb, Hand, FormKey, work);
        if (outcome.IsDone)
        {
            Say(said);
            return RedirectToPage(new { id });
        }

        ModelState.Add(outcome.Findings, outcome.Findings.Any(finding => finding.Field == "Because") ? "Hold" : "Input");
        IsStale = outcome.IsStale;
        Load(id);
        if (ReleaseOf is not null || IsStale)
        {
            if (ReleaseOf is not null)
                Input = KeptOrder.Of(Animal, Arrival);
            Version = Animal.Version;
            ModelState.Remove(nameof(Version));
        }

        return Page();
    }

    private bool Load(int id)
    {
        if (records.Animals.AsNoTracking().Include(one => one.Holds).Include(one => one.Parts).AsSingleQuery().SingleOrDefault(one => one.Id == id) is not { } animal)
            return false;
        Animal = animal;
        Shares = [.. records.Shares.AsNoTracking().Include(share => share.Job).Where(share => share.AnimalId == id).OrderBy(share => share.JobId)];
        Weights = [.. records.WeighIns.AsNoTracking().Include(weighIn => weighIn.Strike).Where(weighIn => weighIn.AnimalId == id && weighIn.Kind == WeighInKind.Arrival).OrderBy(weighIn => weighIn.Id)];
        return true;
    }
}
