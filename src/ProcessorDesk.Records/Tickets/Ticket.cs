using ProcessorDesk.Trade.Tickets;

namespace ProcessorDesk.Records;

/// <summary>A code that stands for a thing. One series for every kind.</summary>
public sealed class Ticket
{
    private Ticket()
    {
    }

    public Ticket(TicketCode code, TicketKind kind, int targetId, DateTime at)
    {
        Number = code.Number;
        Kind = kind;
        TargetId = targetId;
        At = at;
    }

    public long Number { get; private set; }

    public TicketKind Kind { get; private set; }

    public int TargetId { get; private set; }

    public DateTime At { get; private set; }

    public DateTime? VoidedAt { get; private set; }

    public long? ReplacedByNumber { get; private set; }

    public TicketCode Code => TicketCode.FromNumber(Number);

    public void Void(DateTime at, Ticket? replacement = null)
    {
        VoidedAt ??= at;
        ReplacedByNumber ??= replacement?.Number;
    }
}
