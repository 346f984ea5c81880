using Microsoft.EntityFrameworkCore.Migrations;

namespace ProcessorDesk.Migrations;

/// <summary>
/// What the model itself can't say, as the first schema had it: rows that may never change, and the indexes that find owners
/// and the people around a job. The framework's rebuild of a
/// table drops its triggers without a word, so a migration that rebuilds one of these must lay them again. Tables that came later
/// are guarded by the migration that made them.
/// </summary>
internal static class Guards
{
    /// <summary>Neither updated nor deleted.</summary>
    private static readonly string[] s_frozen =
        ["WeighIns", "Strikes", "Journal", "Invoices", "InvoiceLines", "Payments", "FormulaVersions", "FormulaIngredients", "GrindAllotments", "FillingAnimal",
            "LoadParts", "LoadIngredients", "FinishedShares", "BoxContents", "HandOvers"];

    /// <summary>Never deleted.</summary>
    private static readonly string[] s_kept = ["Staff", "Holds", "Tickets", "AgreedSplits", "Fillings", "Animals", "Jobs", "Owners", "Parts", "Lugs", "Products", "Shop",
        "Batches", "BatchEntries", "Loads", "Draws", "BatchSteps", "BatchReadings", "Boxes"];

    /// <summary>What of a row stays as it was first written, though the rest of the row goes on.</summary>
    private static readonly (string Table, string Columns)[] s_settled =
    [
        ("Holds", "AnimalId, JobId, BatchId, Reason, Note, PlacedAt, PlacedById"),
        ("AgreedSplits", "JobId, LeanMg, AgreedAt, AgreedById"),
        ("Fillings", "LugId, TareMg, JobId, OpenedAt"),
        ("Tickets", "Number, Kind, TargetId, At"),
        ("Parts", "AnimalId, Kind"),
        ("Jobs", "Number, PriceListId, TakenAt, TakenById"),
        ("Batches", "Number, ProductId, FormulaVersionId, Pooling, PlannedAt, PlannedById"),
        ("BatchEntries", "BatchId, AllotmentId, JobId"),
        ("Loads", "BatchId, Number, LeanMg, AddedFatMg, GreenMg"),
        ("Draws", "LoadId, FillingId, EntryId, PlannedMg, WeighedMg, AlreadyInBecause, At, ById"),
        ("BatchSteps", "BatchId, Kind, At, ById"),
        ("BatchReadings", "BatchId, Stage, Probe, TemperatureHundredthsF, AcidityHundredths, TakenAt, At, ById"),
        ("Boxes", "JobId, Number, WeighedId, PackedAt, PackedById"),
    ];

    /// <summary>After this moment is set nothing of the row changes.</summary>
    private static readonly (string Table, string Moment)[] s_closed =
        [("Holds", "ReleasedAt"), ("AgreedSplits", "WithdrawnAt"), ("Fillings", "EmptiedAt"), ("Parts", "GivenAt"), ("PriceLists", "UsedAt"),
            ("Batches", "ReleasedAt"), ("Batches", "EndedAt"), ("Loads", "MixedAt"), ("Draws", "StruckAt"), ("BatchSteps", "UndoneAt"), ("BatchReadings", "StruckAt"),
            ("BatchEntries", "LeftAt"), ("Boxes", "UnpackedAt"), ("Boxes", "HandOverId")];

    public static void Lay(MigrationBuilder migration)
    {
        TableGuards.Freeze(migration, s_frozen);
        TableGuards.Keep(migration, s_kept);
        foreach (var (table, columns) in s_settled)
            TableGuards.Settle(migration, table, columns);
        foreach (var (table, moment) in s_closed)
            TableGuards.Close(migration, table, moment);
        KeepUsedPrices(migration);
        foreach (var sql in s_ownerFind.Concat(s_personFind))
            migration.Sql(sql);
    }

    /// <summary>Once a job was taken at a price list, neither it nor any of its prices changes.</summary>
    private static void KeepUsedPrices(MigrationBuilder migration)
    {
        const string why = "PriceLists: in use";
        TableGuards.Lay(migration, "PriceLists_used_delete", "DELETE ON \"PriceLists\"", "old.UsedAt IS NOT NULL", why);
        foreach (var (act, row) in ((string, string)[])[("INSERT", "new"), ("UPDATE", "old"), ("UPDATE", "new"), ("DELETE", "old")])
        {
            var used = $"EXISTS (SELECT 1 FROM \"PriceLists\" WHERE Id = {row}.PriceListId AND UsedAt IS NOT NULL)";
            TableGuards.Lay(migration, $"Prices_used_{act.ToLowerInvariant()}_{row}", $"{act} ON \"Prices\"", used, why);
        }
    }

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

    /// <summary>People are not edited but replaced. Of a phone, what people write between its figures is left out.</summary>
    private static readonly string[] s_personFind =
    [
        """CREATE VIRTUAL TABLE "PersonFind" USING fts5(Name, PhoneDigits, tokenize = 'trigram remove_diacritics 1');""",
        $"""INSERT INTO "PersonFind"(rowid, Name, PhoneDigits) SELECT Id, Name, {DigitsOf("Phone")} FROM "JobPeople";""",
        $"""
        CREATE TRIGGER "JobPeople_found_insert" AFTER INSERT ON "JobPeople"
        BEGIN INSERT INTO "PersonFind"(rowid, Name, PhoneDigits) VALUES (new.Id, new.Name, {DigitsOf("new.Phone")}); END;
        """,
        $"""
        CREATE TRIGGER "JobPeople_found_update" AFTER UPDATE OF Name, Phone ON "JobPeople"
        BEGIN UPDATE "PersonFind" SET Name = new.Name, PhoneDigits = {DigitsOf("new.Phone")} WHERE rowid = new.Id; END;
        """,
        """
        CREATE TRIGGER "JobPeople_found_delete" AFTER DELETE ON "JobPeople"
        BEGIN DELETE FROM "PersonFind" WHERE rowid = old.Id; END;
        """,
    ];

    private static string DigitsOf(string phone) => " ()-./+".Aggregate(phone, (digits, sign) => $"replace({digits}, '{sign}', '')");
}
