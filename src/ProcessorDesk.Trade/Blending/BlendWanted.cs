namespace ProcessorDesk.Trade.Blending;

/// <summary>A block of meat that is wanted, and what it may be made of.</summary>
/// <param name="Block">Weight of the whole block: lean and fat, without water and spice; at least one division.</param>
/// <param name="Division">Of the scale the materials are weighed on.</param>
/// <param name="Fat">The fat the block may have.</param>
/// <param name="Materials">One to <see cref="BlendCheck.MostMaterials"/>.</param>
public sealed record BlendWanted(Weight Block, ScaleDivision Division, FatBand Fat, IReadOnlyList<BlendMaterial> Materials);
