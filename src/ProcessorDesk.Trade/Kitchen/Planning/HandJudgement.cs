namespace ProcessorDesk.Trade.Kitchen.Planning;

/// <summary>What is to be said of an arrangement made by hand.</summary>
/// <param name="Refusals">
/// What breaks a promise, so that it can't be made; fields "Loads[0]" by place, "Allotments[12]" by number.
/// </param>
/// <param name="Costs">Where it is worse than the plan of the same meat; found is the hand's, allowed the plan's. Empty while there are refusals.</param>
public sealed record HandJudgement(IReadOnlyList<Finding> Refusals, IReadOnlyList<Finding> Costs);
