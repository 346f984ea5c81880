using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;

namespace ProcessorDesk.Migrations;

/// <summary>Brings a database file to today's schema before anything else opens it.</summary>
/// <remarks>
/// Nothing is touched when nothing is pending. Otherwise the file is copied aside first, and a lock row left by a killed
/// process, for which the framework would wait for ever, is cleared: our own lock file says that nobody else is at it.
/// </remarks>
public static class SchemaKeeper
{
    /// <returns>The path of the copy made before the schema changed; null where none was needed.</returns>
    public static string? BringUpToDate(string databasePath, TimeProvider clock)
    {
        var folder = Path.GetDirectoryName(Path.GetFullPath(databasePath))!;
        Directory.CreateDirectory(folder);
        using var lockFile = new FileStream(
            Path.Combine(folder, "schema.lock"), FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None);
        using var records = RecordsFile.Open(databasePath);
        var isNew = !File.Exists(databasePath);
        if (!isNew && !records.Database.GetPendingMigrations().Any())
            return null;
        var copy = isNew ? null : CopyAside(databasePath, clock);
        if (!isNew)
            ClearStaleLock(databasePath);
        records.Database.SetCommandTimeout(TimeSpan.FromMinutes(5));
        records.Database.Migrate();
        records.Database.ExecuteSqlRaw("PRAGMA journal_mode = WAL");
        return copy;
    }

    /// <summary>One self-contained copy beside the file, named for the moment; checked before it counts.</summary>
    private static string CopyAside(string databasePath, TimeProvider clock)
    {
        var moment = clock.GetUtcNow().ToString("yyyyMMdd-HHmmss", System.Globalization.CultureInfo.InvariantCulture);
        var name = Path.Combine(Path.GetDirectoryName(Path.GetFullPath(databasePath))!, $"before-upgrade-{moment}");
        var copy = name + ".db";
        for (var again = 2; File.Exists(copy); again++)
            copy = $"{name}-{again}.db";
        using (var source = Open(databasePath, SqliteOpenMode.ReadWrite))
            Run(source, "VACUUM INTO $copy", ("$copy", copy));
        using var check = Open(copy, SqliteOpenMode.ReadOnly);
        var verdict = Run(check, "PRAGMA integrity_check");
        return verdict == "ok" ? copy : throw new InvalidDataException($"The copy made before the upgrade is not sound: {verdict}");
    }

    private static void ClearStaleLock(string databasePath)
    {
        using var connection = Open(databasePath, SqliteOpenMode.ReadWrite);
        if (Run(connection, "SELECT name FROM sqlite_master WHERE name = '__EFMigrationsLock'") is not null)
            Run(connection, "DELETE FROM __EFMigrationsLock");
    }

    private static SqliteConnection Open(string path, SqliteOpenMode mode)
    {
        var connection = new SqliteConnection(
            new SqliteConnectionStringBuilder { DataSource = path, Mode = mode, Pooling = false }.ConnectionString);
        connection.Open();
        return connection;
    }

    private static string? Run(SqliteConnection connection, string sql, params (string Name, string Value)[] parameters)
    {
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        foreach (var (name, value) in parameters)
            command.Parameters.AddWithValue(name, value);
        return command.ExecuteScalar() as string;
    }
}
