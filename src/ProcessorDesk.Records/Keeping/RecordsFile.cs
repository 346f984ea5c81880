using Microsoft.EntityFrameworkCore;

namespace ProcessorDesk.Records;

/// <summary>How the database file is opened.</summary>
public static class RecordsFile
{
    public const string Name = "processor-desk.db";

    public const string MigrationsAssembly = "ProcessorDesk.Migrations";

    public static string ConnectionString(string path) =>
        new Microsoft.Data.Sqlite.SqliteConnectionStringBuilder { DataSource = path }.ConnectionString;

    public static DbContextOptionsBuilder UseRecordsFile(this DbContextOptionsBuilder options, string path) =>
        options
            .UseSqlite(ConnectionString(path), sqlite => sqlite.MigrationsAssembly(MigrationsAssembly))
            .AddInterceptors(new Pragmas());

    public static RecordsContext Open(string path)
    {
        var options = new DbContextOptionsBuilder<RecordsContext>();
        options.UseRecordsFile(path);
        return new RecordsContext(options.Options);
    }
}
