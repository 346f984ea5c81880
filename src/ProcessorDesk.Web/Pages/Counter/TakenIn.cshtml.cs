using Microsoft.AspNetCore.Mvc;
using ProcessorDesk.Records;
using ProcessorDesk.Web.Forms;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Counter;

public sealed class TakenInModel(RecordsContext records, ShopDay shop) : StationPage
{
    public JobPapers Papers { get; private set; } = null!;

    public ShopDay Shop => shop;

    public IActionResult OnGet(int job)
    {
        if (JobPapers.Of(records, job) is not { } found)
            return NotFound();
        Papers = found;
        return Page();
    }
}
