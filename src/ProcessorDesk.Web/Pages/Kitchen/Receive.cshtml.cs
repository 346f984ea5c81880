using System.Globalization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Web.Forms;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Kitchen;

/// <summary>A lot is written down as it comes in.</summary>
public sealed class ReceiveModel(RecordsContext records, Verbs verbs, ShopDay shop) : StationPage
{
    [BindProperty]
    public ReceiveInput Input { get; set; } = new();

    public IReadOnlyList<Choice> Ingredients =>
        [.. _larder.Select(one => new Choice(one.Id.ToString(CultureInfo.InvariantCulture), one.Name, one.GoesByPiece ? "in pieces" : $"in {UnitFactors.Symbol(one.BoughtIn)}"))];

    private List<Ingredient> _larder = [];

    public void OnGet(int? ingredient)
    {
        Load();
        Input.Ingredient = ingredient?.ToString(CultureInfo.InvariantCulture) ?? "";
        Input.ReceivedOn = shop.Today.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
    }

    public IActionResult OnPost()
    {
        Load();
        if (Input.Read(ModelState, _larder, shop) is not { } receipt)
            return Page();
        var outcome = verbs.Run("receive a lot", Hand, FormKey, act => records.ReceiveLot(receipt, act));
        if (outcome.IsDone)
        {
            Say($"Lot {receipt.LotCode.Trim()} is on the shelf.");
            return RedirectToPage("Larder");
        }

        ModelState.Add(outcome.Findings);
        return Page();
    }

    private void Load() => _larder = [.. records.Ingredients.AsNoTracking().Where(one => one.RetiredAt == null).OrderBy(one => one.Name)];
}
