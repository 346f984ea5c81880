using System.Globalization;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Formulas;

namespace ProcessorDesk.Web.Pages.Office;

/// <summary>What a formula is made of, what it costs, and what the rules for product for sale would say of it.</summary>
/// <param name="Rows">Salt, fat and water, of the mix and of finished product.</param>
/// <param name="CostGreen">Dollars a pound of the mix; null where a price is not known.</param>
/// <param name="Casings">"21 of Fibrous casing"; null for loose product.</param>
/// <param name="Guide">Past the figures for product for sale: a guide, never a refusal.</param>
public sealed record FormulaContents(
    IReadOnlyList<FormulaContents.Row> Rows, string? CostGreen, string? CostFinished, string? Casings, Allergen Contains, IReadOnlyList<string> Pork, ProductClass? Class, IReadOnlyList<Finding> Guide)
{
    private const string NotKnown = "not known";

    public static FormulaContents Of(Product product, FormulaVersion version, Formula formula)
    {
        var (mix, loss, fat) = (version.Composition(formula), version.LossTypical, version.StatesFat());
        return new FormulaContents(
            [
                new Row("Salt, with that of the cure", FormulaOutlook.Percent(mix.SaltOfMix), $"{FormulaOutlook.Percent(mix.Salt)} of the meat block"),
                new Row("Fat", fat ? FormulaOutlook.Percent(mix.OfMix(ProductPart.Fat)) : NotKnown, fat ? $"{FormulaOutlook.Percent(mix.OfFinished(ProductPart.Fat, loss))} finished" : "Say what fat the lean and the added fat have"),
                new Row("Added water", FormulaOutlook.Percent(mix.OfMix(ProductPart.AddedWater)), $"{FormulaOutlook.Percent(mix.OfFinished(ProductPart.AddedWater, loss))} finished"),
            ],
            Dollars(mix.CostPerPound),
            Dollars(mix.CostPerFinishedPound(loss)),
            FormulaScaling.Scale(formula, Weight.FromPounds(100m), ScaleDivision.TenthGram).Pieces is [var pieces] ? $"{pieces.Count.ToString("#,0", CultureInfo.InvariantCulture)} of {pieces.Line.Name}" : null,
            version.Contains,
            Porks(version),
            product.Class,
            product.Class is { } rules
                ? [.. ProductGuide.Check(rules, mix, loss).Where(finding => fat || !finding.Field.Contains(nameof(ProductPart.Fat), StringComparison.Ordinal))]
                : []);
    }

    private static string? Dollars(Ratio? perPound) =>
        perPound is { } dollars ? "$" + decimal.Round(dollars.ToDecimal(), 3, MidpointRounding.AwayFromZero).ToString("0.000", CultureInfo.InvariantCulture) + " / lb" : null;

    private static List<string> Porks(FormulaVersion version) =>
    [
        .. version.AddedFatIsPork ? [version.AddedFat ?? "the added fat"] : Array.Empty<string>(),
        .. version.Ingredients.Where(line => line.IsPork).Select(line => line.Name),
        .. version.CasingIsPork ? [version.Casing ?? "the casing"] : Array.Empty<string>(),
    ];

    public sealed record Row(string Name, string OfMix, string Beside);
}
