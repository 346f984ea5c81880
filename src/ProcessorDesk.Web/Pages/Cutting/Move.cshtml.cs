using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Web.Forms;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Cutting;

/// <summary>A weight of the table that was booked to the wrong job or animal, moved to the right one: struck out and booked anew in one go.</summary>
public sealed class MoveModel(RecordsContext records, Verbs verbs, ShopDay shop) : StationPage
{
    [BindProperty]
    public InputModel Input { get; set; } = new();

    public MovedWeight Weight { get; private set; } = null!;

    /// <summary>The job it is moved to, as typed; null where none is typed, or there is none of that number.</summary>
    public TargetJob? Target { get; private set; }

    public IEnumerable<Choice> Animals => (Target?.Animals ?? []).Select(animal => new Choice($"{animal.Id}", TableAnimal.NameOf(animal.Species, animal.Tag)));

    public IActionResult OnGet(int id) => Load(id) ? Page() : NotFound();

    /// <summary>Whose job the number is, and its animals, before anything is moved.</summary>
    public IActionResult OnPostLook(int id)
    {
        if (!Load(id))
            return NotFound();
        ReadTarget();
        return Page();
    }

    public IActionResult OnPost(int id)
    {
        if (!Load(id))
            return NotFound();
        ReadTarget();
        if (Target is { Animals.Count: > 1 } && Input.AnimalIds.Count == 0)
            ModelState.AddModelError("Input.AnimalIds", "Choose whose meat it is.");
        if (Input.Because.Trim() == "")
            ModelState.AddModelError("Input.Because", "Say how it came to be booked wrong.");
        if (!ModelState.IsValid)
            return Page();

        List<int> animals = Target!.Animals is [var only] ? [only.Id] : Input.AnimalIds;
        var outcome = verbs.Run("move a weight", Hand, FormKey, act => records.MoveWeighIn(new MoveOrder(id, Target.Id, animals, Input.Because), act));
        ModelState.Add(outcome.Findings);
        if (!ModelState.IsValid)
            return Page();
        Say($"{Weight.What}, {Weight.Net}: moved from job {Weight.JobNumber} to job {Target.Number}.{(Weight.Lug is { } lug ? $" Lug {lug} has a new ticket." : "")}{Touched()}");
        return RedirectToPage("Sheet", new { id = Target.Id });
    }

    /// <summary>What the batches its meat is in say now: on hold, and whose meat is touched; empty where it is in none.</summary>
    private string Touched() => string.Concat(Weight.Batches.Select(batch =>
        $" Batch {batch.Number} {(records.Holds.Standing().Any(hold => hold.BatchId == batch.Id) ? "is on hold" : "names the right animal now")}. Touched: {string.Join("; ", records.TouchedBy(batch.Id).OrderBy(job => job.Number).Select(job => $"{job.Owner.Name}, job {job.Number}").ToList())}."));

    private void ReadTarget()
    {
        if (!CountText.Parse(Input.JobNumber).Try(out var number, out _))
        {
            ModelState.AddModelError("Input.JobNumber", "Type the number of the job it belongs to.");
            return;
        }

        Target = records.Jobs.AsNoTracking().Where(job => job.Number == number)
            .Select(job => new TargetJob(
                job.Id, job.Number, job.Owner.Name, records.Shares.Where(share => share.JobId == job.Id).OrderBy(share => share.AnimalId)
                    .Select(share => new TargetAnimal(share.AnimalId, share.Animal.Species, share.Animal.Tag)).ToList()))
            .AsSingleQuery().SingleOrDefault();
        if (Target is null)
            ModelState.AddModelError("Input.JobNumber", $"There is no job {number}. Look at its cut sheet or ticket.");
    }

    private bool Load(int id)
    {
        var found = records.WeighIns.AsNoTracking().Where(one => one.Id == id && one.JobId != null && one.Kind != WeighInKind.Box)
            .Select(one => new
            {
                one.Kind,
                one.Net,
                one.Note,
                one.Packs,
                one.FillingId,
                one.At,
                JobId = one.JobId!.Value,
                one.Job!.Number,
                Owner = one.Job.Owner.Name,
                Lug = one.Filling == null ? (int?)null : one.Filling.Lug.Number,
                By = records.Staff.Where(staff => staff.Id == one.ById).Select(staff => staff.Initials).First(),
                Because = one.Strike == null ? null : one.Strike.Because,
            })
            .SingleOrDefault();
        if (found is null)
            return false;
        List<MovedBatch> batches = found.FillingId is not { } filling ? [] : records.Draws.AsNoTracking().Where(draw => draw.FillingId == filling && draw.StruckAt == null)
            .Select(draw => new MovedBatch(draw.Load.BatchId, draw.Load.Batch.Number, draw.Load.Batch.Product.Name)).Distinct().ToList();
        Weight = new MovedWeight(
            TableWeighIn.Words(found.Kind, found.Lug, found.Packs, found.Note), shop.Print(found.Net), $"{shop.Moment(found.At)}, {found.By}", found.JobId, found.Number, found.Owner,
            found.Lug, found.Because, batches);
        return true;
    }

    /// <param name="Because">Why it was struck before; null while it stands.</param>
    /// <param name="Batches">Those its meat is in already.</param>
    public sealed record MovedWeight(
        string What, string Net, string When, int JobId, int JobNumber, string Owner, int? Lug, string? Because, IReadOnlyList<MovedBatch> Batches);

    public sealed record MovedBatch(int Id, int Number, string Product);

    public sealed record TargetJob(int Id, int Number, string Owner, IReadOnlyList<TargetAnimal> Animals);

    public sealed record TargetAnimal(int Id, Species Species, string? Tag);

    public sealed class InputModel
    {
        public string JobNumber { get; set; } = "";

        public List<int> AnimalIds { get; set; } = [];

        public string Because { get; set; } = "";
    }
}
