using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Formulas;

namespace ProcessorDesk.Records;

/// <summary>A kept formula as the trade's arithmetic takes it. Its lines must have been loaded; prices count where the ingredients were, too.</summary>
public static class FormulaReading
{
    /// <summary>The product must have been loaded.</summary>
    public static Formula ToTrade(this FormulaVersion formula) => formula.ToTrade(formula.Product);

    public static Formula ToTrade(this FormulaVersion formula, Product product) => new(
        product.Name,
        formula.LeanShare,
        product.Cured,
        [.. formula.Ingredients.OrderBy(line => line.Position).Select(line => line.ToTrade())])
    {
        Pieces = formula is { Casing: { } casing, CasingHolds: { IsPositive: true } holds } ? [new PieceLine(casing, holds) { Price = formula.CasingIngredient?.Cost }] : [],
    };

    /// <summary>What it is made of. An owner's own lean costs nothing; fat that nobody stated counts as none, see <see cref="StatesFat"/>.</summary>
    public static FormulaComposition Composition(this FormulaVersion formula, Formula trade) => FormulaComposition.Of(
        trade,
        new MeatContent(formula.LeanFat ?? Proportion.Zero, PricePerPound.FromCents(0)),
        new MeatContent(formula.AddedFatFat ?? Proportion.Zero, formula.AddedFatIngredient?.Price));

    /// <summary>The fat of both meats in the block is stated, so that of the mix can be reckoned.</summary>
    public static bool StatesFat(this FormulaVersion formula) =>
        formula.LeanFat is not null && (formula.LeanShare == Proportion.Whole || formula.AddedFatFat is not null);

    /// <summary>Whole casings for so much green weight, up; zero for loose product.</summary>
    public static long CasingsFor(this FormulaVersion formula, Weight green) => formula is { Casing: { } casing, CasingHolds: { IsPositive: true } holds }
        ? new PieceLine(casing, holds).CountFor(green)
        : 0;
}
