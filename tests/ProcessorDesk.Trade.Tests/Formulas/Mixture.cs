using ProcessorDesk.Trade.Formulas;

namespace ProcessorDesk.Trade.Tests.Formulas;

/// <summary>The small cast of the tests of composition.</summary>
internal static class Mixture
{
    public static decimal Figure(string figure) => decimal.Parse(figure, System.Globalization.CultureInfo.InvariantCulture);

    public static MeatContent Meat(decimal fatPercent, int? cents = null) =>
        new(Proportion.FromPercent(fatPercent), cents is { } known ? PricePerPound.FromCents(known) : null);

    public static Formula Mix(params FormulaLine[] lines) => new("Mix", Proportion.Whole, false, lines);

    public static FormulaComposition With(params FormulaLine[] lines) => FormulaComposition.Of(Mix(lines), Meat(0m), Meat(0m));

    public static FormulaComposition OfFat(decimal percent) => FormulaComposition.Of(Mix(), Meat(percent), Meat(0m));

    public static FormulaLine Water(Ratio ofBlock) => Other(ofBlock) with { Water = Proportion.Whole };

    public static FormulaLine Of(Additive kind, int parts, int ofMeat) => Other(Ratio.Of(parts, ofMeat)) with { Additive = kind };

    public static FormulaLine Other(Ratio ofBlock) => new("Something", ofBlock, Proportion.Zero, Proportion.Zero, false);
}
