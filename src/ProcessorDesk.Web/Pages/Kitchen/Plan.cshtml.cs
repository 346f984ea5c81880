using Microsoft.AspNetCore.Mvc;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Kitchen.Planning;
using ProcessorDesk.Web.Forms;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Kitchen;

/// <summary>The plan of the day: what is mixed together, in which loads and which order, what the hand changed of it, and what it takes from the larder.</summary>
public sealed class PlanModel(RecordsContext records, Verbs verbs, ShopDay shop) : StationPage
{
    /// <summary>What the hand changed so far, in turn; see <see cref="DayMove"/>.</summary>
    [BindProperty(SupportsGet = true)]
    public List<string> Move { get; set; } = [];

    /// <summary>What is to be moved now.</summary>
    [BindProperty(SupportsGet = true)]
    public string? Allotment { get; set; }

    /// <summary>Where it goes.</summary>
    [BindProperty(SupportsGet = true)]
    public string? To { get; set; }

    /// <summary>The plan as it was seen when the button was pressed.</summary>
    [BindProperty]
    public string Seen { get; set; } = "";

    public DayQuestion Question { get; private set; } = null!;

    public DayPlan Proposed { get; private set; } = null!;

    public DayLoads Day { get; private set; } = null!;

    public HandJudgement Judgement { get; private set; } = null!;

    public IReadOnlyList<DayNeeds> Needs { get; private set; } = [];

    public ShopDay Shop => shop;

    public bool IsChanged => Move.Count > 0;

    /// <summary>By what could be moved: an allotment and where it is now.</summary>
    public IEnumerable<Choice> Movable => Question.Meat.Select(meat => new Choice($"{meat.Id}", $"{meat.Whose}, {meat.Product.Name}", Where(meat.Id)));

    public IEnumerable<Choice> Targets =>
    [
        .. Day.Batches.SelectMany(batch => batch.Loads.Select(load => new Choice($"{load.Number}", $"Load {load.Number}", $"{batch.Product.Name}, {shop.Print(Green(load))}"))),
        new Choice(DayMove.New, "A load of its own"),
        new Choice(DayMove.Wait, "Another day"),
    ];

    public IActionResult OnGet()
    {
        if (Allotment is not null && DayMove.Parse($"{Allotment}:{To}") is { } move)
            return RedirectToPage(new { Move = (string[])[.. Move, move.ToString()] });
        Load();
        return Page();
    }

    public IActionResult OnPost()
    {
        if (WasSaved(records))
            return RedirectToPage("Index");
        Load();
        if (Seen != Day.Mark)
            ModelState.AddModelError("", "What waits has changed since this plan was shown. Look at it again, then plan it.");
        else if (Judgement.Refusals.Count == 0)
        {
            var outcome = verbs.Run("plan the day", Hand, FormKey, act => records.PlanDay([.. Day.Batches.Select(batch => BatchOrder.Of(batch.Loads))], act));
            if (outcome.IsDone)
            {
                Say(Day.Batches.Count == 1 ? "One batch is planned. Print its sheet, or draw the meat." : $"{Day.Batches.Count} batches are planned. Print their sheets, or draw the meat.");
                return RedirectToPage("Index");
            }

            foreach (var finding in outcome.Findings)
                ModelState.AddModelError("", finding.Text);
        }

        return Page();
    }

    public Weight Green(HandLoad load) => shop.Settings.BenchDivision.Sum(load.Pieces.Select(piece => piece.Green));

    private string Where(int allotment)
    {
        var loads = Day.Batches.SelectMany(batch => batch.Loads).Where(load => load.Pieces.Any(piece => piece.Allotment == allotment)).Select(load => load.Number).ToList();
        return loads.Count == 0 ? "waits" : $"load {string.Join(" and ", loads)}";
    }

    private void Load()
    {
        Question = DayQuestion.Of(records, shop);
        Proposed = DayPlanning.Plan(Question.Meat, Question.Settings);
        Day = DayLoads.Of(Proposed, Question, [.. Move.Select(DayMove.Parse).OfType<DayMove>()]);
        Judgement = IsChanged ? HandPlan.Judge(Question.Meat, Question.Settings, Day.All) : new HandJudgement([], []);
        Needs = Judgement.Refusals.Count == 0 ? DayNeeds.Of(Day, Question, records, shop) : [];
        foreach (var refusal in Judgement.Refusals)
            ModelState.AddModelError("", refusal.Text);
    }
}
