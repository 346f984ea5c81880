namespace ProcessorDesk.Trade.Curing;

/// <summary>The most of one cure that meets.</summary>
/// <param name="Amount">On the small scale's division: it meets, and one division more does not. Zero where none may go in.</param>
/// <param name="Decides">The limit that decides; null where none does.</param>
/// <param name="Why">What decides, as a sentence for a person.</param>
public sealed record MostCure(Weight Amount, CureLimit? Decides, string Why);
