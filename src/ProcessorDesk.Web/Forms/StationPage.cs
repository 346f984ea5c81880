using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using ProcessorDesk.Records;
using ProcessorDesk.Web.Door;

namespace ProcessorDesk.Web.Forms;

/// <summary>What every page of a station has: the key and version its form carries, who is at it, and a line to say what was done.</summary>
public abstract class StationPage : PageModel
{
    /// <summary>One for each rendered form; null where the form carries none.</summary>
    [BindProperty]
    public string? FormKey { get; set; }

    /// <summary>The version of the thing the person saw; null where the form carries none.</summary>
    [BindProperty]
    public int? Version { get; set; }

    /// <summary>The page's own script asks for a part of it: answer with a partial. Otherwise a button was pressed: answer with the page.</summary>
    protected bool IsLive => KeptForm.IsLive(Request);

    protected SignedIn SignedIn => new(User);

    /// <summary>Who acts, and where: for <see cref="Verbs.Run"/>.</summary>
    protected Hand Hand => SignedIn.Hand;

    /// <summary>
    /// This very form was saved before: its answer was lost on the way, or it was sent twice. A page that holds what stands against
    /// what was typed asks this first, or it would hold the form's own result against it.
    /// </summary>
    protected bool WasSaved(RecordsContext records) => FormKey is { } key && records.FormKeys.Any(saved => saved.Key == key);

    /// <summary>Shown once, at the top of the next page: "Saved."</summary>
    protected void Say(string words) => TempData["Said"] = words;
}
