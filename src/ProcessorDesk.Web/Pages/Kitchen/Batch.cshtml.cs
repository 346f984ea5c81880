using Microsoft.AspNetCore.Mvc;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Web.Forms;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Kitchen;

/// <summary>One batch: what is wrong first, what comes next, its loads, its record, and its way back to the owners.</summary>
public sealed class BatchModel(RecordsContext records, Verbs verbs, ShopDay shop) : StationPage
{
    [BindProperty]
    public BatchInput Input { get; set; } = new();

    public BatchView View { get; private set; } = null!;

    public ShopDay Shop => shop;

    public bool IsManager => SignedIn.Role == StaffRole.Manager;

    public bool MayFind => SignedIn.MayOpen("Find");

    /// <summary>The hold whose release was tried, so that what was typed is shown with it.</summary>
    public int? Tried { get; private set; }

    public static IEnumerable<Choice> HoldReasons { get; } =
    [
        new(nameof(HoldReason.RecordIncomplete), "Record incomplete", "A chart or a reading is missing"),
        new(nameof(HoldReason.WrongMeatIn), "Wrong meat or amount is in"),
        new(nameof(HoldReason.TooWarm), "Too warm"),
        new(nameof(HoldReason.Dispute), "In dispute"),
        new(nameof(HoldReason.Other), "Another reason", "Type it below"),
    ];

    /// <summary>Steps that may be noted now, besides the one that is next.</summary>
    public IEnumerable<BatchStepKind> OtherSteps => View is { IsOpen: true, Batch.MixedAt: not null }
        ? Enum.GetValues<BatchStepKind>().Where(kind => View.Lines.StepAt(kind) is null && kind != NextStep && IsOfThisMaking(kind))
        : [];

    /// <summary>The step that is the next thing to do; null where something else is.</summary>
    public BatchStepKind? NextStep => View.Next switch
    {
        NextInKitchen.Stuff => BatchStepKind.Stuffed,
        NextInKitchen.Heat => BatchStepKind.HeatStarted,
        NextInKitchen.Held or NextInKitchen.Draw or NextInKitchen.Mix or NextInKitchen.Rest or NextInKitchen.Cook or NextInKitchen.Chill or NextInKitchen.Weigh or NextInKitchen.Release => null,
    };

    public IActionResult OnGet(int id)
    {
        if (!Load(id))
            return NotFound();
        Input.Programme = View.Batch.Programme ?? "";
        return Page();
    }

    public IActionResult OnPostStep(int id, BatchStepKind kind) =>
        Do(id, "note a step", $"{Wording.Of(kind)}: noted.", act => !Enum.IsDefined(kind) ? Outcome.Refused(new Finding("", "There is no such step."))
            : Counted(id) is { } pieces ? records.TakeStep(id, kind, act, pieces) : Outcome.Refused(new Finding("Pieces[0]", "Type the pieces of each load as a whole number, or leave them empty.")));

    public IActionResult OnPostUndo(int id, int step) =>
        Do(id, "undo a step", "Undone. It stays in the record with your reason.", act => IsOf(id, records.BatchSteps.Where(one => one.Id == step).Select(one => one.BatchId))
            ?? Renamed(records.UndoStep(step, Input.UndoBecause, act), "UndoBecause"));

    public IActionResult OnPostFinishMixing(int id) => Do(id, "finish the mixing", "The mixing is finished.", act => records.FinishMixing(id, act));

    public IActionResult OnPostHold(int id) => Do(id, "put a batch on hold", "The batch is on hold.", act =>
        Input.Reason == HoldReason.Other && string.IsNullOrWhiteSpace(Input.Note)
            ? Outcome.Refused(new Finding("Note", "Say why it is put on hold."))
            : records.HoldBatch(id, Input.Reason, Input.Note, act));

    public IActionResult OnPostReleaseHold(int id, int hold)
    {
        Tried = hold;
        return Do(id, "release a batch from hold", "The hold is released.", act =>
            IsOf(id, records.Holds.Where(one => one.Id == hold && one.BatchId != null).Select(one => one.BatchId!.Value)) ?? records.ReleaseBatchHold(hold, Input.Because, act));
    }

    public IActionResult OnPostOffPlan(int id) => Do(id, "take a batch off the plan", "The batch is off the plan. Its meat waits for another.", act => Renamed(records.TakeOffPlan(id, Input.OffPlanBecause, act), "OffPlanBecause"));

    public IActionResult OnPostProgramme(int id) => Do(id, "write the smokehouse's programme", "The programme is kept.", act => records.WriteProgramme(id, Input.Programme, act));

    public IActionResult OnPostRelease(int id) => Do(id, "release a batch", "The batch is released. It can be boxed.", act => records.ReleaseBatch(id, Input.WrittenSupport, act));

    /// <summary>What was counted at the stuffing, as the step says it; empty for other steps, and where nobody counted.</summary>
    public string PiecesAt(BatchLine step) => string.Join(", ", View.Lines.Of(BatchLineKind.StuffedPieces).Where(line => line.Id == step.Id)
        .Select(line => $"{(View.Loads.Count == 1 ? "" : $"load {View.Loads.Single(load => load.Id == line.LoadId).Number}: ")}{line.Pieces} pieces"));

    /// <summary>Pieces by load, without those that were left empty; null where one can't be read.</summary>
    private Dictionary<int, int>? Counted(int id)
    {
        var loads = records.Loads.Where(load => load.BatchId == id && load.MixedAt != null).OrderBy(load => load.Number).Select(load => load.Id).ToList();
        var typed = loads.Zip(Input.Pieces).Where(one => !string.IsNullOrWhiteSpace(one.Second)).ToDictionary(one => one.First, one => CountText.Parse(one.Second));
        return typed.Values.All(count => count.Try(out _, out _)) ? typed.ToDictionary(one => one.Key, one => one.Value.Try(out var count, out _) ? count : 0) : null;
    }

    private bool IsOfThisMaking(BatchStepKind kind) => kind switch
    {
        BatchStepKind.RestStarted => View.Progress.RestMinutes > 0,
        BatchStepKind.Stuffed or BatchStepKind.Packed => true,
        BatchStepKind.HeatStarted or BatchStepKind.ChillStarted => View.Progress.IsHeated,
    };

    /// <summary>Several forms of the page ask why; each keeps what was typed in its own field.</summary>
    private static Outcome Renamed(Outcome outcome, string field) =>
        outcome.IsDone ? outcome : Outcome.Refused(outcome.Findings.Select(finding => finding.Field == "Because" ? finding with { Field = field } : finding));

    /// <summary>A refusal where the thing is not one of this batch; null where it is.</summary>
    private static Outcome? IsOf(int id, IQueryable<int> batch) =>
        batch.Any(one => one == id) ? null : Outcome.Refused(new Finding("", "This is not of this batch. Open the batch again."));

    private IActionResult Do(int id, string verb, string said, Func<Act, Outcome> work)
    {
        if (!records.Batches.Any(batch => batch.Id == id))
            return NotFound();
        var outcome = verbs.Run(verb, Hand, FormKey, work);
        if (outcome.IsDone)
        {
            Say(said);
            return RedirectToPage(null, null, new { id });
        }

        ModelState.Add(outcome.Findings);
        return Load(id) ? Page() : NotFound();
    }

    private bool Load(int id)
    {
        if (BatchView.Find(records, id, shop) is not { } view)
            return false;
        View = view;
        Input.Pieces.AddRange(Enumerable.Repeat("", Math.Max(0, view.Loads.Count - Input.Pieces.Count)));
        return true;
    }
}
