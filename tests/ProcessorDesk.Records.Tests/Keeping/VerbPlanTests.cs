using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Time.Testing;
using ProcessorDesk.Migrations;
using ProcessorDesk.Records.Tests.Plans;
using ProcessorDesk.SeedDemo;
using Xunit;

namespace ProcessorDesk.Records.Tests.Keeping;

/// <summary>The verbs, which hold every other save up while they run, find their rows by an index: all that the demo plays, from the door to the truck.</summary>
public sealed class VerbPlanTests : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("processor-desk-verbs-");

    [Fact]
    public void No_verb_of_the_demo_reads_a_whole_table_that_grows()
    {
        var path = Path.Combine(_folder.FullName, RecordsFile.Name);
        var clock = new FakeTimeProvider(new DateTimeOffset(2026, 11, 25, 15, 30, 0, TimeSpan.Zero));
        SchemaKeeper.BringUpToDate(path, clock);
        var watch = new QueryWatch();
        var options = new DbContextOptionsBuilder<RecordsContext>();
        options.UseRecordsFile(path).AddInterceptors(watch);
        using var records = new RecordsContext(options.Options);
        using var gate = new WriteGate();

        DemoSeason.Fill(records, gate, clock);

        records.Database.OpenConnection();
        var connection = records.Database.GetDbConnection();
        var tables = new FileTables(connection);
        var scans = watch.Seen.DistinctBy(query => query.Sql).Select(query => QueryPlan.Of(query, connection, tables)).Where(plan => plan.Scans.Any()).Select(plan => $"{plan}").ToList();
        Assert.True(watch.Seen.Count > 1_000);
        Assert.True(scans.Count == 0, string.Join("\n\n", scans));
    }

    public void Dispose()
    {
        Microsoft.Data.Sqlite.SqliteConnection.ClearAllPools();
        _folder.Delete(recursive: true);
    }
}
