using Microsoft.AspNetCore.Mvc;
using ProcessorDesk.Paper;
using ProcessorDesk.Records;
using ProcessorDesk.Web.Forms;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Trace;

/// <summary>The trace on paper, for an inspector's folder: the same facts as on the page.</summary>
public sealed class SheetModel(RecordsContext records, ShopDay shop) : StationPage
{
    public IActionResult OnGet(string kind, int id)
    {
        if (TraceAddress.Read(kind, id) is not { } start || records.TraceOf(start) is not { } trace)
            return NotFound();
        return File(TraceSheet.Draw(SheetContent.Of(new TraceView(trace, shop), SignedIn.Name)), "application/pdf");
    }
}
