namespace ProcessorDesk.Trade.Blending;

/// <summary>The published fat content of a raw meat or fat.</summary>
/// <param name="Id">Stays the same for ever; a shop's own figure names it.</param>
/// <param name="NdbNumber">Row of the USDA National Nutrient Database; null where the figure is not from there.</param>
/// <param name="Mark">A: read in the published table; M: from memory.</param>
public sealed record FatContent(string Id, string Name, Proportion Fat, int? NdbNumber, string Source, char Mark);
