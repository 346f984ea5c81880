using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Formulas;

namespace ProcessorDesk.Records;

/// <summary>A kept formula as the trade's arithmetic takes it. Product and ingredients must have been loaded.</summary>
public static class FormulaReading
{
    public static Formula ToTrade(this FormulaVersion formula) => new(
        formula.Product.Name,
        formula.LeanShare,
        formula.Product.Cured,
        [.. formula.Ingredients.OrderBy(line => line.Position).Select(line => line.ToTrade())])
    {
        Pieces = formula is { Casing: { } casing, CasingHolds: { IsPositive: true } holds } ? [new PieceLine(casing, holds)] : [],
    };
}
