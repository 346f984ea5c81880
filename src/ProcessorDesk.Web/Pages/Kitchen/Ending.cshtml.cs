using Microsoft.AspNetCore.Mvc;
using ProcessorDesk.Records;
using ProcessorDesk.Web.Forms;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Kitchen;

/// <summary>What is done about a batch that does not meet or does not show: each thing done is written down by itself; throwing it out comes last.</summary>
public sealed class EndingModel(RecordsContext records, Verbs verbs, ShopDay shop) : StationPage
{
    [BindProperty]
    public EndingInput Input { get; set; } = new();

    public BatchView View { get; private set; } = null!;

    public ShopDay Shop => shop;

    public bool IsManager => SignedIn.Role == StaffRole.Manager;

    /// <summary>A letter or a rework makes a release possible, so only the manager is offered them.</summary>
    public IEnumerable<Choice> Kinds =>
    [
        new(nameof(DispositionKind.OwnersTold), Wording.Of(DispositionKind.OwnersTold), "Before it is thrown out, they have to know"),
        .. IsManager
            ?
            [
                new(nameof(DispositionKind.Reworked), Wording.Of(DispositionKind.Reworked), "For example cooked again"),
                new(nameof(DispositionKind.ExpertsLetter), Wording.Of(DispositionKind.ExpertsLetter), "Somebody who knows judged this batch"),
            ]
            : Array.Empty<Choice>(),
    ];

    public IEnumerable<Choice> Stages => View.Stages.Select(stage => new Choice($"{stage}", Wording.Of(stage)));

    public bool AreOwnersTold => View.Dispositions.Any(one => one.Kind == DispositionKind.OwnersTold);

    public IActionResult OnGet(int id)
    {
        if (!Load(id))
            return NotFound();
        Input.Kind = IsManager ? null : DispositionKind.OwnersTold;
        Input.Stage = View.Unmet.Count == 1 ? View.Unmet[0] : null;
        return Page();
    }

    public IActionResult OnPost(int id)
    {
        if (!Load(id))
            return NotFound();
        if (Input.Read(ModelState) is not { } order)
            return Page();
        return Done(verbs.Run("write down what was done about a batch", Hand, FormKey, act => records.WriteDisposition(id, order, shop.Today, act)), id, $"{Wording.Of(order.Kind)}: written down.");
    }

    public IActionResult OnPostDiscard(int id)
    {
        if (!Load(id))
            return NotFound();
        var outcome = verbs.Run("throw a batch out", Hand, FormKey, act => records.DiscardBatch(id, Input.DiscardBecause, act));
        return Done(outcome.IsDone ? outcome : Outcome.Refused(outcome.Findings.Select(finding => finding.Field == "Because" ? finding with { Field = "DiscardBecause" } : finding)), id, "The batch is thrown out.");
    }

    private IActionResult Done(Outcome outcome, int id, string said)
    {
        if (outcome.IsDone)
        {
            Say(said);
            return RedirectToPage("/Kitchen/Batch", new { id });
        }

        ModelState.Add(outcome.Findings);
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
