using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Web.Door;
using ProcessorDesk.Web.Forms;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Me;

/// <summary>Changes one's own PIN. A forgotten one is set anew by the manager.</summary>
public sealed class PinModel(RecordsContext records, Verbs verbs, PinTries tries, ShopDay shop) : StationPage
{
    [BindProperty]
    public InputModel Input { get; set; } = new();

    public IActionResult OnGet() => shop.Settings.IsDemo ? RedirectToPage("/Me/Index") : Page();

    public IActionResult OnPost()
    {
        if (shop.Settings.IsDemo) return RedirectToPage("/Me/Index");
        var id = SignedIn.StaffId;
        Check(records.Staff.AsNoTracking().Where(s => s.Id == id).Select(s => s.PinHash).Single());
        if (!ModelState.IsValid) return Page();

        var outcome = verbs.Run("change a PIN", Hand, FormKey, _ =>
        {
            records.Staff.Single(s => s.Id == id).SetPin(Pins.Hash(Input.NewPin));
            return Outcome.Done();
        });
        ModelState.Add(outcome.Findings);
        if (!ModelState.IsValid) return Page();

        Say("Your PIN is changed.");
        return RedirectToPage("/Me/Index");
    }

    private void Check(string? hash)
    {
        var whose = $"staff {SignedIn.StaffId}";
        if (tries.Words(whose) is { } wait)
        {
            ModelState.AddModelError("Input.OldPin", wait);
        }
        else if (!Pins.Fits(Input.OldPin, hash))
        {
            tries.Wrong(whose);
            ModelState.AddModelError("Input.OldPin", "That is not your PIN. Type the one you sign in with.");
        }
        if (Pins.Problem(Input.NewPin) is { } problem) ModelState.AddModelError("Input.NewPin", problem);
        else if (Input.AgainPin != Input.NewPin) ModelState.AddModelError("Input.AgainPin", "The two PINs differ. Type the same one twice.");
    }

    public sealed class InputModel
    {
        public string OldPin { get; set; } = "";

        public string NewPin { get; set; } = "";

        public string AgainPin { get; set; } = "";
    }
}
