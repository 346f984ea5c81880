using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Web.Forms;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Counter;

/// <summary>An owner's address and the like, and what was ever taken in for that owner.</summary>
public sealed class OwnerModel(RecordsContext records, Verbs verbs, ShopDay shop) : StationPage
{
    [BindProperty]
    public OwnerInput Input { get; set; } = new();

    /// <summary>As it is kept; beside what was typed where somebody else saved it meanwhile.</summary>
    public Owner Kept { get; private set; } = null!;

    public bool IsStale { get; private set; }

    public IReadOnlyList<OwnerJob> Jobs { get; private set; } = [];

    public ShopDay Shop => shop;

    public IActionResult OnGet(int id)
    {
        if (!Load(id))
            return NotFound();
        Input = new OwnerInput { Name = Kept.Name, Phone = Kept.Phone, Address = Kept.PostalAddress ?? "", Email = Kept.Email ?? "", NameOnPacks = Kept.NameOnPacks };
        Version = Kept.Version;
        return Page();
    }

    public IActionResult OnPost(int id)
    {
        if (!Load(id))
            return NotFound();
        Input.Id = null;
        Input.Check(ModelState, "Input");
        if (!ModelState.IsValid)
            return Page();
        var outcome = verbs.Run("change an owner", Hand, FormKey, act =>
        {
            var owner = records.Owners.Single(one => one.Id == id);
            if (owner.Version != Version)
                return Outcome.Stale();
            owner.Describe(Input.Name, Input.Phone, Input.Address, Input.Email, Input.NameOnPacks);
            return Outcome.Done(id);
        });
        if (outcome.IsDone)
        {
            Say("The owner is saved.");
            return RedirectToPage(new { id });
        }

        ModelState.Add(outcome.Findings);
        IsStale = outcome.IsStale;
        Load(id);
        Version = Kept.Version;
        ModelState.Remove(nameof(Version));
        return Page();
    }

    private bool Load(int id)
    {
        if (records.Owners.AsNoTracking().SingleOrDefault(owner => owner.Id == id) is not { } kept)
            return false;
        Kept = kept;
        Jobs =
        [
            .. records.Jobs.AsNoTracking().Where(job => job.OwnerId == id).OrderByDescending(job => job.TakenAt)
                .Select(job => new { job.Id, job.Number, job.TakenAt, job.Shares.Count, job.DetailsComplete, job.CuttingStartedAt, job.CuttingDoneAt, job.SplitAgreedAt, job.MadeAt, job.BoxedAt, job.HandedOverAt })
                .AsEnumerable()
                .Select(job => new OwnerJob(job.Id, job.Number, job.TakenAt, job.Count,
                    Job.StageOf(job.DetailsComplete, job.CuttingStartedAt, job.CuttingDoneAt, job.SplitAgreedAt, job.MadeAt, job.BoxedAt, job.HandedOverAt)))
        ];
        return true;
    }

    public sealed record OwnerJob(int Id, int Number, DateTime TakenAt, int Animals, JobStage Stage);
}
