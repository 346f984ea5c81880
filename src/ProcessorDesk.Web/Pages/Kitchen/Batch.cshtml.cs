using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.Filters;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Web.Forms;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Kitchen;

/// <summary>One batch: what is wrong first, what comes next, its loads, its record, and its way back to the owners.</summary>
public sealed class BatchModel(RecordsContext records, Verbs verbs, ShopDay shop) : BatchPage(records, verbs, shop)
{
    [BindProperty]
    public BatchInput Input { get; set; } = new();

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

    public override void OnPageHandlerExecuting(PageHandlerExecutingContext context)
    {
        base.OnPageHandlerExecuting(context);
        if (context.Result is null)
            Input.Pieces.AddRange(Enumerable.Repeat("", Math.Max(0, View.Loads.Count - Input.Pieces.Count)));
    }

    public void OnGet() => Input.Programme = View.Batch.Programme ?? "";

    public IActionResult OnPostStep(BatchStepKind kind) =>
        Do("note a step", $"{Wording.Of(kind)}: noted.", act => !Enum.IsDefined(kind) ? Outcome.Refused(new Finding("", "There is no such step."))
            : Counted() is { } pieces ? Records.TakeStep(Id, kind, act, pieces) : Outcome.Refused(new Finding("Pieces[0]", "Type the pieces of each load as a whole number, or leave them empty.")));

    public IActionResult OnPostUndo(int step) =>
        Do("undo a step", "Undone. It stays in the record with your reason.", act => IsOf(Records.BatchSteps.Where(one => one.Id == step).Select(one => one.BatchId))
            ?? Renamed(Records.UndoStep(step, Input.UndoBecause, act), "Because", "UndoBecause"));

    public IActionResult OnPostFinishMixing() => Do("finish the mixing", "The mixing is finished.", act => Records.FinishMixing(Id, act));

    public IActionResult OnPostHold() => Do("put a batch on hold", "The batch is on hold.", act =>
        Input.Reason == HoldReason.Other && string.IsNullOrWhiteSpace(Input.Note)
            ? Outcome.Refused(new Finding("Note", "Say why it is put on hold."))
            : Records.HoldBatch(Id, Input.Reason, Input.Note, act));

    public IActionResult OnPostReleaseHold(int hold)
    {
        Tried = hold;
        return Do("release a batch from hold", "The hold is released.", act =>
            IsOf(Records.Holds.Where(one => one.Id == hold && one.BatchId != null).Select(one => one.BatchId!.Value)) ?? Records.ReleaseBatchHold(hold, Input.Because, act));
    }

    public IActionResult OnPostOffPlan() => Do("take a batch off the plan", "The batch is off the plan. Its meat waits for another.", act => Renamed(Records.TakeOffPlan(Id, Input.OffPlanBecause, act), "Because", "OffPlanBecause"));

    public IActionResult OnPostProgramme() => Do("write the smokehouse's programme", "The programme is kept.", act => Records.WriteProgramme(Id, Input.Programme, act));

    public IActionResult OnPostRelease() => Do("release a batch", "The batch is released. It can be boxed.", act => Records.ReleaseBatch(Id, Input.WrittenSupport, act));

    /// <summary>What was counted at the stuffing, as the step says it; empty for other steps, and where nobody counted.</summary>
    public string PiecesAt(BatchLine step) => string.Join(", ", View.Lines.Of(BatchLineKind.StuffedPieces).Where(line => line.Id == step.Id)
        .Select(line => $"{(View.Loads.Count == 1 ? "" : $"load {View.Loads.Single(load => load.Id == line.LoadId).Number}: ")}{line.Pieces} pieces"));

    /// <summary>Pieces by load, without those that were left empty; null where one can't be read.</summary>
    private Dictionary<int, int>? Counted()
    {
        var loads = Records.Loads.Where(load => load.BatchId == Id && load.MixedAt != null).OrderBy(load => load.Number).Select(load => load.Id).ToList();
        var typed = loads.Zip(Input.Pieces).Where(one => !string.IsNullOrWhiteSpace(one.Second)).ToDictionary(one => one.First, one => CountText.Parse(one.Second));
        return typed.Values.All(count => count.Try(out _, out _)) ? typed.ToDictionary(one => one.Key, one => one.Value.Try(out var count, out _) ? count : 0) : null;
    }

    private bool IsOfThisMaking(BatchStepKind kind) => kind switch
    {
        BatchStepKind.RestStarted => View.Progress.RestMinutes > 0,
        BatchStepKind.Stuffed or BatchStepKind.Packed => true,
        BatchStepKind.HeatStarted or BatchStepKind.ChillStarted => View.Progress.IsHeated,
    };

    /// <summary>A refusal where the thing is not one of this batch; null where it is.</summary>
    private Outcome? IsOf(IQueryable<int> batch) =>
        batch.Any(one => one == Id) ? null : Outcome.Refused(new Finding("", "This is not of this batch. Open the batch again."));
}
