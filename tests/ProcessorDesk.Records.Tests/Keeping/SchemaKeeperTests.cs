using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;
using Microsoft.Extensions.Time.Testing;
using ProcessorDesk.Migrations;
using Xunit;

namespace ProcessorDesk.Records.Tests.Keeping;

public sealed class SchemaKeeperTests : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("processor-desk-schema-");
    private readonly FakeTimeProvider _clock = new(new DateTimeOffset(2026, 11, 25, 15, 30, 0, TimeSpan.Zero));

    private string Database => Path.Combine(_folder.FullName, "data", RecordsFile.Name);

    [Fact]
    public void A_new_file_is_made_in_a_new_folder_and_nothing_is_copied()
    {
        Assert.Null(SchemaKeeper.BringUpToDate(Database, _clock));

        Assert.Equal("wal", Value(Database, "PRAGMA journal_mode"));
        Assert.Equal(0L, Value(Database, "SELECT COUNT(*) FROM Jobs"));
        Assert.Empty(Copies());
    }

    [Fact]
    public void A_file_with_nothing_pending_is_not_touched()
    {
        SchemaKeeper.BringUpToDate(Database, _clock);
        ClosePools();
        var before = File.ReadAllBytes(Database);

        Assert.Null(SchemaKeeper.BringUpToDate(Database, _clock));

        ClosePools();
        Assert.Equal(before, File.ReadAllBytes(Database));
        Assert.Empty(Copies());
    }

    [Fact]
    public void An_older_file_is_copied_aside_whole_before_it_is_upgraded()
    {
        OlderFile();

        var copy = SchemaKeeper.BringUpToDate(Database, _clock);

        Assert.Equal("before-upgrade-20261125-153000.db", Path.GetFileName(copy));
        Assert.Equal([copy!], Copies());
        Assert.Equal("ok", Value(copy!, "PRAGMA integrity_check"));
        Assert.Equal("Earlier Owner", Value(copy!, "SELECT Name FROM Owners"));
        Assert.Equal(1L, Value(copy!, "SELECT COUNT(*) FROM __EFMigrationsHistory"));
        Assert.Equal(0L, Value(copy!, "SELECT COUNT(*) FROM sqlite_master WHERE type = 'trigger'"));
        Assert.Equal("Earlier Owner", Value(Database, "SELECT Name FROM Owners"));
        Assert.Equal((long)SchemaList.Triggers.Length, Value(Database, "SELECT COUNT(*) FROM sqlite_master WHERE type = 'trigger'"));
        Assert.Null(SchemaKeeper.BringUpToDate(Database, _clock));
    }

    [Fact]
    public void Owners_of_an_older_file_are_found_after_the_upgrade()
    {
        OlderFile();
        SchemaKeeper.BringUpToDate(Database, _clock);
        using var records = RecordsFile.Open(Database);

        Assert.Equal("Earlier Owner", Assert.Single(records.Owners.Found("arlie").ToList()).Name);
        Assert.Single(records.Owners.Found("0142").ToList());
    }

    [Fact]
    public async Task A_lock_left_by_a_killed_upgrade_does_not_hold_up_the_next_one()
    {
        OlderFile();
        Value(Database,
            """
            CREATE TABLE IF NOT EXISTS __EFMigrationsLock (Id INTEGER NOT NULL PRIMARY KEY, Timestamp TEXT NOT NULL);
            INSERT INTO __EFMigrationsLock VALUES (1, '2026-11-01 00:00:00');
            """);

        var upgrade = Task.Run(() => SchemaKeeper.BringUpToDate(Database, _clock));

        Assert.Same(upgrade, await Task.WhenAny(upgrade, Task.Delay(TimeSpan.FromSeconds(60))));
        Assert.NotNull(await upgrade);
        using var records = RecordsFile.Open(Database);
        Assert.Equal((long)records.Database.GetMigrations().Count(), Value(Database, "SELECT COUNT(*) FROM __EFMigrationsHistory"));
    }

    [Fact]
    public void An_upgrade_that_another_process_is_at_is_not_begun()
    {
        OlderFile();
        using var other = new FileStream(Path.Combine(Path.GetDirectoryName(Database)!, "schema.lock"), FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None);

        Assert.Throws<IOException>(() => SchemaKeeper.BringUpToDate(Database, _clock));

        Assert.Equal(1L, Value(Database, "SELECT COUNT(*) FROM __EFMigrationsHistory"));
        Assert.Empty(Copies());
    }

    [Fact]
    public void Two_upgrades_within_one_second_keep_both_copies()
    {
        OlderFile();
        SchemaKeeper.BringUpToDate(Database, _clock);
        ClosePools();
        foreach (var file in Directory.GetFiles(Path.GetDirectoryName(Database)!, RecordsFile.Name + "*"))
            File.Delete(file);
        OlderFile();

        SchemaKeeper.BringUpToDate(Database, _clock);

        Assert.Equal(2, Copies().Count);
    }

    public void Dispose()
    {
        ClosePools();
        _folder.Delete(recursive: true);
    }

    /// <summary>A file as it was at the first migration, with an owner in it.</summary>
    private void OlderFile()
    {
        Directory.CreateDirectory(Path.GetDirectoryName(Database)!);
        using var records = RecordsFile.Open(Database);
        records.GetService<IMigrator>().Migrate("Beginning");
        records.Owners.Add(new Owner("Earlier Owner", "555-0142"));
        records.SaveChanges();
    }

    private List<string> Copies() => [.. Directory.GetFiles(_folder.FullName, "before-upgrade-*", SearchOption.AllDirectories)];

    private void ClosePools()
    {
        using var connection = new SqliteConnection(RecordsFile.ConnectionString(Database));
        SqliteConnection.ClearPool(connection);
    }

    private static object? Value(string path, string sql)
    {
        using var connection = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = path, Pooling = false }.ConnectionString);
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        return command.ExecuteScalar();
    }
}
