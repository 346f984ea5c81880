using System.Data.Common;

namespace ProcessorDesk.Records.Tests.Plans;

/// <summary>The tables of a file: which of them grow with every season, and which indexes do not.</summary>
public sealed class FileTables
{
    /// <summary>As many rows after ten seasons as after one, or as many as the shop has prices and recipes.</summary>
    private static readonly HashSet<string> s_small =
    [
        "Shop", "Staff", "HoldRules", "Lugs", "Products", "FormulaVersions", "FormulaIngredients", "Ingredients", "PriceLists", "Prices", "Counters",
        "__EFMigrationsHistory", "__EFMigrationsLock", "sqlite_master", "sqlite_sequence",
    ];

    private readonly HashSet<string> _growing;

    public FileTables(DbConnection connection) => _growing = [.. Names(connection).Except(s_small)];

    /// <summary>Indexes of what is open and of holds that stand: they leave out all that is over, and may be read from end to end.</summary>
    public static IReadOnlySet<string> Short { get; } = new HashSet<string> { "IX_Jobs_Open", "IX_Fillings_Open", "IX_Batches_Open", "IX_Holds_Standing", "IX_IngredientLots_Open" };

    public bool Grows(string table) => _growing.Contains(table);

    private static IEnumerable<string> Names(DbConnection connection)
    {
        using var command = connection.CreateCommand();
        command.CommandText = "SELECT name FROM sqlite_master WHERE type = 'table'";
        using var reader = command.ExecuteReader();
        while (reader.Read())
            yield return reader.GetString(0);
    }
}
