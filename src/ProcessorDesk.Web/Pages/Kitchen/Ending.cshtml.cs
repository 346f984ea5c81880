using Microsoft.AspNetCore.Mvc;
using ProcessorDesk.Records;
using ProcessorDesk.Web.Forms;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Kitchen;

/// <summary>What is done about a batch that does not meet or does not show: each thing done is written down by itself; throwing it out comes last.</summary>
public sealed class EndingModel(RecordsContext records, Verbs verbs, ShopDay shop) : BatchPage(records, verbs, shop)
{
    [BindProperty]
    public EndingInput Input { get; set; } = new();

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

    public void OnGet()
    {
        Input.Kind = IsManager ? null : DispositionKind.OwnersTold;
        Input.Stage = View.Unmet.Count == 1 ? View.Unmet[0] : null;
    }

    public IActionResult OnPost()
    {
        if (Input.Read(ModelState) is not { } order)
            return Page();
        return Do("write down what was done about a batch", $"{Wording.Of(order.Kind)}: written down.", act => Records.WriteDisposition(Id, order, Shop.Today, act), "/Kitchen/Batch");
    }

    public IActionResult OnPostDiscard() =>
        Do("throw a batch out", "The batch is thrown out.", act => Renamed(Records.DiscardBatch(Id, Input.DiscardBecause, act), "Because", "DiscardBecause"), "/Kitchen/Batch");
}
