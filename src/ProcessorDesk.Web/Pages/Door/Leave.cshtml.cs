using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;

namespace ProcessorDesk.Web.Pages.Door;

/// <summary>Signs out. A form token that no longer holds is no reason to keep someone in; posts from other sites are refused anyway.</summary>
[IgnoreAntiforgeryToken]
public sealed class LeaveModel : PageModel
{
    public IActionResult OnGet() => RedirectToPage("/Door/Index");

    public async Task<IActionResult> OnPostAsync()
    {
        await HttpContext.SignOutAsync();
        return RedirectToPage("/Door/Index");
    }
}
