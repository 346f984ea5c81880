namespace ProcessorDesk.Records;

/// <summary>One call to an owner about something that was traced to the owner's meat. Never changed or deleted: the database refuses.</summary>
public sealed class OwnerCall
{
    private OwnerCall()
    {
    }

    public OwnerCall(int jobId, TraceStart about, CallOutcome outcome, string words, DateTime at, int byId)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(words);
        (JobId, About, AboutId) = (jobId, about.Kind, about.Id);
        (Outcome, Words) = (outcome, words.Trim());
        (At, ById) = (at, byId);
    }

    public int Id { get; private set; }

    public int JobId { get; private set; }

    public Job Job { get; private set; } = null!;

    /// <summary>What the call was about: the thing the trace was asked by.</summary>
    public TracedKind About { get; private set; }

    public int AboutId { get; private set; }

    public CallOutcome Outcome { get; private set; }

    /// <summary>What was said, and with whom.</summary>
    public string Words { get; private set; } = "";

    public DateTime At { get; private set; }

    public int ById { get; private set; }
}
