namespace ProcessorDesk.Trade.Blending;

/// <summary>The two parts of a block; they sum to it to the milligram.</summary>
public readonly record struct BlendParts(Weight Lean, Weight Added);
