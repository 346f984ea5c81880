namespace ProcessorDesk.Trade.Balance;

/// <summary>One part with its weight.</summary>
/// <param name="Part">Where it went.</param>
/// <param name="Weight">Below zero only where something was gained, as a washed carcass that weighs more chilled than hot.</param>
/// <param name="Reason">Why, for what was thrown away; null elsewhere and where nobody said.</param>
public sealed record BalanceLine(BalancePart Part, Weight Weight, DiscardReason? Reason = null);
