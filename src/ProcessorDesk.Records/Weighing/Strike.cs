namespace ProcessorDesk.Records;

/// <summary>Takes a weigh-in out of every sum; the weigh-in stays to be seen. Never undone: a right weight is weighed anew.</summary>
public sealed class Strike
{
    private Strike()
    {
    }

    internal Strike(string because, DateTime at, int byId) => (Because, At, ById) = (because.Trim(), at, byId);

    public int WeighInId { get; private set; }

    public string Because { get; private set; } = "";

    public DateTime At { get; private set; }

    public int ById { get; private set; }
}
