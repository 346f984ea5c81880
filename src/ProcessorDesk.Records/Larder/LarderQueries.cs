using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>What is on the shelf.</summary>
public static class LarderQueries
{
    /// <summary>Neither used up nor struck out.</summary>
    public static IQueryable<IngredientLot> Open(this IQueryable<IngredientLot> lots) => lots.Where(lot => lot.UsedUpAt == null && lot.StruckAt == null);

    /// <summary>With what is left of each, the oldest first.</summary>
    public static List<LotOnHand> OnHand(this IQueryable<IngredientLot> lots, RecordsContext records) =>
    [
        .. lots.AsNoTracking().OrderBy(lot => lot.IngredientId).ThenBy(lot => lot.ReceivedOn).ThenBy(lot => lot.Id)
            .Select(lot => new
            {
                lot.Id,
                lot.IngredientId,
                lot.LotCode,
                lot.Supplier,
                lot.ReceivedOn,
                lot.Amount,
                lot.Pieces,
                lot.Nitrite,
                lot.Nitrate,
                IsOpen = lot.UsedUpAt == null && lot.StruckAt == null,
                Used = records.LotUses.Where(use => use.LotId == lot.Id && use.StruckAt == null).Sum(use => use.Amount.Milligrams),
                PiecesUsed = records.LotUses.Where(use => use.LotId == lot.Id && use.StruckAt == null).Sum(use => use.Pieces),
            })
            .AsEnumerable()
            .Select(lot => new LotOnHand(
                lot.Id, lot.IngredientId, lot.LotCode, lot.Supplier, lot.ReceivedOn, lot.Amount, Weight.FromMilligrams(lot.Used), lot.Pieces, lot.PiecesUsed, lot.Nitrite, lot.Nitrate, lot.IsOpen))
    ];

    /// <summary>Less on hand than the shop wants there to be.</summary>
    /// <param name="open">The open lots of the ingredient.</param>
    public static bool IsLow(this Ingredient ingredient, IEnumerable<LotOnHand> open) => ingredient.GoesByPiece
        ? open.Sum(lot => lot.PiecesLeft) < ingredient.LeastPieces
        : open.Aggregate(Weight.Zero, (sum, lot) => sum + lot.Left) < ingredient.LeastOnHand;
}
