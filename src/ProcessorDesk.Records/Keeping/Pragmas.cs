using System.Data.Common;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace ProcessorDesk.Records;

/// <summary>What every connection is told: an acknowledged save survives a power cut, references hold, a busy file is waited for.</summary>
/// <remarks>Without recursive triggers an INSERT OR REPLACE would remove a guarded row and the guard would not hear of it.</remarks>
public sealed class Pragmas : DbConnectionInterceptor
{
    private const string Text = "PRAGMA synchronous = FULL; PRAGMA foreign_keys = ON; PRAGMA recursive_triggers = ON; "
        + "PRAGMA busy_timeout = 5000; PRAGMA cache_size = -16000;";

    public override void ConnectionOpened(DbConnection connection, ConnectionEndEventData eventData) => Tell(connection);

    public override Task ConnectionOpenedAsync(
        DbConnection connection, ConnectionEndEventData eventData, CancellationToken cancellationToken = default)
    {
        Tell(connection);
        return Task.CompletedTask;
    }

    private static void Tell(DbConnection connection)
    {
        using var command = connection.CreateCommand();
        command.CommandText = Text;
        command.ExecuteNonQuery();
    }
}
