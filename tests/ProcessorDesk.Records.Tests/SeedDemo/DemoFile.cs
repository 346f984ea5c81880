using Microsoft.Data.Sqlite;
using Microsoft.Extensions.Time.Testing;
using ProcessorDesk.Migrations;
using ProcessorDesk.SeedDemo;

namespace ProcessorDesk.Records.Tests.SeedDemo;

/// <summary>A real file with the demo filled in at a given moment.</summary>
public sealed class DemoFile : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("processor-desk-demo-");
    private readonly WriteGate _gate = new();

    /// <summary>Wednesday 25 November 2026, half past nine in the morning by the shop's clock.</summary>
    public DemoFile()
        : this(new DateTimeOffset(2026, 11, 25, 15, 30, 0, TimeSpan.Zero))
    {
    }

    internal DemoFile(DateTimeOffset now)
    {
        Now = now;
        SchemaKeeper.BringUpToDate(Path_, new FakeTimeProvider(now));
        Fill();
    }

    public DateTimeOffset Now { get; }

    private string Path_ => Path.Combine(_folder.FullName, RecordsFile.Name);

    public RecordsContext Open() => RecordsFile.Open(Path_);

    public void Fill()
    {
        using var records = Open();
        DemoSeason.Fill(records, _gate, new FakeTimeProvider(Now));
    }

    public void Dispose()
    {
        _gate.Dispose();
        using (var connection = new SqliteConnection(RecordsFile.ConnectionString(Path_)))
            SqliteConnection.ClearPool(connection);
        _folder.Delete(recursive: true);
    }
}
