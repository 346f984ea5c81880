using Microsoft.AspNetCore.Mvc;
using ProcessorDesk.Records;
using ProcessorDesk.Web.Door;
using ProcessorDesk.Web.Forms;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Door;

/// <summary>Makes the first manager of a new shop, for whoever can read the console.</summary>
public sealed class FirstModel(RecordsContext records, Verbs verbs, PinTries tries, FirstManagerCode code) : StationPage
{
    private const string CodeTries = "first manager";

    [BindProperty]
    public InputModel Input { get; set; } = new();

    public IActionResult OnGet() => code.Code is null ? RedirectToPage("/Door/Index") : Page();

    public async Task<IActionResult> OnPostAsync()
    {
        if (code.Code is null) return RedirectToPage("/Door/Index");
        Check();
        if (!ModelState.IsValid) return Page();

        var outcome = verbs.Run("set up the first manager", Hand.SetUp, FormKey, _ =>
        {
            var manager = new Staff(Input.Name, Input.Initials, StaffRole.Manager);
            manager.SetPin(Pins.Hash(Input.Pin));
            records.Staff.Add(manager);
            records.SaveChanges();
            return Outcome.Done(manager.Id);
        });
        ModelState.Add(outcome.Findings);
        if (!ModelState.IsValid) return Page();

        code.Spend();
        var id = int.Parse(outcome.Result, System.Globalization.CultureInfo.InvariantCulture);
        await HttpContext.LetIn(records.Staff.Single(s => s.Id == id), "Office");
        Say("The shop is open. You are signed in as its manager.");
        return LocalRedirect("/Today");
    }

    private void Check()
    {
        if (tries.Words(CodeTries) is { } wait)
        {
            ModelState.AddModelError("Input.Code", wait);
            return;
        }
        if (!code.Takes(Input.Code))
        {
            tries.Wrong(CodeTries);
            ModelState.AddModelError("Input.Code", "That is not the code on the console. It changes each time ProcessorDesk starts.");
        }
        if (Input.Name.Trim() == "") ModelState.AddModelError("Input.Name", "Type your name.");
        if (Input.Initials.Trim().Length is < 1 or > 3) ModelState.AddModelError("Input.Initials", "Type one to three letters.");
        if (Pins.Problem(Input.Pin) is { } problem) ModelState.AddModelError("Input.Pin", problem);
        else if (Input.AgainPin != Input.Pin) ModelState.AddModelError("Input.AgainPin", "The two PINs differ. Type the same one twice.");
    }

    public sealed class InputModel
    {
        public string Code { get; set; } = "";

        public string Name { get; set; } = "";

        public string Initials { get; set; } = "";

        public string Pin { get; set; } = "";

        public string AgainPin { get; set; } = "";
    }
}
