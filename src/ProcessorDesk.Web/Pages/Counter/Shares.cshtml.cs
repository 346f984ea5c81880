using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Web.Forms;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Counter;

/// <summary>Divides one animal among jobs: changes fractions, and opens another owner's job for a share.</summary>
public sealed class SharesModel(RecordsContext records, Verbs verbs, ShopDay shop) : StationPage
{
    [BindProperty]
    public SharesInput Input { get; set; } = new();

    public Animal Animal { get; private set; } = null!;

    public string Focus { get; private set; } = "";

    public IActionResult OnGet(int animal)
    {
        if (!Load(animal))
            return NotFound();
        Input.Shares = [.. Animal.Shares.OrderBy(share => share.JobId).Select(share => new ShareInput { JobId = share.JobId, Fraction = share.Fraction.ToString() })];
        Version = Animal.Version;
        return Page();
    }

    public IActionResult OnPost(int animal)
    {
        if (Input.Owner.IsLooking)
            return OnPostFind(animal);
        if (!Load(animal))
            return NotFound();
        var facts = Input.Read(ModelState);
        if (!ModelState.IsValid)
            return Page();
        var outcome = verbs.Run("divide an animal", Hand, FormKey, act => records.ShareOut(
            animal, Version, facts.Each, facts.Another is { } fraction ? (Input.Owner.Taken(), fraction) : null, shop.Today, act));
        if (outcome.IsDone)
            return After(animal, outcome);
        ModelState.Add(outcome.Findings);
        Load(animal);
        return Page();
    }

    public IActionResult OnPostFind(int animal)
    {
        Input.Owner.Look(records);
        Focus = Input.Owner.Matches!.Found.Count > 0 ? "match" : "name";
        return Again(animal);
    }

    public IActionResult OnPostOwners(int animal) =>
        Partial("_OwnerMatches", new OwnerMatches(Input.Owner.Search.Trim(), OwnerMatch.Find(records, Input.Owner.Search)));

    public IActionResult OnPostOwner(int animal, int id)
    {
        Input.Owner.Id = id;
        return Again(animal);
    }

    public IActionResult OnPostOtherOwner(int animal)
    {
        (Input.Owner.Id, Input.Owner.Search, Focus) = (null, "", "search");
        return Again(animal);
    }

    private RedirectToPageResult After(int id, Outcome outcome)
    {
        Load(id);
        var sum = Animal.SharesSum;
        var rest = sum == Ratio.One ? "" : $" They come to {sum} until now: share out the rest before the first knife.";
        Say(outcome.Result == "" ? $"The shares are saved.{rest}" : $"The other owner's job is opened. Now put in what is to be made of that share.{rest}");
        return outcome.Result == "" ? RedirectToPage(new { animal = id }) : RedirectToPage("/Counter/Order", new { job = outcome.Result });
    }

    private IActionResult Again(int animal)
    {
        ModelState.ShowChanged();
        return Load(animal) ? Page() : NotFound();
    }

    private bool Load(int id)
    {
        if (records.Animals.AsNoTracking().Include(one => one.Shares).ThenInclude(share => share.Job).ThenInclude(job => job.Owner).AsSplitQuery().SingleOrDefault(one => one.Id == id) is not { } animal)
            return false;
        Animal = animal;
        Input.Owner.Chosen = Input.Owner.Id is { } owner ? OwnerMatch.Of(records, owner) : null;
        return true;
    }
}
