namespace ProcessorDesk.Trade.Formulas;

/// <summary>What is known of a meat or fat in the block.</summary>
/// <param name="Fat">As measured, or as published for it.</param>
/// <param name="Price">What a pound of it costs; null where nobody said, zero for an owner's own.</param>
public sealed record MeatContent(Proportion Fat, PricePerPound? Price);
