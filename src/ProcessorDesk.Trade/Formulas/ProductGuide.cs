using System.Globalization;

namespace ProcessorDesk.Trade.Formulas;

/// <summary>Holds a mix against the rules for its class of product. What it finds is a guide for custom work, never a refusal.</summary>
public static class ProductGuide
{
    /// <param name="loss">Lost from mix to finished product; zero for fresh product.</param>
    /// <returns>A finding for each figure that is passed, its field the part of the product; compared exactly.</returns>
    /// <exception cref="ArgumentOutOfRangeException">All of it is lost.</exception>
    public static IReadOnlyList<Finding> Check(ProductClass kind, FormulaComposition mix, Proportion loss) =>
    [
        .. from limit in ProductLimits.All
           where limit.Class == kind
           let found = limit.IsOfMix ? mix.OfMix(limit.Part) : mix.OfFinished(limit.Part, loss)
           where limit.IsLeast ? found < limit.Figure : found > limit.Figure
           select Of(limit, found),
    ];

    private static Finding Of(ProductLimit limit, Ratio found)
    {
        var allowed = limit.Figure.IsZero ? "none" : $"{(limit.IsLeast ? "at least" : "at most")} {Percent(limit.Figure, 0)}";
        var whole = limit.IsOfMix ? "all ingredients" : "finished product";
        return new Finding(
            limit.Part.ToString(),
            $"{Name(limit.Part)} would be {PastPercent(found, limit.Figure)} of {whole}; product for sale holds {allowed}. For custom work it is a guide.",
            PastPercent(found, limit.Figure),
            allowed,
            limit.Source);
    }

    // As many decimals as it takes for a figure past a limit to be seen to be past it.
    private static string PastPercent(Ratio found, Ratio limit)
    {
        var decimals = 2;
        while (decimals < 8 && Percent(found, decimals) == Percent(limit, decimals))
            decimals++;
        return Percent(found, decimals);
    }

    private static string Percent(Ratio part, int decimals)
    {
        var percent = (part * Ratio.Of(100, 1)).ToDecimal();
        return (decimals == 0 ? percent.ToString("0.##", CultureInfo.InvariantCulture) : Rounded(percent, decimals)) + " %";
    }

    private static string Rounded(decimal percent, int decimals) =>
        decimal.Round(percent, decimals, MidpointRounding.AwayFromZero).ToString("F" + decimals, CultureInfo.InvariantCulture);

    private static string Name(ProductPart part) => part switch
    {
        ProductPart.Fat => "Fat",
        ProductPart.AddedWater => "Added water",
        ProductPart.FatAndAddedWater => "Fat and added water together",
        ProductPart.Meat => "Meat",
        ProductPart.Binders => "Binders together",
        ProductPart.IsolatedSoyProtein => "Isolated soy protein",
        ProductPart.SodiumCaseinate => "Sodium caseinate",
        ProductPart.Phosphate => "Phosphate",
    };
}
