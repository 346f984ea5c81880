using Microsoft.AspNetCore.Mvc;
using ProcessorDesk.Records;
using ProcessorDesk.Web.Forms;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Trace;

/// <summary>One thing traced: what went into it, where it went, what is still here, and who has to be told.</summary>
public sealed class OfModel(RecordsContext records, ShopDay shop) : StationPage
{
    public TraceView View { get; private set; } = null!;

    public string Sheet => TraceAddress.Page("Sheet", View.Trace.Start);

    public bool MayFind => SignedIn.MayOpen("Find");

    public IActionResult OnGet(string kind, int id)
    {
        if (TraceAddress.Read(kind, id) is not { } start || records.TraceOf(start) is not { } trace)
            return NotFound();
        View = new TraceView(trace, shop);
        return Page();
    }
}
