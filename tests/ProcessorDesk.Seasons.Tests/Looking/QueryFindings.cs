using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Records.Tests.Plans;

namespace ProcessorDesk.Seasons.Tests.Looking;

/// <summary>What is wrong with the queries of page loads, each with its page, its words and SQLite's plan.</summary>
internal static class QueryFindings
{
    public const int MostQueries = 6;

    public static IReadOnlyList<(string Page, string Words)> Scans(string databasePath, IEnumerable<PageLoad> loads)
    {
        using var records = RecordsFile.Open(databasePath);
        records.Database.OpenConnection();
        var connection = records.Database.GetDbConnection();
        var tables = new FileTables(connection);
        return
        [
            .. from load in loads
               from query in load.Queries
               group (load, query) by (load.Page, query.Sql) into same
               let seen = same.First()
               let plan = QueryPlan.Of(seen.query, connection, tables)
               where plan.Scans.Any()
               select (seen.load.Page, $"{seen.load.Address}: {plan}\n")
        ];
    }

    public static IReadOnlyList<(string Page, string Words)> TooMany(IEnumerable<PageLoad> loads) =>
    [
        .. from load in loads
           where load.Queries.Count > MostQueries
           group load by load.Page into page
           let worst = page.MaxBy(load => load.Queries.Count)
           select (page.Key, $"{worst.Address}: {worst.Queries.Count} queries\n    {string.Join("\n    ", worst.Queries.Select(query => query.Sql.ReplaceLineEndings(" ")))}\n")
    ];
}
