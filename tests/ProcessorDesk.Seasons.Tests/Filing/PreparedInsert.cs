using System.Globalization;
using Microsoft.Data.Sqlite;
using SQLitePCL;

namespace ProcessorDesk.Seasons.Tests.Filing;

/// <summary>One INSERT, prepared once and run for each row, straight at the engine: millions of rows go through it.</summary>
internal sealed class PreparedInsert : IDisposable
{
    private readonly sqlite3 _file;
    private readonly sqlite3_stmt _statement;
    private readonly string _table;

    public PreparedInsert(SqliteConnection connection, string table, IReadOnlyList<string> columns)
    {
        _file = connection.Handle!;
        _table = table;
        var sql = $"INSERT INTO \"{table}\" ({string.Join(", ", columns.Select(column => $"\"{column}\""))}) VALUES ({string.Join(", ", columns.Select(_ => "?"))})";
        Expect(raw.sqlite3_prepare_v2(_file, sql, out _statement), raw.SQLITE_OK);
    }

    public void Run(ReadOnlySpan<object?> values)
    {
        for (var i = 0; i < values.Length; i++)
            Expect(Bind(i + 1, values[i]), raw.SQLITE_OK);
        Expect(raw.sqlite3_step(_statement), raw.SQLITE_DONE);
        Expect(raw.sqlite3_reset(_statement), raw.SQLITE_OK);
    }

    public void Dispose() => _statement.Dispose();

    /// <summary>Values as the app's own driver writes them: integers, text, days, UTC moments.</summary>
    private int Bind(int at, object? value) => value switch
    {
        null => raw.sqlite3_bind_null(_statement, at),
        int number => raw.sqlite3_bind_int64(_statement, at, number),
        long number => raw.sqlite3_bind_int64(_statement, at, number),
        bool yes => raw.sqlite3_bind_int64(_statement, at, yes ? 1 : 0),
        string text => raw.sqlite3_bind_text(_statement, at, text),
        DateTime moment => raw.sqlite3_bind_text(_statement, at, moment.ToString("yyyy-MM-dd HH:mm:ss.FFFFFFF", CultureInfo.InvariantCulture)),
        DateOnly day => raw.sqlite3_bind_text(_statement, at, day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)),
        _ => throw new NotSupportedException($"{_table}: a {value.GetType().Name} can't be written yet; say here how the app's driver writes it."),
    };

    private void Expect(int answer, int expected)
    {
        if (answer != expected)
            throw new InvalidOperationException($"{_table}: {raw.sqlite3_errmsg(_file).utf8_to_string()}");
    }
}
