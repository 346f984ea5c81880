using Microsoft.AspNetCore.Mvc;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Process;
using ProcessorDesk.Web.Forms;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Kitchen;

/// <summary>The readings of a batch: several at once, typed when there is time; a wrong one struck with a reason.</summary>
public sealed class ReadingsModel(RecordsContext records, Verbs verbs, ShopDay shop) : StationPage
{
    [BindProperty]
    public ReadingsInput Input { get; set; } = new();

    public BatchView View { get; private set; } = null!;

    public ShopDay Shop => shop;

    public bool IsFermented => View.Needs.HasFlag(ProcessNeeds.Fermentation);

    public IEnumerable<Choice> Stages => Enum.GetValues<ReadingStage>()
        .Where(stage => stage != ReadingStage.Fermenting || IsFermented)
        .Select(stage => new Choice($"{stage}", Wording.Of(stage)));

    /// <summary>A row a moment, each probe in its column; those of one stage together.</summary>
    public IEnumerable<IGrouping<ReadingStage, BatchLine>> ByStage => View.Lines.Of(BatchLineKind.Reading).GroupBy(line => (ReadingStage)line.What).OrderBy(stage => stage.Key);

    public IEnumerable<Choice> ToStrike => View.Lines.Of(BatchLineKind.Reading).Where(line => line.Stands)
        .Select(line => new Choice($"{line.Id}", $"{shop.Moment(line.TakenAt)}, {Wording.Of((ReadingStage)line.What).ToLowerInvariant()}", Printed(line)));

    public static string Printed(BatchLine line) => line.Probe == 0
        ? Ph.FromHundredths((int)line.Amount).Print()
        : $"probe {line.Probe}: {Temperature.FromHundredthsFahrenheit((int)line.Amount).Print()}";

    public IActionResult OnGet(int id)
    {
        if (!Load(id))
            return NotFound();
        Input.Stage = View.Progress switch
        {
            { ChillStartedAt: not null } => ReadingStage.Chilling,
            { HeatStartedAt: null } when IsFermented => ReadingStage.Fermenting,
            _ => ReadingStage.Cooking,
        };
        return Page();
    }

    public IActionResult OnPostMore(int id)
    {
        if (!Load(id))
            return NotFound();
        Input.AddLines();
        ModelState.ShowChanged();
        return Page();
    }

    public IActionResult OnPost(int id)
    {
        if (!Load(id))
            return NotFound();
        var readings = Input.Read(ModelState, id, shop, SignedIn.StaffId);
        if (!ModelState.IsValid)
            return Page();
        return Done(verbs.Run("note readings", Hand, FormKey, act => records.NoteReadings(id, readings, act)), id, readings.Count == 1 ? "One reading is written down." : $"{readings.Count} readings are written down.");
    }

    public IActionResult OnPostStrike(int id)
    {
        if (!Load(id))
            return NotFound();
        if (Input.StrikeId is not { } reading || !records.BatchReadings.Any(one => one.Id == reading && one.BatchId == id))
            ModelState.AddModelError("Input.StrikeId", "Choose the reading that is wrong.");
        if (Input.StrikeBecause.Trim() == "")
            ModelState.AddModelError("Input.StrikeBecause", "Say why it is wrong.");
        if (!ModelState.IsValid)
            return Page();
        return Done(verbs.Run("strike out a reading", Hand, FormKey, act => records.StrikeReading(Input.StrikeId!.Value, Input.StrikeBecause, act)), id, "The reading is struck out. It stays to be seen.");
    }

    private IActionResult Done(Outcome outcome, int id, string said)
    {
        if (outcome.IsDone)
        {
            Say(said);
            return RedirectToPage(null, null, new { id });
        }

        ModelState.Add(outcome.Findings.Select(finding => finding with { Field = "" }));
        return Page();
    }

    private bool Load(int id)
    {
        if (BatchView.Find(records, id, shop) is not { } view)
            return false;
        View = view;
        return true;
    }
}
