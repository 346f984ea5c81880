using Microsoft.AspNetCore.Mvc;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Process;
using ProcessorDesk.Web.Forms;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Kitchen;

/// <summary>The readings of a batch: several at once, typed when there is time; a wrong one struck with a reason.</summary>
public sealed class ReadingsModel(RecordsContext records, Verbs verbs, ShopDay shop) : BatchPage(records, verbs, shop)
{
    [BindProperty]
    public ReadingsInput Input { get; set; } = new();

    public bool IsFermented => View.Needs.HasFlag(ProcessNeeds.Fermentation);

    public IEnumerable<Choice> Stages => Enum.GetValues<ReadingStage>()
        .Where(stage => stage != ReadingStage.Fermenting || IsFermented)
        .Select(stage => new Choice($"{stage}", Wording.Of(stage)));

    /// <summary>A row a moment, each probe in its column; those of one stage together.</summary>
    public IEnumerable<IGrouping<ReadingStage, BatchLine>> ByStage => View.Lines.Of(BatchLineKind.Reading).GroupBy(line => (ReadingStage)line.What).OrderBy(stage => stage.Key);

    public IEnumerable<Choice> ToStrike => View.Lines.Of(BatchLineKind.Reading).Where(line => line.Stands)
        .Select(line => new Choice($"{line.Id}", $"{Shop.Moment(line.TakenAt)}, {Wording.Of((ReadingStage)line.What).ToLowerInvariant()}", Printed(line)));

    public static string Printed(BatchLine line) => line.Probe == 0
        ? Ph.FromHundredths((int)line.Amount).Print()
        : $"probe {line.Probe}: {Temperature.FromHundredthsFahrenheit((int)line.Amount).Print()}";

    public void OnGet() => Input.Stage = View.Progress switch
    {
        { ChillStartedAt: not null } => ReadingStage.Chilling,
        { HeatStartedAt: null } when IsFermented => ReadingStage.Fermenting,
        _ => ReadingStage.Cooking,
    };

    public IActionResult OnPostMore()
    {
        Input.AddLines();
        ModelState.ShowChanged();
        return Page();
    }

    public IActionResult OnPost()
    {
        var readings = Input.Read(ModelState, Id, Shop, SignedIn.StaffId);
        if (!ModelState.IsValid)
            return Page();
        return Do("note readings", readings.Count == 1 ? "One reading is written down." : $"{readings.Count} readings are written down.", act => AtTheTop(Records.NoteReadings(Id, readings, act)));
    }

    public IActionResult OnPostStrike()
    {
        if (Input.StrikeId is not { } reading || !Records.BatchReadings.Any(one => one.Id == reading && one.BatchId == Id))
            ModelState.AddModelError("Input.StrikeId", "Choose the reading that is wrong.");
        if (Input.StrikeBecause.Trim() == "")
            ModelState.AddModelError("Input.StrikeBecause", "Say why it is wrong.");
        if (!ModelState.IsValid)
            return Page();
        return Do("strike out a reading", "The reading is struck out. It stays to be seen.", act => AtTheTop(Records.StrikeReading(Input.StrikeId!.Value, Input.StrikeBecause, act)));
    }

    /// <summary>The verb does not know in which line of the form a reading stands.</summary>
    private static Outcome AtTheTop(Outcome outcome) => outcome.IsDone ? outcome : Outcome.Refused(outcome.Findings.Select(finding => finding with { Field = "" }));
}
