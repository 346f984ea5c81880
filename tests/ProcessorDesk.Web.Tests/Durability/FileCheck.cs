using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade.Tickets;
using Xunit;

namespace ProcessorDesk.Web.Tests.Durability;

/// <summary>What holds in a shop's file at any time: it is whole, its journal is whole, its series have no gap.</summary>
internal static class FileCheck
{
    public static void Holds(RecordsContext records)
    {
        Assert.Equal(["ok"], records.Database.SqlQuery<string>($"SELECT integrity_check AS Value FROM pragma_integrity_check").ToList());
        Assert.Empty(records.Database.SqlQuery<string>($"SELECT \"table\" AS Value FROM pragma_foreign_key_check").ToList());
        Assert.Null(records.FirstBroken());
        var next = records.Counters.AsNoTracking().ToDictionary(counter => counter.Name, counter => counter.Next);
        Unbroken(1001, next["job"], number => number + 1, records.Jobs.Select(job => (long)job.Number));
        Unbroken(1, next["invoice"], number => number + 1, records.Invoices.Select(invoice => (long)invoice.Number));
        Unbroken(TicketCode.First.Number, next["ticket"], number => TicketCode.FromNumber(number).Next().Number, records.Tickets.Select(ticket => ticket.Number));
    }

    /// <summary>From the first number on each has its successor, up to the one that is given out next.</summary>
    private static void Unbroken(long first, long next, Func<long, long> successor, IQueryable<long> numbers)
    {
        List<long> given = [.. numbers.OrderBy(number => number), next];
        Assert.Equal([first, .. given.SkipLast(1).Select(successor)], given);
    }
}
