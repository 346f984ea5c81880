namespace ProcessorDesk.Trade.Process;

/// <summary>One reading of the acidity of a fermenting product.</summary>
/// <param name="At">When it was read, in UTC as the temperatures of the same record.</param>
public readonly record struct AcidityReading(DateTime At, Ph Reading);
