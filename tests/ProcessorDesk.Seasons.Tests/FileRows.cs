using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Microsoft.Data.Sqlite;
using ProcessorDesk.Records;

namespace ProcessorDesk.Seasons.Tests;

/// <summary>The rows of a file, whatever its tables are.</summary>
internal static class FileRows
{
    /// <summary>One hash over every value of every row.</summary>
    public static string DigestOf(string databasePath)
    {
        using var connection = new SqliteConnection(RecordsFile.ConnectionString(databasePath));
        connection.Open();
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (var table in Tables(connection))
        {
            foreach (var row in Rows(connection, $"SELECT * FROM \"{table}\""))
                hash.AppendData(Encoding.UTF8.GetBytes(table + '\u001f' + row + '\n'));
        }

        return Convert.ToHexString(hash.GetCurrentHash());
    }

    /// <summary>How many rows each table has.</summary>
    public static IReadOnlyDictionary<string, int> Counts(string databasePath)
    {
        using var connection = new SqliteConnection(RecordsFile.ConnectionString(databasePath));
        connection.Open();
        return Tables(connection).ToDictionary(table => table, table => Rows(connection, $"SELECT 1 FROM \"{table}\"").Count());
    }

    private static List<string> Tables(SqliteConnection connection) =>
        [.. Rows(connection, "SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'OwnerFind%' AND name NOT LIKE 'PersonFind%' AND name NOT LIKE '\\_\\_EF%' ESCAPE '\\' ORDER BY name")];

    private static IEnumerable<string> Rows(SqliteConnection connection, string sql)
    {
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        using var reader = command.ExecuteReader();
        while (reader.Read())
            yield return string.Join('\u001f', Enumerable.Range(0, reader.FieldCount).Select(i => Convert.ToString(reader.GetValue(i), CultureInfo.InvariantCulture)));
    }
}
