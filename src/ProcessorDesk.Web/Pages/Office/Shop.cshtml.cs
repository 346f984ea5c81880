using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Web.Forms;

namespace ProcessorDesk.Web.Pages.Office;

/// <summary>The shop's settings in one form.</summary>
public sealed class ShopModel(RecordsContext records, Verbs verbs) : StationPage
{
    [BindProperty]
    public ShopInput Input { get; set; } = new();

    public IReadOnlyList<Difference> Differences { get; private set; } = [];

    /// <summary>Named zones of the country first, since a shop's clock is one of these; the one in use whatever it is.</summary>
    public IReadOnlyList<Choice> Zones =>
    [
        .. TimeZoneInfo.GetSystemTimeZones().Select(zone => zone.Id)
            .Where(id => id.StartsWith("America/", StringComparison.Ordinal) || id.StartsWith("Pacific/", StringComparison.Ordinal) || id is "UTC" or "Etc/UTC")
            .Append(Input.TimeZone).Where(id => id != "").Distinct().Order(StringComparer.Ordinal)
            .Select(id => new Choice(id, id.Replace('_', ' ')))
    ];

    public void OnGet()
    {
        var shop = records.Shop.AsNoTracking().Single();
        Input = ShopInput.Of(shop);
        Version = shop.Version;
    }

    public IActionResult OnPost()
    {
        if (Input.Read(ModelState) is not { } write)
            return Page();
        var outcome = verbs.Run("set the shop", Hand, FormKey, _ =>
        {
            var shop = records.Shop.Single();
            if (shop.StaleSince(Version) is { } stale)
                return stale;
            write(shop);
            return Outcome.Done();
        });
        if (outcome.IsDone)
        {
            Say("The shop's settings are saved.");
            return RedirectToPage();
        }

        ModelState.Add(outcome.Findings);
        if (outcome.IsStale)
            ShowBoth();
        return Page();
    }

    private void ShowBoth()
    {
        var shop = records.Shop.AsNoTracking().Single();
        var theirs = ShopInput.Of(shop);
        ModelState.SeenBoth(this, shop.Version);
        Differences = Difference.Of(
            ("Name", theirs.Name, Input.Name), ("Address", theirs.Address, Input.Address), ("Phone", theirs.Phone, Input.Phone),
            ("Time zone", theirs.TimeZone, Input.TimeZone), ("Terms", theirs.Terms, Input.Terms), ("Days to the promise", theirs.PromiseDays, Input.PromiseDays),
            ("Without a tag", Wording.Of(theirs.TagRule), Wording.Of(Input.TagRule)), ("Tax", theirs.TaxRate, Input.TaxRate), ("Tax is called", theirs.TaxWording, Input.TaxWording),
            ("May be unaccounted for", theirs.Tolerance, Input.Tolerance), ("Rail scale", theirs.RailDivision, Input.RailDivision),
            ("Bench scale", theirs.BenchDivision, Input.BenchDivision), ("Cure scale", theirs.CureDivision, Input.CureDivision));
    }
}
