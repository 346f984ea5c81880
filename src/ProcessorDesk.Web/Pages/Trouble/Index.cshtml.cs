using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using ProcessorDesk.Web.Forms;
using ProcessorDesk.Web.Safety;

namespace ProcessorDesk.Web.Pages.Trouble;

/// <summary>Says in plain words why there is no page, and the way on. Shown in place of the page asked for.</summary>
[IgnoreAntiforgeryToken]
[ResponseCache(NoStore = true)]
public sealed class IndexModel : PageModel
{
    public int Code { get; private set; }

    public string Head { get; private set; } = "";

    public IReadOnlyList<string> Words { get; private set; } = [];

    public Fault? Fault => HttpContext.Items[typeof(Fault)] as Fault;

    public KeptForm? Kept => KeptForm.Of(HttpContext);

    public void OnGet()
    {
        // Opened by its own address there is no trouble to tell of.
        if (Response.StatusCode < 400) Response.StatusCode = StatusCodes.Status404NotFound;
        Code = Response.StatusCode;
        (Head, Words) = Said(Code);
    }

    private static (string Head, IReadOnlyList<string> Words) Said(int code) => code switch
    {
        400 => ("This could not be read", ["The page was sent in a way the desk can't read. Nothing was changed. Open the page again."]),
        403 => ("This page is for other hands", ["You are signed in, but this page is not one of yours. The manager can change that in the office."]),
        404 => ("There is no such page", ["Perhaps the address was mistyped, or the thing it led to was never here. Try the Find box, or begin at Today."]),
        405 => ("This page can't be used that way", ["Open it from its link, and use the buttons on it."]),
        413 => ("That was too much at once", ["The form or file is larger than the desk takes. Nothing was changed."]),
        429 => ("Too many tries", ["Wait a minute, then try again."]),
        >= 500 => ("Something went wrong", ["It is the desk's fault, not yours. What was saved before is safe; what you were just doing was not saved."]),
        _ => ("This could not be done", ["Nothing was changed. Begin again at Today."]),
    };
}
