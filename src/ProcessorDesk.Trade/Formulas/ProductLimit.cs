namespace ProcessorDesk.Trade.Formulas;

/// <summary>One published figure for a class of product.</summary>
/// <param name="Id">Stays the same for ever.</param>
/// <param name="Figure">The part allowed, exactly; zero means none.</param>
/// <param name="IsLeast">No less than the figure; otherwise no more.</param>
/// <param name="IsOfMix">A part of all ingredients as mixed; otherwise of finished product.</param>
/// <param name="Source">Where it is published.</param>
/// <param name="Mark">A: read in the official text.</param>
public sealed record ProductLimit(string Id, ProductClass Class, ProductPart Part, Ratio Figure, bool IsLeast, bool IsOfMix, string Source, char Mark);
