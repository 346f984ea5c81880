using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Trade.Tickets;

namespace ProcessorDesk.Records;

/// <summary>Numbers without gaps: taken inside the transaction that uses them.</summary>
internal static class Numbers
{
    public const string Job = "job";
    public const string Invoice = "invoice";
    public const string Batch = "batch";
    public const string Ticket = "ticket";

    public static int NextJob(RecordsContext records) => checked((int)Take(records, Job, 1));

    public static int NextInvoice(RecordsContext records) => checked((int)Take(records, Invoice, 1));

    public static int NextBatch(RecordsContext records) => checked((int)Take(records, Batch, 1));

    public static TicketCode NextTicket(RecordsContext records)
    {
        var next = records.Counters.AsNoTracking().Single(counter => counter.Name == Ticket).Next;
        var code = TicketCode.FromNumber(next);
        Take(records, Ticket, code.Next().Number - next);
        return code;
    }

    private static long Take(RecordsContext records, string name, long step) =>
        records.Database.SqlQuery<long>(
            $"UPDATE Counters SET Next = Next + {step} WHERE Name = {name} RETURNING Next - {step} AS Value").AsEnumerable().Single();
}
