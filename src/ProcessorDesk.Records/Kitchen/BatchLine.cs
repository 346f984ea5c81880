namespace ProcessorDesk.Records;

/// <summary>One line of a batch's record; a struck or undone one stays in it.</summary>
/// <param name="What">The step's kind, the reading's stage, the share's entry, the mixed load's number, the position of a cure; zero for all else.</param>
/// <param name="LoadId">For what is of one load.</param>
/// <param name="Probe">For a temperature; zero for all else.</param>
/// <param name="Amount">Milligrams; of a reading hundredths of °F, or hundredths of pH where the probe is zero; the ticket's number.</param>
/// <param name="Pieces">Counted with a finished weight, a load's stuffing or a share; null where none were.</param>
/// <param name="TakenAt">When it happened; <paramref name="At"/> is when it was written down.</param>
public sealed record BatchLine(
    BatchLineKind Kind, int Id, int What, int? LoadId, int Probe, long Amount, int? Pieces, DateTime TakenAt, DateTime At, string By, DateTime? StruckAt, string? StruckBy, string? Because)
{
    public bool Stands => StruckAt is null;
}
