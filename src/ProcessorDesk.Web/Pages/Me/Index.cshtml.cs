using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Web.Door;
using ProcessorDesk.Web.Forms;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Me;

/// <summary>Who is signed in here; moves this screen to another station.</summary>
public sealed class IndexModel(RecordsContext records, ShopDay shop) : StationPage
{
    [BindProperty]
    public InputModel Input { get; set; } = new();

    public bool IsDemo => shop.Settings.IsDemo;

    public IReadOnlyList<Choice> Places => [.. Stations.Places.Select(s => new Choice(s.Folder, s.Name))];

    public void OnGet() => Input.Station = SignedIn.Station;

    public async Task<IActionResult> OnPostAsync()
    {
        if (Entrance.Known(Input.Station) is not { } station)
        {
            ModelState.AddModelError("Input.Station", "Choose the station this screen is at.");
            return Page();
        }
        var id = SignedIn.StaffId;
        await HttpContext.LetIn(records.Staff.AsNoTracking().Single(s => s.Id == id), station);
        Say($"This screen is now at {SignedIn.StationName}.");
        return RedirectToPage();
    }

    public sealed class InputModel
    {
        public string Station { get; set; } = "";
    }
}
