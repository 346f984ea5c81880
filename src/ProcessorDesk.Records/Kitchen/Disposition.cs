namespace ProcessorDesk.Records;

/// <summary>
/// Something done about a batch whose record does not meet, or does not show: a fact with whose name it bears and its date. Never changed
/// and never taken away.
/// </summary>
public sealed class Disposition
{
    private Disposition()
    {
    }

    internal Disposition(int batchId, DispositionOrder order, DateTime at, int byId)
    {
        BatchId = batchId;
        Kind = order.Kind;
        Stage = order.Stage;
        Name = order.Name.Trim();
        On = order.On;
        Reference = order.Reference.Trim();
        (At, ById) = (at, byId);
    }

    public int Id { get; private set; }

    public int BatchId { get; private set; }

    public DispositionKind Kind { get; private set; }

    /// <summary>The part of the record it answers for; null where it answers for none.</summary>
    public ReadingStage? Stage { get; private set; }

    /// <summary>Whose letter or guidance it is; who told the owners.</summary>
    public string Name { get; private set; } = "";

    /// <summary>The letter's day; when it was reworked, when they were told.</summary>
    public DateOnly On { get; private set; }

    /// <summary>The letter's or the guidance's own name and number; what the owners were told.</summary>
    public string Reference { get; private set; } = "";

    public DateTime At { get; private set; }

    public int ById { get; private set; }
}
