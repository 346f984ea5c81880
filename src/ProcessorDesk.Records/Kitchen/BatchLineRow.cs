namespace ProcessorDesk.Records;

/// <summary>A <see cref="BatchLine"/> as the database gives it. Every query names its columns in this order, so that they can be read as one.</summary>
internal sealed class BatchLineRow
{
    public required int Kind { get; init; }

    public required int Id { get; init; }

    public required int What { get; init; }

    public required int? LoadId { get; init; }

    public required int Probe { get; init; }

    public required long Amount { get; init; }

    public required int? Pieces { get; init; }

    public required DateTime TakenAt { get; init; }

    public required DateTime At { get; init; }

    public required string By { get; init; }

    public required DateTime? StruckAt { get; init; }

    public required string? StruckBy { get; init; }

    public required string? Because { get; init; }

    public BatchLine ToLine() => new((BatchLineKind)Kind, Id, What, LoadId, Probe, Amount, Pieces, TakenAt, At, By, StruckAt, StruckBy, Because);
}
