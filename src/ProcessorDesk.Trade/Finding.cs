namespace ProcessorDesk.Trade;

/// <summary>One thing a rule has to say: what was found, what is allowed, which field it belongs to, and who says so.</summary>
/// <param name="Field">Name of the input it belongs to; empty for the whole.</param>
/// <param name="Text">The sentence a person reads; it says what to do.</param>
/// <param name="Found">The figure found, as printed; empty where there is none.</param>
/// <param name="Allowed">The figure allowed, as printed; empty where there is none.</param>
/// <param name="Source">Where the limit is published; empty for the shop's own rule.</param>
public sealed record Finding(string Field, string Text, string Found = "", string Allowed = "", string Source = "");
