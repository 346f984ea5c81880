namespace ProcessorDesk.Records;

/// <summary>A hold beside a job it touches, for queries that read a job with its holds.</summary>
public sealed class JobHold
{
    public int JobId { get; init; }

    public Hold Hold { get; init; } = null!;
}
