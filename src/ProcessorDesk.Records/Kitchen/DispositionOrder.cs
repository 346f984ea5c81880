namespace ProcessorDesk.Records;

/// <summary>What was done about a batch, as it is written down.</summary>
/// <param name="Stage">The part of the record it answers for; null for owners told.</param>
/// <param name="Name">Whose letter or guidance; who told the owners.</param>
/// <param name="On">Its day by the shop's calendar.</param>
/// <param name="Reference">The letter's or the guidance's own name and number; what the owners were told.</param>
public sealed record DispositionOrder(DispositionKind Kind, ReadingStage? Stage, string Name, DateOnly On, string Reference);
