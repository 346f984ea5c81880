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
        using var command = query.Again(connection);
        using var reader = (SqliteDataReader)command.ExecuteReader();
        var steps = 0L;
        do
        {
            while (reader.Read())
                ;
            steps += raw.sqlite3_stmt_status(reader.Handle!, raw.SQLITE_STMTSTATUS_VM_STEP, 0);
        }
        while (reader.NextResult());
        return steps;
    }
}
