using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Curing;

namespace ProcessorDesk.Records;

/// <summary>The cure of a load, checked on what was weighed of meat and cure.</summary>
public static class LoadCure
{
    /// <summary>
    /// The check on what is weighed, each lot by its own label; null where the product is not cured and nothing in it holds cure. Product,
    /// batch and lots must have been loaded; without lots each ingredient counts at the strength of the mixing.
    /// </summary>
    public static CureCheck? CureOf(this Load load, Weight block, IReadOnlyCollection<LoadIngredient> ingredients) => load.Check(block, ingredients, again: false);

    /// <summary>The same by the second weighing; what was weighed once counts as it was weighed.</summary>
    public static CureCheck? CureAgain(this Load load, Weight block, IReadOnlyCollection<LoadIngredient> ingredients) => load.Check(block, ingredients, again: true);

    /// <summary>The check that says more: the one on the first weighing, or the second's where only that is over the limit. See <see cref="CureOf"/>.</summary>
    public static CureCheck? StricterCure(this Load load, Weight block, IReadOnlyCollection<LoadIngredient> ingredients) =>
        load.CureOf(block, ingredients) is { Meets: true } first && load.CureAgain(block, ingredients) is { Meets: false } second ? second
        : load.CureOf(block, ingredients);

    /// <summary>Cure went into a mixed load, and no second weighing of it is noted. Its ingredients must have been loaded.</summary>
    public static bool LacksSecondWeighing(this Load load, IEnumerable<LoadIngredient> ingredients) =>
        load.MixedAt is not null && ingredients.Any(line => line.Cures && line.Weighed.IsPositive && line.WeighedAgain is null);

    private static CureCheck? Check(this Load load, Weight block, IReadOnlyCollection<LoadIngredient> ingredients, bool again)
    {
        CureAmount[] cures = [.. ingredients.SelectMany(line => line.ToCures(load.LotUses, again)).Where(cure => !cure.Nitrite.IsZero || !cure.Nitrate.IsZero)];
        var meat = ingredients.Where(line => line.InMeatBlock).Aggregate(block, (sum, line) => sum + line.Weighed);
        return load.Batch.Product.Cured || cures.Length > 0 ? ComminutedCure.Check(meat, cures) : null;
    }
}
