using Microsoft.AspNetCore.Mvc;
using ProcessorDesk.Records;
using ProcessorDesk.Web.Forms;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Counter;

public sealed class TakenInModel(RecordsContext records, ShopDay shop) : StationPage
{
    public JobPapers Job { get; private set; } = null!;

    public ShopDay Shop => shop;

    public IActionResult OnGet(int job)
    {
        if (JobPapers.Of(records, job) is not { } found)
            return NotFound();
        Job = found;
        return Page();
    }
}
