using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>A box as it is packed.</summary>
/// <param name="Tare">Of the empty box.</param>
/// <param name="Place">Where it goes in the freezer; null where nobody notes it.</param>
public sealed record BoxOrder(int JobId, IReadOnlyList<PacksIn> Contents, Weight Gross, Weight Tare, string? Place);

/// <summary>Packs of one kind that go into a box.</summary>
/// <param name="AllotmentId">Of a product; null for cuts.</param>
/// <param name="Cut">Which cut, as the table says it: "Backstrap, steaks"; null where it was not said, and for a product.</param>
public sealed record PacksIn(int? AllotmentId, string? Cut, int Packs);
