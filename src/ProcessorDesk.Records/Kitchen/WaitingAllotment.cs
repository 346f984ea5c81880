using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>An allotment that no batch has taken yet.</summary>
/// <param name="Species">Of the animals it is from, each once.</param>
public sealed record WaitingAllotment(
    int Id, int ProductId, string Product, int FormulaId, int FormulaNumber, int JobId, int JobNumber, int OwnerId, string Owner, Pooling Pooling, bool NoPork, DateOnly? Promised,
    Weight Lean, Weight AddedFat, Weight Green, IReadOnlyList<Species> Species);
