namespace ProcessorDesk.Records;

/// <summary>An allotment's place in a batch. An allotment stands in one batch at most; held meat never gets a place.</summary>
public sealed class BatchEntry
{
    private BatchEntry()
    {
    }

    public BatchEntry(int allotmentId, int jobId) => (AllotmentId, JobId) = (allotmentId, jobId);

    public int Id { get; private set; }

    public int BatchId { get; private set; }

    public Batch Batch { get; private set; } = null!;

    public int AllotmentId { get; private set; }

    public GrindAllotment Allotment { get; private set; } = null!;

    public int JobId { get; private set; }

    public Job Job { get; private set; } = null!;

    /// <summary>When the batch was taken off the plan and the allotment became free again; null while it stands.</summary>
    public DateTime? LeftAt { get; private set; }

    internal void Leave(DateTime at) => LeftAt ??= at;
}
