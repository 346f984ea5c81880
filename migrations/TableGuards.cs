using Microsoft.EntityFrameworkCore.Migrations;

namespace ProcessorDesk.Migrations;

/// <summary>Triggers by which the file itself refuses what may never happen to a row, whatever program asks.</summary>
internal static class TableGuards
{
    /// <summary>Neither updated nor deleted.</summary>
    public static void Freeze(MigrationBuilder migration, params string[] tables)
    {
        foreach (var table in tables)
        {
            Refuse(migration, table, "update");
            Refuse(migration, table, "delete");
        }
    }

    /// <summary>Never deleted.</summary>
    public static void Keep(MigrationBuilder migration, params string[] tables)
    {
        foreach (var table in tables)
            Refuse(migration, table, "delete");
    }

    /// <summary>These columns stay as they were first written, though the rest of the row goes on.</summary>
    public static void Settle(MigrationBuilder migration, string table, string columns) =>
        Lay(migration, $"{table}_settled", $"UPDATE OF {columns} ON \"{table}\"", null, $"{table}: this part is settled");

    /// <summary>After this moment is set nothing of the row changes.</summary>
    public static void Close(MigrationBuilder migration, string table, string moment) =>
        Lay(migration, $"{table}_closed_{moment}", $"UPDATE ON \"{table}\"", $"old.{moment} IS NOT NULL", $"{table}: closed by {moment}");

    public static void Lay(MigrationBuilder migration, string name, string before, string? when, string message) =>
        migration.Sql(
            $"""
            CREATE TRIGGER "{name}" BEFORE {before}{(when is null ? "" : $" WHEN {when}")}
            BEGIN SELECT RAISE(ABORT, '{message}'); END;
            """);

    private static void Refuse(MigrationBuilder migration, string table, string act) =>
        Lay(migration, $"{table}_no_{act}", $"{act.ToUpperInvariant()} ON \"{table}\"", null, $"{table}: no {act}");
}
