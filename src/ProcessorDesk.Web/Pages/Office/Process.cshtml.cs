using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade.Process;
using ProcessorDesk.Web.Forms;

namespace ProcessorDesk.Web.Pages.Office;

/// <summary>What process records are held against: the shop's own figures, never looser than those published, and a list of each product's table and drying loss.</summary>
public sealed class ProcessModel(RecordsContext records, Verbs verbs) : StationPage
{
    [BindProperty]
    public ProcessInput Input { get; set; } = new();

    public IReadOnlyList<Difference> Differences { get; private set; } = [];

    public IReadOnlyList<Product> Products { get; private set; } = [];

    public static IEnumerable<Choice> Coolings =>
    [
        new("", "The published one that a record comes closest to"),
        .. CoolingOptions.All.Where(option => !option.OffUntilConfirmed).Select(option => new Choice(option.Id, option.Name, string.Join(", then ", option.Steps.Select(step => step.Print())))),
    ];

    public void OnGet()
    {
        var shop = records.Shop.AsNoTracking().Single();
        (Input, Version) = (ProcessInput.Of(shop), shop.Version);
        Load();
    }

    public IActionResult OnPost()
    {
        if (Input.Read(ModelState) is { } write)
        {
            var outcome = verbs.Run("set what records are held against", Hand, FormKey, _ =>
            {
                var shop = records.Shop.Single();
                return shop.StaleSince(Version) ?? (write(shop) is { Count: > 0 } findings ? Outcome.Refused(findings) : Outcome.Done());
            });
            if (outcome.IsDone)
            {
                Say("The shop's figures are saved. They hold for what is mixed from now on.");
                return RedirectToPage();
            }

            ModelState.Add(outcome.Findings);
            if (outcome.IsStale)
                ShowBoth();
        }

        Load();
        return Page();
    }

    private void ShowBoth()
    {
        var shop = records.Shop.AsNoTracking().Single();
        var theirs = ProcessInput.Of(shop);
        ModelState.SeenBoth(this, shop.Version);
        Differences = Difference.Of(
            ("The shop chills by", Cooling(theirs), Cooling(Input)), ("Longest gap between cooking readings", theirs.CookingGap, Input.CookingGap),
            ("Longest gap between chilling readings", theirs.ChillingGap, Input.ChillingGap), ("The thermometer may be off by", theirs.Accuracy, Input.Accuracy));
    }

    private static string Cooling(ProcessInput input) => Coolings.FirstOrDefault(one => one.Value == input.Cooling)?.Text ?? input.Cooling;

    private void Load() => Products = [.. records.Products.AsNoTracking().Where(product => product.RetiredAt == null).OrderBy(product => product.Name)];
}
