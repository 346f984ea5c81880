namespace ProcessorDesk.Records;

/// <summary>A disposition as it is read.</summary>
/// <param name="By">The initials of who wrote it down.</param>
public sealed record DispositionLine(DispositionKind Kind, ReadingStage? Stage, string Name, DateOnly On, string Reference, DateTime At, string By);
