namespace ProcessorDesk.Records;

/// <summary>Something of a job its owner has not got yet, and why: "Summer sausage", "resting in batch 12".</summary>
public sealed record Missing(string What, string Why);
