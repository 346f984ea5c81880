namespace ProcessorDesk.Trade.Kitchen.Planning;

/// <summary>One thing cleaned away before a batch.</summary>
/// <param name="Why">A sentence.</param>
/// <param name="Minutes">Zero or more.</param>
public sealed record Cleaning(string Why, int Minutes);
