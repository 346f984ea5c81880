namespace ProcessorDesk.Trade.Kitchen.Planning;

/// <summary>What does not fit today.</summary>
/// <param name="Why">A sentence.</param>
public sealed record LeftWaiting(WaitingMeat Meat, string Why);
