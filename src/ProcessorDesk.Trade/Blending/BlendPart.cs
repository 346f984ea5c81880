namespace ProcessorDesk.Trade.Blending;

/// <summary>What of one material goes into a block.</summary>
/// <param name="Share">As a part of the block, exactly.</param>
/// <param name="Pounds">In pounds, exactly.</param>
/// <param name="Weight">As it is weighed: on the division, so that the parts sum to the block in milligrams and as printed.</param>
public sealed record BlendPart(BlendMaterial Material, Ratio Share, Ratio Pounds, Weight Weight);
