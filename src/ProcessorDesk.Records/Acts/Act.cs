namespace ProcessorDesk.Records;

/// <summary>One run of a verb: its one moment, its hand, and the numbers it may take.</summary>
public sealed class Act(RecordsContext records, DateTime now, Hand hand)
{
    /// <summary>UTC; the same for everything the act writes.</summary>
    public DateTime Now => now;

    public Hand Hand => hand;

    public int NextJobNumber() => Numbers.NextJob(records);

    public int NextBatchNumber() => Numbers.NextBatch(records);

    public int NextInvoiceNumber() => Numbers.NextInvoice(records);

    /// <summary>Makes a ticket for something that has its id already (save first).</summary>
    public Ticket NewTicket(TicketKind kind, int targetId)
    {
        var ticket = new Ticket(Numbers.NextTicket(records), kind, targetId, now);
        records.Tickets.Add(ticket);
        return ticket;
    }
}
