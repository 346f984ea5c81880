using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.Filters;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Web.Forms;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Kitchen;

/// <summary>What every page of one batch begins and ends with: the batch as it stands, not found where there is none; one verb, then a line that says what was done.</summary>
public abstract class BatchPage(RecordsContext records, Verbs verbs, ShopDay shop) : StationPage
{
    /// <summary>The batch's, from the address.</summary>
    [FromRoute]
    public int Id { get; set; }

    public BatchView View { get; private set; } = null!;

    public ShopDay Shop => shop;

    public bool IsManager => SignedIn.Role == StaffRole.Manager;

    protected RecordsContext Records => records;

    public override void OnPageHandlerExecuting(PageHandlerExecutingContext context)
    {
        if (BatchView.Find(records, Id, shop) is { } view)
            View = view;
        else
            context.Result = NotFound();
    }

    /// <summary>Runs the verb; a refusal shows the page again, with what was typed.</summary>
    /// <param name="to">Where it leads; null is this page.</param>
    protected IActionResult Do(string verb, string said, Func<Act, Outcome> work, string? to = null)
    {
        var outcome = verbs.Run(verb, Hand, FormKey, work);
        if (outcome.IsDone)
        {
            Say(said);
            return RedirectToPage(to, null, new { id = Id });
        }

        ModelState.Add(outcome.Findings);
        return Page();
    }

    /// <summary>Several forms of a page may ask for the same thing; each keeps what was typed in its own field.</summary>
    protected static Outcome Renamed(Outcome outcome, string from, string to) =>
        outcome.IsDone ? outcome : Outcome.Refused(outcome.Findings.Select(finding => finding.Field == from ? finding with { Field = to } : finding));
}
