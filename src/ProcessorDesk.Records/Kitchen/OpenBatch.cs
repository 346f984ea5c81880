using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>A batch that is neither released nor over.</summary>
/// <param name="Whose">Owners' names, each once, in the order of their jobs.</param>
/// <param name="Green">As planned.</param>
public sealed record OpenBatch(int Id, int Number, string Product, Pooling Pooling, DateTime PlannedAt, IReadOnlyList<string> Whose, Weight Green, BatchProgress Progress);
