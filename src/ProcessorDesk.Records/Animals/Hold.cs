namespace ProcessorDesk.Records;

/// <summary>A reason why an animal, a whole job or a batch must wait; from a time until a hand releases it with a reason.</summary>
public sealed class Hold
{
    private Hold()
    {
    }

    internal Hold(HoldReason reason, string? note, DateTime at, int byId)
    {
        Reason = reason;
        Note = Texts.OrNull(note);
        PlacedAt = at;
        PlacedById = byId;
    }

    /// <summary>A hold on a whole job rather than on one animal.</summary>
    public static Hold OnJob(Job job, HoldReason reason, string? note, DateTime at, int byId) =>
        new(reason, note, at, byId) { Job = job };

    public static Hold OnBatch(int batchId, HoldReason reason, string? note, DateTime at, int byId) =>
        new(reason, note, at, byId) { BatchId = batchId };

    public int Id { get; private set; }

    public int? AnimalId { get; private set; }

    public Animal? Animal { get; private set; }

    public int? JobId { get; private set; }

    public Job? Job { get; private set; }

    public int? BatchId { get; private set; }

    public Batch? Batch { get; private set; }

    public HoldReason Reason { get; private set; }

    public string? Note { get; private set; }

    public DateTime PlacedAt { get; private set; }

    public int PlacedById { get; private set; }

    public DateTime? ReleasedAt { get; private set; }

    public int? ReleasedById { get; private set; }

    public string? ReleasedBecause { get; private set; }

    public void Release(DateTime at, int byId, string because)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(because);
        if (ReleasedAt is not null)
            throw new InvalidOperationException("This hold was released before.");
        (ReleasedAt, ReleasedById, ReleasedBecause) = (at, byId, because.Trim());
    }
}
