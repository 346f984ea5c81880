using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>An animal of a trace.</summary>
/// <param name="Holds">Reasons of the holds that stand on it.</param>
/// <param name="Parts">Given back as themselves: "Cape".</param>
public sealed record TracedAnimal(
    int Id, Species Species, string? Tag, DiseaseTest Test, string? Sample, DateOnly? ResultOn, string? Area, DateTime ArrivedAt,
    IReadOnlyList<HoldReason> Holds, IReadOnlyList<TracedPart> Parts);

/// <summary>A part of an animal, and where it went; null where it is here.</summary>
public sealed record TracedPart(PartKind Kind, DateTime? GivenAt, string? GivenTo);
