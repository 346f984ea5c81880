using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using ProcessorDesk.Web.Forms;

namespace ProcessorDesk.Web.Pages.Counter;

/// <summary>A page with an order on it: the buttons that change its lines without saving anything, and the live panel.</summary>
public abstract class OrderPage : StationPage
{
    public Outlook? Outlook { get; protected set; }

    protected abstract OrderInput Order { get; }

    /// <summary>Puts in what the page shows beside what was typed.</summary>
    protected abstract void Load();

    public IActionResult OnPostFill() => Changed(() => Order.FillFromStyle());

    public IActionResult OnPostAddAsk() => Changed(() => Order.Asks.Add(new AskInput()));

    public IActionResult OnPostRemoveAsk(int at) => Changed(() =>
    {
        if (at >= 0 && at < Order.Asks.Count) Order.Asks.RemoveAt(at);
        if (Order.Asks.Count == 0) Order.Asks.Add(new AskInput());
    });

    public IActionResult OnPostUp(int at) => Changed(() => Order.MoveUp(at));

    /// <summary>"Do the asks fit?" at the press of a button.</summary>
    public IActionResult OnPostFit() => Changed(() => { });

    /// <summary>The same as one types.</summary>
    public IActionResult OnPostLive()
    {
        Load();
        return Partial("_Outlook", Outlook);
    }

    /// <summary>Shows the page as a button changed it, with everything else as it was typed.</summary>
    protected PageResult Changed(Action change)
    {
        change();
        ModelState.ShowChanged();
        return Shown();
    }

    protected PageResult Shown()
    {
        Load();
        return Page();
    }
}
