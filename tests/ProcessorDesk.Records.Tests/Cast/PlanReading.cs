using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records.Tests.Plans;

namespace ProcessorDesk.Records.Tests.Cast;

/// <summary>How the shop's file goes about queries.</summary>
public static class PlanReading
{
    public static IReadOnlyList<QueryPlan> PlansOf(this ShopFile shop, Action<RecordsContext> read)
    {
        var watch = new QueryWatch();
        using var records = shop.Open(watch);
        read(records);
        records.Database.OpenConnection();
        var connection = records.Database.GetDbConnection();
        var tables = new FileTables(connection);
        return [.. watch.Seen.Select(query => QueryPlan.Of(query, connection, tables))];
    }

    public static RecordsContext Open(this ShopFile shop, QueryWatch watch)
    {
        var options = new DbContextOptionsBuilder<RecordsContext>();
        options.UseRecordsFile(shop.DatabasePath).AddInterceptors(watch);
        return new RecordsContext(options.Options);
    }
}
