namespace ProcessorDesk.Records;

/// <summary>Something done to a whole batch, by whom and when. Undone with a reason, never removed.</summary>
public sealed class BatchStep
{
    private BatchStep()
    {
    }

    public BatchStep(int batchId, BatchStepKind kind, DateTime at, int byId) => (BatchId, Kind, At, ById) = (batchId, kind, at, byId);

    public int Id { get; private set; }

    public int BatchId { get; private set; }

    public Batch Batch { get; private set; } = null!;

    public BatchStepKind Kind { get; private set; }

    public DateTime At { get; private set; }

    public int ById { get; private set; }

    public DateTime? UndoneAt { get; private set; }

    public int? UndoneById { get; private set; }

    public string? UndoneBecause { get; private set; }

    internal void Undo(string because, DateTime at, int byId) => (UndoneBecause, UndoneAt, UndoneById) = (because.Trim(), at, byId);
}
