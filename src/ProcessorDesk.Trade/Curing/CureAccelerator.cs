namespace ProcessorDesk.Trade.Curing;

/// <summary>An accelerator beside the cure.</summary>
/// <param name="PartsPerMillion">On the same base as the nitrite; zero or more, and zero is none.</param>
public sealed record CureAccelerator(AcceleratorKind Kind, decimal PartsPerMillion);
