using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Web.Forms;

namespace ProcessorDesk.Web.Pages.Office;

/// <summary>The shop's settings in one form.</summary>
public sealed class ShopModel(RecordsContext records, Verbs verbs, ShopDay day, AddressTrial trial) : StationPage
{
    [BindProperty]
    public ShopInput Input { get; set; } = new();

    public IReadOnlyList<Difference> Differences { get; private set; } = [];

    /// <summary>The settings as they are saved, whatever is typed.</summary>
    public ShopSettings Kept => day.Settings;

    /// <summary>The day the public address was found to lead here; null where it was not.</summary>
    public string? TriedOn => Kept.PublicAddressTestedAt is { } at ? day.Date(at) : null;

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

    /// <summary>Asks at the public address whether it leads here. Takes seconds, so it happens before the verb and not in it.</summary>
    public async Task<IActionResult> OnPostTry()
    {
        var address = Kept.PublicAddress;
        var problem = address is null ? "Save a public address first." : await trial.Try(address);
        var outcome = problem is not null ? Outcome.Refused(new Finding("PublicAddress", problem)) : verbs.Run("try the public address", Hand, FormKey, act =>
        {
            var shop = records.Shop.Single();
            if (shop.PublicAddress != address)
                return Outcome.Refused(new Finding("PublicAddress", "The address was changed meanwhile. Try the new one."));
            shop.PublicAddressLedHere(act.Now);
            return Outcome.Done();
        });
        if (outcome.IsDone)
        {
            Say($"{address} leads here. Owners' links are given out from now on.");
            return RedirectToPage();
        }

        ModelState.Clear();
        ModelState.Add(outcome.Findings);
        OnGet();
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
            ("Bench scale", theirs.BenchDivision, Input.BenchDivision), ("Cure scale", theirs.CureDivision, Input.CureDivision),
            ("Mustard and celery", theirs.MoreAllergens ? "shown" : "not shown", Input.MoreAllergens ? "shown" : "not shown"),
            ("Mixer", theirs.MixerCapacity, Input.MixerCapacity), ("Smallest good fill", theirs.SmallestFill, Input.SmallestFill), ("Smokehouse in a day", theirs.SmokehouseHolds, Input.SmokehouseHolds),
            ("The kitchen in a day", theirs.DayHolds, Input.DayHolds), ("Days until unclaimed", theirs.UnclaimedAfterDays, Input.UnclaimedAfterDays),
            ("Public address", theirs.PublicAddress, Input.PublicAddress));
    }
}
