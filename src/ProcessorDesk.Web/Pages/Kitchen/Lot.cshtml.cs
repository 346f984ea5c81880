using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Web.Forms;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Kitchen;

/// <summary>One lot: where it came from, which loads it went into, what is left; used up, found again, struck out.</summary>
public sealed class LotModel(RecordsContext records, Verbs verbs, ShopDay shop) : StationPage
{
    private const int MostShown = 50;

    [BindProperty]
    public string Because { get; set; } = "";

    public IngredientLot Lot { get; private set; } = null!;

    public LotOnHand Stock { get; private set; } = null!;

    /// <summary>The latest first, those struck among them.</summary>
    public IReadOnlyList<Use> Uses { get; private set; } = [];

    /// <summary>Other lots of the ingredient, the latest first.</summary>
    public IReadOnlyList<Other> Others { get; private set; } = [];

    public ShopDay Shop => shop;

    public string Left => LarderWords.Of(Lot.Ingredient, Stock.Left, Stock.PiecesLeft);

    public string Received => LarderWords.Of(Lot.Ingredient, Lot.Amount, Lot.Pieces);

    public IActionResult OnGet(int id) => Load(id) ? Page() : NotFound();

    public IActionResult OnPostUseUp(int id) => Turn(id, "use a lot up", act => records.UseUpLot(id, act), "is used up");

    public IActionResult OnPostFindMore(int id) => Turn(id, "find more of a lot", act => records.FindMoreOfLot(id, act), "is on the shelf again");

    public IActionResult OnPostStrike(int id) => Turn(id, "strike out a lot", act => records.StrikeLot(id, Because, act), "is struck out");

    private IActionResult Turn(int id, string verb, Func<Act, Outcome> work, string said)
    {
        if (!Load(id))
            return NotFound();
        var outcome = verbs.Run(verb, Hand, FormKey, work);
        if (outcome.IsDone)
        {
            Say($"Lot {Lot.LotCode} {said}.");
            return RedirectToPage("Larder");
        }

        ModelState.Add(outcome.Findings, "");
        return Page();
    }

    private bool Load(int id)
    {
        var lots = records.IngredientLots.Where(lot => lot.Id == id);
        if (lots.AsNoTracking().Include(lot => lot.Ingredient).SingleOrDefault() is not { } lot)
            return false;
        Lot = lot;
        Stock = lots.OnHand(records).Single();
        Uses =
        [
            .. records.LotUses.AsNoTracking().Where(use => use.LotId == id).OrderByDescending(use => use.Id).Take(MostShown)
                .Select(use => new Use(
                    use.Load.BatchId, use.Load.Batch.Number, use.Load.Batch.Product.Name, use.Load.Number, use.At, use.Amount, use.Pieces, use.StruckBecause))
        ];
        Others =
        [
            .. records.IngredientLots.AsNoTracking().Where(other => other.IngredientId == lot.IngredientId && other.Id != id).OrderByDescending(other => other.ReceivedOn).Take(12)
                .Select(other => new Other(other.Id, other.LotCode, other.ReceivedOn, other.UsedUpAt != null, other.StruckAt != null))
        ];
        return true;
    }

    public sealed record Use(int BatchId, int Batch, string Product, int Load, DateTime At, Weight Amount, int Pieces, string? StruckBecause);

    public sealed record Other(int Id, string LotCode, DateOnly ReceivedOn, bool IsUsedUp, bool IsStruck);
}
