using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Paper;

namespace ProcessorDesk.Web.Pages.Counter;

/// <summary>The link to an owner's page, to be shown, scanned, copied or printed; and a new one where the old got about.</summary>
public sealed class OwnersPageModel(RecordsContext records, Verbs verbs, ShopDay day, OwnerLinks links) : StationPage
{
    public int Id { get; private set; }

    public int Number { get; private set; }

    public string Owner { get; private set; } = "";

    /// <summary>Null while no public address was tried and led here.</summary>
    public string? Address { get; private set; }

    public string? Untried => day.Settings.PublicAddress;

    public string Code => CodePicture.Svg(Address!.ToUpperInvariant(), $"Code of the link of job {Number}");

    public IActionResult OnGet(int job) => Load(job) ? Page() : NotFound();

    public IActionResult OnPostRenew(int job)
    {
        if (!Load(job))
            return NotFound();
        var outcome = verbs.Run("renew an owner's link", Hand, FormKey, _ =>
        {
            records.Jobs.Single(one => one.Id == job).RenewLink();
            return Outcome.Done();
        });
        if (outcome.IsDone)
        {
            Say("This is a new link. The one before leads nowhere any more.");
            return RedirectToPage(new { job });
        }

        ModelState.Add(outcome.Findings);
        return Page();
    }

    private bool Load(int id)
    {
        var job = records.Jobs.AsNoTracking().Where(one => one.Id == id).Select(one => new { one.Number, one.LinkGeneration, Owner = one.Owner.Name }).SingleOrDefault();
        if (job is null)
            return false;
        (Id, Number, Owner, Address) = (id, job.Number, job.Owner, links.Address(day.Settings, job.Number, job.LinkGeneration));
        return true;
    }
}
