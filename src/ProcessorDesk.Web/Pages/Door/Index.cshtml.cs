using System.Globalization;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Web.Door;
using ProcessorDesk.Web.Forms;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Door;

/// <summary>The door: a name, a PIN and a station. It also gives back the form that someone sent while they were signed out.</summary>
public sealed class IndexModel(
    RecordsContext records, ShopDay shop, PinTries tries, FirstManagerCode code, IDataProtectionProvider protection) : PageModel
{
    private IReadOnlyList<Staff> _staff = [];

    [BindProperty]
    public InputModel Input { get; set; } = new();

    [BindProperty(SupportsGet = true)]
    public string ReturnUrl { get; set; } = "";

    public bool IsDemo => shop.Settings.IsDemo;

    public IReadOnlyList<Choice> Staff => [.. _staff.Select(s => new Choice(s.Id.ToString(CultureInfo.InvariantCulture), s.Name, StaffWords.Role(s.Role)))];

    public IReadOnlyList<Choice> Places => [.. Stations.Places.Select(s => new Choice(s.Folder, s.Name))];

    /// <summary>The kept form on its way through this page, sealed; null where there is none.</summary>
    public string? Blob { get; private set; }

    /// <summary>The kept form, shown to the one who is signed in; null where there is none.</summary>
    public KeptForm? Again { get; private set; }

    public bool JustCameIn { get; private set; }

    public string Initials(Choice staff) => _staff.Single(s => s.Id.ToString(CultureInfo.InvariantCulture) == staff.Value).Initials;

    public IActionResult OnGet()
    {
        var kept = KeptForm.Of(HttpContext);
        if (User.Identity?.IsAuthenticated is true && kept is not null)
        {
            Again = kept;
            return Page();
        }
        if (code.Code is not null) return RedirectToPage("/Door/First");
        Blob = kept?.Protect(protection);
        Input.Station = HttpContext.LastStation();
        return Shown();
    }

    public async Task<IActionResult> OnPostAsync()
    {
        Blob = Request.Form[KeptForm.Field].FirstOrDefault();
        var station = Entrance.Known(Input.Station);
        if (station is null) ModelState.AddModelError("Input.Station", "Choose the station you are at.");
        if (Let(Input) is not { } staff || station is null) return Shown();

        await HttpContext.LetIn(staff, station);
        if (KeptForm.Unprotect(Blob, protection) is not { } kept)
            return Url.IsLocalUrl(ReturnUrl) ? LocalRedirect(ReturnUrl) : LocalRedirect("/Today");
        (Again, JustCameIn) = (kept, true);
        ModelState.Clear();
        return Page();
    }

    private PageResult Shown()
    {
        _staff = [.. records.Staff.AsNoTracking().Where(s => s.RetiredAt == null && (s.PinHash != null || IsDemo)).OrderBy(s => s.Name)];
        return Page();
    }

    private Staff? Let(InputModel input)
    {
        var staff = records.Staff.AsNoTracking().SingleOrDefault(s => s.Id == input.StaffId && s.RetiredAt == null);
        if (staff is null)
            ModelState.AddModelError("Input.StaffId", "Choose your name.");
        else if (!IsDemo && Refusal(staff, input.Pin) is { } refusal)
            ModelState.AddModelError("Input.Pin", refusal);
        else
            return staff;
        return null;
    }

    private string? Refusal(Staff staff, string pin)
    {
        var whose = $"staff {staff.Id}";
        if (tries.Words(whose) is { } wait) return wait;
        if (pin == "") return "Type your PIN.";
        if (Pins.Fits(pin, staff.PinHash))
        {
            tries.Right(whose);
            return null;
        }
        tries.Wrong(whose);
        return tries.Words(whose) ?? $"That is not the PIN of {staff.Name}. Type it again.";
    }

    public sealed class InputModel
    {
        public int? StaffId { get; set; }

        public string Pin { get; set; } = "";

        public string Station { get; set; } = "";
    }
}
