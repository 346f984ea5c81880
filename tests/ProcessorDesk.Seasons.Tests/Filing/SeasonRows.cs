using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata;
using ProcessorDesk.Records;

namespace ProcessorDesk.Seasons.Tests.Filing;

/// <summary>
/// A file at today's schema being filled with a great many rows. Its triggers stay; its indexes are laid again at the end, and
/// its references are looked through then, all at once.
/// </summary>
internal sealed class SeasonRows : IDisposable
{
    private readonly RecordsContext _records;
    private readonly SqliteConnection _connection;
    private readonly Dictionary<Type, Table> _tables = [];
    private readonly List<string> _indexes;
    private Task _writing = Task.CompletedTask;

    public SeasonRows(string path)
    {
        _records = RecordsFile.Open(path);
        _records.Database.OpenConnection();
        _connection = (SqliteConnection)_records.Database.GetDbConnection();
        Run("PRAGMA foreign_keys = OFF");
        Run("PRAGMA synchronous = OFF");
        Run("PRAGMA journal_mode = MEMORY");
        Run("PRAGMA cache_size = -400000");
        _indexes = Column("SELECT sql FROM sqlite_master WHERE type = 'index' AND sql IS NOT NULL ORDER BY name");
        foreach (var name in Column("SELECT name FROM sqlite_master WHERE type = 'index' AND sql IS NOT NULL"))
            Run($"DROP INDEX \"{name}\"");
        foreach (var entity in _records.Model.GetEntityTypes())
            _tables[entity.ClrType] = new Table(entity, _connection, LastId(entity));
    }

    /// <summary>Gives the entity its id at once; it is written as it stands at the next <see cref="Write"/>.</summary>
    /// <param name="under">What it is a line of, where it does not know itself.</param>
    /// <returns>The key as the journal names it.</returns>
    public string Add(object entity, object? under = null) => TableOf(entity.GetType()).Add(entity, under);

    public string KeyOf(object entity) => TableOf(entity.GetType()).KeyOf(entity);

    /// <summary>Writes all that was added, in one transaction and while the next season is already played: nothing of it may change any more.</summary>
    public void Write()
    {
        _writing.Wait();
        var added = _tables.Values.Select(table => (Table: table, Rows: table.Take())).ToList();
        _writing = Task.Run(() =>
        {
            using var transaction = _connection.BeginTransaction();
            foreach (var (table, rows) in added)
                table.Write(rows);
            transaction.Commit();
        });
    }

    public void SetCounter(string name, long next)
    {
        _writing.Wait();
        Run($"UPDATE Counters SET Next = {next} WHERE Name = '{name}'");
    }

    /// <summary>Lays the indexes again and leaves the file as the app keeps it.</summary>
    /// <exception cref="InvalidOperationException">A row points at one that is not there.</exception>
    public void Finish()
    {
        _writing.Wait();
        foreach (var index in _indexes)
            Run(index);
        if (Column("SELECT \"table\" || ' ' || rowid || ' to ' || parent FROM pragma_foreign_key_check LIMIT 5") is { Count: > 0 } lost)
            throw new InvalidOperationException($"Rows that point at nothing: {string.Join("; ", lost)}");
        Run("PRAGMA journal_mode = WAL");
    }

    public void Dispose()
    {
        foreach (var table in _tables.Values)
            table.Dispose();
        _records.Dispose();
        SqliteConnection.ClearPool(_connection);
    }

    private Table TableOf(Type type) => _tables.GetValueOrDefault(type) ?? throw new InvalidOperationException($"{type.Name} is in no table.");

    private int LastId(IEntityType entity) => entity.FindProperty("Id") is null
        ? 0
        : int.Parse(Column($"SELECT CAST(COALESCE(MAX(Id), 0) AS TEXT) FROM \"{entity.GetTableName()}\"").Single(), System.Globalization.CultureInfo.InvariantCulture);

    private void Run(string sql)
    {
        using var command = _connection.CreateCommand();
        command.CommandText = sql;
        command.CommandTimeout = 0;
        command.ExecuteNonQuery();
    }

    private List<string> Column(string sql)
    {
        using var command = _connection.CreateCommand();
        command.CommandText = sql;
        command.CommandTimeout = 0;
        using var reader = command.ExecuteReader();
        var values = new List<string>();
        while (reader.Read())
            values.Add(reader.GetString(0));
        return values;
    }
}
