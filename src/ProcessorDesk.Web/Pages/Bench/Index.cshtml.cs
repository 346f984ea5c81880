using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;

namespace ProcessorDesk.Web.Pages.BenchPages;

/// <summary>The bench: every calculator there is.</summary>
[LookOnly]
[IgnoreAntiforgeryToken]
public sealed class IndexModel : PageModel
{
    public void OnGet()
    {
    }
}
