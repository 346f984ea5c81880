using Microsoft.AspNetCore.Mvc;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Web.Forms;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Kitchen;

/// <summary>One filling of the mixer: meat in by lug, then fat, seasoning and cure on what was weighed; mixed, or booked as mixed.</summary>
public sealed class LoadModel(RecordsContext records, Verbs verbs, ShopDay shop) : StationPage
{
    [BindProperty]
    public DrawInput Draw { get; set; } = new();

    [BindProperty]
    public MixInput Mix { get; set; } = new();

    public LoadView View { get; private set; } = null!;

    public MixSheet Sheet { get; private set; } = null!;

    public LoadLots Lots { get; private set; } = null!;

    public DrawnLug? Lug { get; private set; }

    public ShopDay Shop => shop;

    public string Unit => UnitFactors.Symbol(shop.Settings.BenchDivision.Unit);

    /// <summary>The meat was refused: the page asks whether it is in already.</summary>
    public bool MeatRefused { get; private set; }

    /// <summary>The mix was refused: the page asks whether it is mixed already.</summary>
    public bool MixRefused { get; private set; }

    public bool IsManager => SignedIn.Role == StaffRole.Manager;

    /// <summary>Owners of whom nothing is drawn although it is planned.</summary>
    public IReadOnlyList<LoadView.Wanted> Missing => [.. View.Wants.Where(wanted => wanted.Drawn.IsZero && wanted.Planned.IsPositive)];

    public IEnumerable<Choice> ToStrike => View.Draws.Select(one => one.Draw).Where(draw => draw.StruckAt is null)
        .Select(draw => new Choice($"{draw.Id}", shop.Print(draw.Weighed), $"lug {draw.Filling.Lug.Number}, {draw.Filling.Job.Owner.Name}"));

    /// <summary>There are lots to choose of something that is no cure.</summary>
    public bool HasOtherLots => Sheet.Others.Any(line => Lots.Choices(line.IngredientId).Count > 0) || Lots.Choices(View.Batch.FormulaVersion.CasingIngredientId).Count > 0;

    /// <summary>"Salt S-12, Sage none noted": those of all that holds no cure.</summary>
    public string OtherLots => string.Join(", ", Sheet.Others.Where(line => Lots.Choices(line.IngredientId).Count > 0).Select(line => $"{line.Name} {line.Lot?.LotCode ?? "none noted"}")
        .Concat(Lots.Choices(View.Batch.FormulaVersion.CasingIngredientId).Count == 0
            ? []
            : [$"{View.Batch.FormulaVersion.Casing} {Lots.Find(View.Batch.FormulaVersion.CasingIngredientId, Mix.CasingLot)?.LotCode ?? "none noted"}"]));

    public IActionResult OnGet(int id) => Load(id) ? Page() : NotFound();

    /// <summary>What the lug typed so far is, for the script while one types.</summary>
    public IActionResult OnPostLug(int id)
    {
        if (!Load(id))
            return NotFound();
        (Lug, var problem) = DrawnLug.Read(records, Draw.Lug, View.Batch.Id, shop);
        if (IsLive)
            return Partial("_Lug", this);
        if (Lug is null)
            ModelState.AddModelError("Draw.Lug", problem);
        return Page();
    }

    /// <summary>What the load asks for on what is typed so far, and what the cure comes to.</summary>
    public IActionResult OnPostAmounts(int id) => !Load(id) ? NotFound() : IsLive ? Partial("_Amounts", this) : Page();

    public IActionResult OnPostDraw(int id) => PutIn(id, isIn: false);

    /// <summary>It is already in although it should not be: booked, with a hold.</summary>
    public IActionResult OnPostAlreadyIn(int id) => PutIn(id, isIn: true);

    public IActionResult OnPostMix(int id) => MixIt(id, isMixed: false);

    public IActionResult OnPostAlreadyMixed(int id) => MixIt(id, isMixed: true);

    public IActionResult OnPostStrike(int id)
    {
        if (!Load(id))
            return NotFound();
        if (Draw.StrikeId is not { } draw || !records.Draws.Any(one => one.Id == draw && one.LoadId == id))
            ModelState.AddModelError("Draw.StrikeId", "Choose what is to be struck out.");
        if (Draw.StrikeBecause.Trim() == "")
            ModelState.AddModelError("Draw.StrikeBecause", "Say why it is struck out.");
        if (!ModelState.IsValid)
            return Page();
        return After(verbs.Run("strike out a draw", Hand, FormKey, act => records.StrikeDraw(Draw.StrikeId!.Value, Draw.StrikeBecause, act)), id, "Draw", "Struck out. The meat is in its lug again.");
    }

    private IActionResult PutIn(int id, bool isIn)
    {
        if (!Load(id))
            return NotFound();
        (Lug, var problem) = DrawnLug.Read(records, Draw.Lug, View.Batch.Id, shop);
        if (Lug is null)
            ModelState.AddModelError("Draw.Lug", problem);
        var weighed = shop.Settings.BenchDivision.Round(ModelState.Read(WeightText.Parse(Draw.Weighed, shop.Settings.BenchDivision.Unit), "Draw.Weighed"));
        // Asked for the reason, the page goes on asking whether it is in.
        MeatRefused = isIn;
        if (!ModelState.IsValid)
            return Page();
        var order = new DrawOrder(id, Lug!.FillingId, weighed, Draw.Empties, isIn ? Draw.AlreadyInBecause : null);
        var outcome = verbs.Run(isIn ? "note what is already in" : "draw meat", Hand, FormKey, act => records.DrawMeat(order, act));
        MeatRefused = !outcome.IsDone;
        return After(outcome, id, "Draw", $"{shop.Print(weighed)} of lug {Lug.Number} is in load {View.Load.Number}.{(isIn ? " The batch is on hold." : "")}{(Draw.Empties ? $" Lug {Lug.Number} is free." : "")}");
    }

    private IActionResult MixIt(int id, bool isMixed)
    {
        if (!Load(id))
            return NotFound();
        MixRefused = isMixed;
        var order = Sheet.Read(ModelState, View.Load, Mix, shop.Settings, Lots, isMixed, HandThatWeighedAgain());
        if (!isMixed && Missing.Count > 0 && View.Load.Drawn.IsPositive && !Mix.WithoutThem)
            ModelState.AddModelError("Mix.WithoutThem", $"Nothing is in yet of {string.Join(", ", Missing.Select(wanted => $"{wanted.Entry.Job.Owner.Name}, job {wanted.Entry.Job.Number}"))}. Draw it, or say that it goes without.");
        if (order is null || !ModelState.IsValid)
            return Page();
        var outcome = verbs.Run(isMixed ? "note what is already mixed" : "mix a load", Hand, FormKey, act => records.MixLoad(order, records.IsManager(act.Hand), act));
        MixRefused = !outcome.IsDone;
        if (!outcome.IsDone)
            return After(outcome, id, "Mix", "");
        Say($"Load {View.Load.Number} is mixed.{(isMixed ? " The batch is on hold." : "")}");
        return RedirectToPage("Batch", new { id = View.Batch.Id });
    }

    /// <summary>Null for the hand that is signed in; initials that nobody has are noted on their field.</summary>
    private int? HandThatWeighedAgain()
    {
        var initials = Mix.AgainBy.Trim().ToUpperInvariant();
        if (initials == "" || initials == SignedIn.Initials)
            return null;
        if (records.Staff.Where(staff => staff.Initials == initials && staff.RetiredAt == null).Select(staff => (int?)staff.Id).SingleOrDefault() is { } hand)
            return hand;
        ModelState.AddModelError("Mix.AgainBy", $"Nobody here has the initials {initials}. Type those of the hand that weighed it again.");
        return null;
    }

    private IActionResult After(Outcome outcome, int id, string form, string said)
    {
        if (outcome.IsDone)
        {
            Say(said);
            return RedirectToPage(null, null, new { id });
        }

        ModelState.Add(outcome.Findings.Select(Placed), form);
        return Page();
    }

    /// <summary>What is said of the cure stands at the field where the cure is typed, what is said of its second weighing at that one's.</summary>
    private Finding Placed(Finding finding) => finding.Field switch
    {
        "Cure" when Mix.Lines.FindIndex(line => Sheet.Cures.Any(cure => cure.Position == line.Position)) is >= 0 and var place =>
            finding with { Field = FormattableString.Invariant($"Lines[{place}].Weighed") },
        _ when Mix.Lines.FindIndex(line => finding.Field == FormattableString.Invariant($"Again[{line.Position}]")) is >= 0 and var place =>
            finding with { Field = FormattableString.Invariant($"Lines[{place}].Again") },
        "Cure" or "MeatBlock" => finding with { Field = "" },
        _ => finding,
    };

    private bool Load(int id)
    {
        if (LoadView.Find(records, id, shop) is not { } view)
            return false;
        View = view;
        var formula = view.Batch.FormulaVersion;
        Lots = view.IsToMix ? LoadLots.Of(records, formula) : LoadLots.None;
        foreach (var line in formula.Ingredients.OrderBy(line => line.Position).Where(line => Mix.Lines.All(one => one.Position != line.Position)))
            Mix.Lines.Add(new MixInput.Line { Position = line.Position, Lot = Mix.LotsProposed ? "" : Lots.Oldest(line.IngredientId) });
        if (!Mix.LotsProposed)
            (Mix.FatLot, Mix.CasingLot, Mix.AgainBy, Mix.LotsProposed) = (Lots.Oldest(formula.AddedFatIngredientId), Lots.Oldest(formula.CasingIngredientId), SignedIn.Initials, true);
        Sheet = MixSheet.Of(view.Load, Mix, shop.Settings, Lots);
        return true;
    }
}
