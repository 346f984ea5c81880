using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Time.Testing;
using ProcessorDesk.Migrations;

namespace ProcessorDesk.Records.Tests.Cast;

/// <summary>A shop of its own in a real file, at today's schema, with its starting rows and a manager. One for a test class.</summary>
public sealed class ShopFile : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("processor-desk-records-");

    public ShopFile()
    {
        SchemaKeeper.BringUpToDate(DatabasePath, Clock);
        using var records = Open();
        StartingShop.Lay(records, VerbsOn(records), "Sample Meats", "America/Chicago", isDemo: false);
        var manager = new Staff("Sample Manager", "SM", StaffRole.Manager);
        Run(records, Hand.SetUp, _ =>
        {
            records.Staff.Add(manager);
            return Outcome.Done();
        });
        Manager = new Hand(manager.Id, "office");
    }

    public FakeTimeProvider Clock { get; } = new(new DateTimeOffset(2026, 11, 25, 15, 30, 0, TimeSpan.Zero));

    public DateTime Now => Clock.GetUtcNow().UtcDateTime;

    public WriteGate Gate { get; } = new();

    public Hand Manager { get; }

    public string DatabasePath => Path.Combine(_folder.FullName, RecordsFile.Name);

    public RecordsContext Open() => RecordsFile.Open(DatabasePath);

    public Verbs VerbsOn(RecordsContext records) => new(records, Gate, Clock);

    public Outcome Run(RecordsContext records, Func<Act, Outcome> work) => Run(records, Manager, work);

    /// <summary>One verb on a context of its own, which must be done.</summary>
    public T Do<T>(Func<RecordsContext, Act, T> work)
    {
        using var records = Open();
        T result = default!;
        var outcome = Run(records, act =>
        {
            result = work(records, act);
            return Outcome.Done();
        });
        return outcome.IsDone ? result : throw new InvalidOperationException("The verb was refused.");
    }

    /// <summary>Runs SQL as any program could that opens the file, with the pragmas of the app.</summary>
    public int Execute(string sql)
    {
        using var records = Open();
        return records.Database.ExecuteSqlRaw(sql);
    }

    /// <summary>The first column of every row, as text; NULL as null.</summary>
    public List<string?> Column(string sql)
    {
        using var connection = new SqliteConnection(RecordsFile.ConnectionString(DatabasePath));
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        using var reader = command.ExecuteReader();
        var values = new List<string?>();
        while (reader.Read())
            values.Add(reader.IsDBNull(0) ? null : reader.GetString(0));
        return values;
    }

    public void Dispose()
    {
        Gate.Dispose();
        using (var connection = new SqliteConnection(RecordsFile.ConnectionString(DatabasePath)))
            SqliteConnection.ClearPool(connection);
        _folder.Delete(recursive: true);
    }

    private Outcome Run(RecordsContext records, Hand hand, Func<Act, Outcome> work) => VerbsOn(records).Run("try something", hand, null, work);
}
