using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Web.Forms;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Kitchen;

/// <summary>What is on the shelf: each ingredient with its open lots, what is low first.</summary>
public sealed class LarderModel(RecordsContext records, ShopDay shop) : StationPage
{
    public IReadOnlyList<Shelf> Shelves { get; private set; } = [];

    public ShopDay Shop => shop;

    public bool IsManager => SignedIn.Role == StaffRole.Manager;

    public void OnGet()
    {
        var lots = records.IngredientLots.Open().OnHand(records).ToLookup(lot => lot.IngredientId);
        Shelves =
        [
            .. records.Ingredients.AsNoTracking().OrderBy(one => one.Kind).ThenBy(one => one.Name).AsEnumerable()
                .Where(one => one.RetiredAt is null || lots.Contains(one.Id))
                .Select(one => new Shelf(one, [.. lots[one.Id]], one.IsLow(lots[one.Id])))
                .OrderByDescending(shelf => shelf.IsLow)
        ];
    }

    /// <summary>An ingredient and its open lots, the oldest first.</summary>
    public sealed record Shelf(Ingredient Ingredient, IReadOnlyList<LotOnHand> Lots, bool IsLow)
    {
        public string OnHand => LarderWords.Of(Ingredient, ProcessorDesk.Trade.Weight.FromMilligrams(Lots.Sum(lot => lot.Left.Milligrams)), Lots.Sum(lot => lot.PiecesLeft));

        public string Least => LarderWords.Of(Ingredient, Ingredient.LeastOnHand, Ingredient.LeastPieces);

        public string Left(LotOnHand lot) => LarderWords.Of(Ingredient, lot.Left, lot.PiecesLeft);
    }
}
