namespace ProcessorDesk.Trade.Formulas;

/// <summary>Added water in sausage: how much may go in, and how much an analysis shows.</summary>
public static class SausageWater
{
    /// <summary>Water to all ingredients of uncooked sausage, the water with them. Source: 9 CFR 319.140.</summary>
    private static readonly Ratio Uncooked = ProductLimits.All.Single(limit => limit is { Class: ProductClass.UncookedSausage, Part: ProductPart.AddedWater }).Figure;

    /// <summary>
    /// The most water beside the other ingredients of uncooked sausage, down to the division. It is 3 % of everything with the water in
    /// it, so 3/97 of the rest: 0.78866 lb beside 25.5 lb, and not 0.765.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">The weight is below zero.</exception>
    public static Weight MostInUncooked(Weight otherIngredients, ScaleDivision division) =>
        Portion.Down(otherIngredients, Uncooked / (Ratio.One - Uncooked), division);

    /// <summary>
    /// Added water by analysis of finished product: TW − (TP − (P − 1)) × 4 in percent, with P − 1 not below zero. Source: 9 CFR 318.22.
    /// </summary>
    /// <param name="water">TW, total water.</param>
    /// <param name="protein">TP, total protein.</param>
    /// <param name="otherProtein">P, protein that is not of the meat.</param>
    /// <returns>A part of the product, exactly; below zero where there is less water than four times the protein of the meat.</returns>
    public static Ratio ByAnalysis(Proportion water, Proportion protein, Proportion otherProtein)
    {
        var free = Proportion.FromPercent(1m);
        var counted = otherProtein > free ? otherProtein.ToRatio() - free.ToRatio() : Ratio.Zero;
        return water.ToRatio() - (protein.ToRatio() - counted) * Ratio.Of(4, 1);
    }
}
