using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Formulas;

namespace ProcessorDesk.Records;

/// <summary>The lots a load is mixed from.</summary>
internal static class LotsUsed
{
    /// <summary>The lots an order names, with their ingredients, by id.</summary>
    public static Dictionary<int, IngredientLot> Read(RecordsContext records, MixOrder order)
    {
        int[] ids = [.. order.Lots.Values, .. new[] { order.FatLotId, order.CasingLotId }.OfType<int>()];
        return ids.Length == 0 ? [] : records.IngredientLots.Include(lot => lot.Ingredient).Where(lot => ids.Contains(lot.Id)).ToDictionary(lot => lot.Id);
    }

    /// <summary>Lots that can't have been used so: of another ingredient, or struck out. Fields "Lots[3]", "FatLotId", "CasingLotId".</summary>
    public static IEnumerable<Finding> Wrong(Load load, MixOrder order, IReadOnlyDictionary<int, IngredientLot> lots)
    {
        foreach (var (position, lot) in order.Lots)
        {
            if (Wrong(load, position, lots[lot]) is { } wrong)
                yield return wrong with { Field = FormattableString.Invariant($"Lots[{position}]") };
        }

        if (order.FatLotId is { } fat && Wrong(load, null, lots[fat]) is { } wrongFat)
            yield return wrongFat with { Field = "FatLotId" };
        if (order.CasingLotId is { } casing && Wrong(load, null, lots[casing]) is { } wrongCasing)
            yield return wrongCasing with { Field = "CasingLotId" };
    }

    /// <summary>A line older than the larder names no ingredient, and takes any lot.</summary>
    public static Finding? Wrong(Load load, int? position, IngredientLot lot)
    {
        var formula = load.Batch.FormulaVersion;
        int?[] right = position is { } at ? [formula.Ingredients.Single(line => line.Position == at).IngredientId]
            : lot.Ingredient.GoesByPiece ? [formula.CasingIngredientId] : [formula.AddedFatIngredientId];
        return lot.StruckAt is not null ? new Finding("", $"Lot {lot.LotCode} was struck out. Choose another.")
            : right is [{ } ingredient] && ingredient != lot.IngredientId ? new Finding("", $"Lot {lot.LotCode} is of {lot.Ingredient.Name}. Choose a lot of what went in.")
            : null;
    }

    /// <summary>Notes what went of each lot into the load; a lot of which nothing is left by that is used up.</summary>
    public static void Note(RecordsContext records, Load load, MixOrder order, IReadOnlyDictionary<int, IngredientLot> lots, ScaledFormula scaled, Act act)
    {
        void Add(int? position, int lot, Weight amount, int pieces)
        {
            if (amount.IsPositive || pieces > 0)
                records.LotUses.Add(new LotUse(load.Id, lot, position, amount, pieces, act.Now, act.Hand.Id));
        }

        foreach (var line in load.Ingredients)
        {
            if (order.Lots.TryGetValue(line.Position, out var lot))
                Add(line.Position, lot, line.Weighed, 0);
        }

        if (order.FatLotId is { } fat)
            Add(null, fat, order.Fat, 0);
        if (order.CasingLotId is { } casing)
            Add(null, casing, Weight.Zero, checked((int)scaled.Pieces.Sum(piece => piece.Count)));
        if (lots.Count == 0)
            return;
        records.SaveChanges();
        MarkUsedUp(records, lots.Values, act);
    }

    public static void MarkUsedUp(RecordsContext records, IEnumerable<IngredientLot> lots, Act act)
    {
        int[] ids = [.. lots.Select(lot => lot.Id)];
        var used = records.LotUses.AsNoTracking().Where(use => ids.Contains(use.LotId) && use.StruckAt == null)
            .GroupBy(use => use.LotId)
            .Select(uses => new { LotId = uses.Key, Milligrams = uses.Sum(use => use.Amount.Milligrams), Pieces = uses.Sum(use => use.Pieces) })
            .ToDictionary(one => one.LotId);
        foreach (var lot in lots.Where(lot => lot.UsedUpAt is null && used.ContainsKey(lot.Id)))
        {
            if (lot.Ingredient.GoesByPiece ? used[lot.Id].Pieces >= lot.Pieces : used[lot.Id].Milligrams >= lot.Amount.Milligrams)
                lot.UseUp(act.Now, act.Hand.Id);
        }
    }
}
