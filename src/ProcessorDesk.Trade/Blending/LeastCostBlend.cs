namespace ProcessorDesk.Trade.Blending;

/// <summary>The cheapest mix, exactly and as it is weighed.</summary>
/// <param name="Parts">One for each material in the order given, those not used with zero.</param>
/// <param name="CostPerPound">Dollars for a pound of the exact mix, unrounded.</param>
/// <param name="Fat">Fat in the exact mix as a part of it, unrounded.</param>
/// <param name="WeighedCostPerPound">Dollars for a pound of the mix as weighed on the division, unrounded.</param>
/// <param name="WeighedFat">Fat in the mix as weighed on the division, unrounded.</param>
/// <param name="Notes">What rounding to the division did to the bounds, in sentences; empty where all of them still hold.</param>
public sealed record LeastCostBlend(
    IReadOnlyList<BlendPart> Parts, Ratio CostPerPound, Ratio Fat, Ratio WeighedCostPerPound, Ratio WeighedFat, IReadOnlyList<string> Notes);
