using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>Where a weight was read: the scale's name, its unit and division, and what the person added.</summary>
/// <param name="Packs">How many packs lay on the scale; null where none were counted.</param>
public sealed record Reading(string Scale, ScaleDivision Division, string? Note = null, int? Packs = null);
