namespace ProcessorDesk.Trade.Blending;

/// <summary>The cheapest mix, or why there is none.</summary>
/// <param name="Blend">Null where no mix keeps all the bounds.</param>
/// <param name="Findings">
/// Empty where there is a blend; else one for each bound of a smallest set that cannot be kept together, none of which can be left
/// out, with fields "Fat.Most", "Fat.Least", "Materials[0].LeastShare", "….MostShare", "….OnHand". The first says the whole.
/// </param>
public sealed record LeastCostAnswer(LeastCostBlend? Blend, IReadOnlyList<Finding> Findings);
