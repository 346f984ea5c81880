using System.IO.Compression;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Time.Testing;
using ProcessorDesk.Migrations;
using Xunit;

namespace ProcessorDesk.Records.Tests.Keeping;

/// <summary>A made-up shop's file as each step of the schema left it, kept beside this test: today's program takes it over and loses no row of it.</summary>
public sealed class OldFilesTests : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("processor-desk-old-");
    private readonly FakeTimeProvider _clock = new(new DateTimeOffset(2026, 11, 25, 15, 30, 0, TimeSpan.Zero));

    private string Database => Path.Combine(_folder.FullName, RecordsFile.Name);

    public static TheoryData<string> OldFiles => [.. typeof(OldFilesTests).Assembly.GetManifestResourceNames().Where(name => name.EndsWith(".db.gz", StringComparison.Ordinal))];

    [Theory]
    [MemberData(nameof(OldFiles))]
    public void An_old_file_is_brought_up_to_date_with_every_row_it_had(string oldFile)
    {
        Unpack(oldFile);
        var before = RowsByTable();
        Assert.Equal(44L, before["Jobs"]);

        SchemaKeeper.BringUpToDate(Database, _clock);

        var after = RowsByTable();
        Assert.All(before.Where(table => !table.Key.StartsWith("__", StringComparison.Ordinal)), table => Assert.Equal(table.Value, after[table.Key]));
        Assert.Equal("ok", Value("PRAGMA integrity_check"));
        Assert.Null(Value("PRAGMA foreign_key_check"));
        Assert.Equal(SchemaList.Triggers, Names("trigger"));
        using var records = RecordsFile.Open(Database);
        Assert.False(records.Database.GetPendingMigrations().Any());
        Assert.Null(records.FirstBroken());
        Assert.Equal("Eudora Pike", Assert.Single(records.Owners.Found("eudora").ToList()).Name);
    }

    public void Dispose()
    {
        using (var connection = new SqliteConnection(RecordsFile.ConnectionString(Database)))
            SqliteConnection.ClearPool(connection);
        _folder.Delete(recursive: true);
    }

    private void Unpack(string oldFile)
    {
        using var packed = new GZipStream(typeof(OldFilesTests).Assembly.GetManifestResourceStream(oldFile)!, CompressionMode.Decompress);
        using var file = File.Create(Database);
        packed.CopyTo(file);
    }

    private Dictionary<string, long> RowsByTable() => Names("table")
        .Where(name => !name.StartsWith("sqlite_", StringComparison.Ordinal) && !name.Contains("Find_", StringComparison.Ordinal))
        .ToDictionary(name => name, name => (long)Value($"SELECT COUNT(*) FROM \"{name}\"")!);

    private List<string> Names(string kind) => Rows($"SELECT name FROM sqlite_master WHERE type = '{kind}' ORDER BY name");

    private object? Value(string sql)
    {
        using var connection = Open();
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        return command.ExecuteScalar();
    }

    private List<string> Rows(string sql)
    {
        using var connection = Open();
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        using var reader = command.ExecuteReader();
        List<string> rows = [];
        while (reader.Read())
            rows.Add(reader.GetString(0));
        return rows;
    }

    private SqliteConnection Open()
    {
        var connection = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = Database, Pooling = false }.ConnectionString);
        connection.Open();
        return connection;
    }
}
