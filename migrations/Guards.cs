using Microsoft.EntityFrameworkCore.Migrations;

namespace ProcessorDesk.Migrations;

/// <summary>
/// What the model itself can't say: rows that may never change, and the index that finds owners. The framework's rebuild of a
/// table drops its triggers without a word, so a migration that rebuilds one of these must lay them again.
/// </summary>
internal static class Guards
{
    /// <summary>Neither updated nor deleted.</summary>
    private static readonly string[] s_frozen =
        ["WeighIns", "Strikes", "Journal", "Invoices", "InvoiceLines", "Payments", "FormulaVersions", "FormulaIngredients", "GrindAllotments"];

    /// <summary>Never deleted.</summary>
    private static readonly string[] s_kept = ["Staff", "Holds", "Tickets", "AgreedSplits", "Fillings", "Animals", "Jobs", "Owners", "Parts"];

    public static void Lay(MigrationBuilder migration)
    {
        foreach (var table in s_frozen)
        {
            Refuse(migration, table, "update");
            Refuse(migration, table, "delete");
        }

        foreach (var table in s_kept)
            Refuse(migration, table, "delete");
        foreach (var sql in s_ownerFind)
            migration.Sql(sql);
    }

    private static void Refuse(MigrationBuilder migration, string table, string act) =>
        migration.Sql(
            $"""
            CREATE TRIGGER "{table}_no_{act}" BEFORE {act.ToUpperInvariant()} ON "{table}"
            BEGIN SELECT RAISE(ABORT, '{table}: no {act}'); END;
            """);

    private static readonly string[] s_ownerFind =
    [
        """CREATE VIRTUAL TABLE "OwnerFind" USING fts5(Name, PhoneDigits, tokenize = 'trigram remove_diacritics 1');""",
        """INSERT INTO "OwnerFind"(rowid, Name, PhoneDigits) SELECT Id, Name, PhoneDigits FROM "Owners";""",
        """
        CREATE TRIGGER "Owners_found_insert" AFTER INSERT ON "Owners"
        BEGIN INSERT INTO "OwnerFind"(rowid, Name, PhoneDigits) VALUES (new.Id, new.Name, new.PhoneDigits); END;
        """,
        """
        CREATE TRIGGER "Owners_found_update" AFTER UPDATE OF Name, PhoneDigits ON "Owners"
        BEGIN UPDATE "OwnerFind" SET Name = new.Name, PhoneDigits = new.PhoneDigits WHERE rowid = new.Id; END;
        """,
    ];
}
