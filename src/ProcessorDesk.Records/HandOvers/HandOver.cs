namespace ProcessorDesk.Records;

/// <summary>What left at one time: boxes and parts, to whom, by whose hand. Signed, and never changed.</summary>
public sealed class HandOver
{
    private HandOver()
    {
    }

    public HandOver(int jobId, string to, bool owing, DateTime at, int byId)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(to);
        (JobId, To, Owing, At, ById) = (jobId, to.Trim(), owing, at, byId);
    }

    public int Id { get; private set; }

    public int JobId { get; private set; }

    public Job Job { get; private set; } = null!;

    public string To { get; private set; } = "";

    /// <summary>It went out although money was owed.</summary>
    public bool Owing { get; private set; }

    public DateTime At { get; private set; }

    public int ById { get; private set; }
}
