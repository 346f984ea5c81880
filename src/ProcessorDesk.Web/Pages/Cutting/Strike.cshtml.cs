using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Web.Forms;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Cutting;

/// <summary>Takes a wrong weight of cooler or table out of every sum, with a reason; it stays to be seen.</summary>
public sealed class StrikeModel(RecordsContext records, Verbs verbs, ShopDay shop) : StationPage
{
    private const string Other = "other";

    [BindProperty]
    public InputModel Input { get; set; } = new();

    public Struck Weight { get; private set; } = null!;

    public static IReadOnlyList<Choice> Reasons { get; } =
    [
        new("Typed wrong", "Typed wrong"),
        new("Wrong lug", "Wrong lug"),
        new("Wrong animal or job", "Wrong animal or job"),
        new("Something else lay on the scale", "Something else lay on the scale"),
        new(Other, "Another reason", "Type it below"),
    ];

    public IActionResult OnGet(int id) => Load(id) ? Page() : NotFound();

    public IActionResult OnPost(int id)
    {
        if (!Load(id))
            return NotFound();
        var because = Because();
        if (because == "")
            ModelState.AddModelError("Input.Because", "Choose or type why the weight is wrong.");
        if (!ModelState.IsValid)
            return Page();

        var outcome = verbs.Run("strike out a weight", Hand, FormKey, act => StrikeOut(id, because, act));
        ModelState.Add(outcome.Findings);
        if (!ModelState.IsValid)
            return Page();

        Say($"{Weight.Net} is struck out: {because}.{(Input.Empties && Weight.LastOfLug ? $" Lug {Weight.Lug} is free." : "")}");
        return Redirect(Weight.Back);
    }

    private string Because() => string.Join(": ", new[] { Input.Because == Other ? "" : Input.Because, Input.Words.Trim() }.Where(text => text != ""));

    private Outcome StrikeOut(int id, string because, Act act)
    {
        var weighIn = records.WeighIns.Include(one => one.Strike).Include(one => one.Job).Include(one => one.Filling).Single(one => one.Id == id);
        if (weighIn is { Kind: WeighInKind.LeanTrim, Job.AsksLocked: true })
            return Outcome.Refused(new Finding("", "The split of this job is agreed on this weight. Withdraw the split at the grind first."));
        if (weighIn.StrikeOut(because, act.Now, act.Hand.Id) is { } refusal)
            return Outcome.Refused(refusal);
        if (Input.Empties && Weight.LastOfLug)
            weighIn.Filling!.Empty(act.Now);
        return Outcome.Done(id);
    }

    private bool Load(int id)
    {
        var found = records.WeighIns.AsNoTracking().Where(one => one.Id == id && one.Kind != WeighInKind.FinishedProduct && one.Kind != WeighInKind.Box)
            .Select(one => new
            {
                one.Kind,
                one.Gross,
                one.Tare,
                one.Net,
                one.At,
                one.Note,
                one.Packs,
                one.JobId,
                JobNumber = one.Job == null ? (int?)null : one.Job.Number,
                Owner = one.Job == null ? null : one.Job.Owner.Name,
                one.AnimalId,
                Tag = one.Animal == null ? null : one.Animal.Tag,
                Lug = one.Filling == null ? (int?)null : one.Filling.Lug.Number,
                By = records.Staff.Where(staff => staff.Id == one.ById).Select(staff => staff.Initials).First(),
                Because = one.Strike == null ? null : one.Strike.Because,
                OthersInLug = one.FillingId != null && records.WeighIns.Any(other => other.FillingId == one.FillingId && other.Id != one.Id && other.Strike == null),
            })
            .SingleOrDefault();
        if (found is null)
            return false;
        Weight = new Struck(
            TableWeighIn.Words(found.Kind, found.Lug, found.Packs, found.Note),
            found.JobId is null ? shop.PrintRail(found.Net) : shop.Print(found.Net),
            found.Tare.IsZero ? "" : $"{shop.Print(found.Gross)} gross less {shop.Print(found.Tare)} tare",
            $"{shop.Moment(found.At)}, {found.By}",
            found.JobNumber is { } number ? $"{found.Owner}, job {number}" : $"Animal{(found.Tag is null ? "" : " with tag " + found.Tag)}",
            found.Because,
            found.Lug,
            found.Lug is not null && !found.OthersInLug,
            found.JobId is { } jobId ? $"/Cutting/Sheet/{jobId}" : $"/Cooler/Hang/{found.AnimalId}",
            found.JobId is not null);
        return true;
    }

    /// <param name="Because">Why it was struck before; null while it stands.</param>
    /// <param name="LastOfLug">Nothing else stands in the lug: it may be empty now.</param>
    /// <param name="Back">The page it was seen on.</param>
    /// <param name="CanMove">It was weighed at the table, for a job.</param>
    public sealed record Struck(
        string What, string Net, string GrossAndTare, string When, string Whose, string? Because, int? Lug, bool LastOfLug, string Back, bool CanMove);

    public sealed class InputModel
    {
        public string Because { get; set; } = "";

        public string Words { get; set; } = "";

        public bool Empties { get; set; }
    }
}
