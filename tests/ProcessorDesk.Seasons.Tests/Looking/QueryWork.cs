using Microsoft.Data.Sqlite;
using ProcessorDesk.Records.Tests.Plans;
using SQLitePCL;

namespace ProcessorDesk.Seasons.Tests.Looking;

/// <summary>What a query costs, counted by the engine itself and so the same on every machine.</summary>
/// <remarks>SQLITE_STMTSTATUS_VM_STEP counts the engine's own instructions, "a proxy for the total work done" (sqlite.org/c3ref/c_stmtstatus_counter.html).</remarks>
internal static class QueryWork
{
    /// <summary>Runs the query once more, to its end.</summary>
    public static long StepsOf(SeenQuery query, SqliteConnection connection)
    {
        connection.Handle!.enable_sqlite3_next_stmt(true);
        using var command = query.Again(connection);
        using var reader = command.ExecuteReader();
        do
        {
            while (reader.Read())
                ;
        }
        while (reader.NextResult());
        return raw.sqlite3_stmt_status(raw.sqlite3_next_stmt(connection.Handle, null), raw.SQLITE_STMTSTATUS_VM_STEP, 0);
    }
}
