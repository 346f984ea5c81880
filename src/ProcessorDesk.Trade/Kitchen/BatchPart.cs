namespace ProcessorDesk.Trade.Kitchen;

/// <summary>What one owner brings to a batch, as agreed in the split; each weight on the bench's division.</summary>
/// <param name="Green">The raw mix, additions in: what fills the mixer. More than zero.</param>
public sealed record BatchPart(Weight Lean, Weight AddedFat, Weight Green);
