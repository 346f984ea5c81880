using Microsoft.Data.Sqlite;
using ProcessorDesk.Records.Tests.Cast;
using Xunit;

namespace ProcessorDesk.Records.Tests.Keeping;

/// <summary>The file itself refuses, whatever program asks.</summary>
public sealed class GuardsTests : IClassFixture<GuardedShop>
{
    private readonly ShopFile _shop;

    public GuardsTests(GuardedShop guarded) => _shop = guarded.Shop;

    public static TheoryData<string> Frozen =>
    [
        "WeighIns", "Strikes", "Journal", "Invoices", "InvoiceLines", "Payments", "FormulaVersions", "FormulaIngredients", "GrindAllotments",
        "FillingAnimal", "LoadParts", "LoadIngredients", "FinishedShares", "BoxContents", "HandOvers", "OwnerCalls",
        "BatchRules", "StuffedPieces", "Dispositions",
    ];

    public static TheoryData<string> Kept =>
    [
        "Staff", "Holds", "Tickets", "AgreedSplits", "Fillings", "Animals", "Jobs", "Owners", "Parts", "Lugs", "Products", "Shop",
        "Batches", "BatchEntries", "Loads", "Draws", "BatchSteps", "BatchReadings", "Boxes", "Ingredients", "IngredientLots", "LotUses",
    ];

    [Theory]
    [MemberData(nameof(Frozen))]
    public void A_row_that_is_frozen_is_not_updated(string table)
    {
        var column = _shop.Column($"SELECT name FROM pragma_table_info('{table}') ORDER BY pk, cid LIMIT 1")[0];

        AssertRefused(table, $"{table}: no update", $"""UPDATE "{table}" SET "{column}" = "{column}" """);
    }

    [Theory]
    [MemberData(nameof(Frozen))]
    [MemberData(nameof(Kept))]
    public void A_row_that_is_kept_is_not_deleted(string table) =>
        AssertRefused(table, $"{table}: no delete", $"""DELETE FROM "{table}" """);

    [Theory]
    [MemberData(nameof(Frozen))]
    public void A_row_that_is_frozen_is_not_replaced_either(string table) =>
        AssertRefused(table, $"{table}: no delete", $"""INSERT OR REPLACE INTO "{table}" SELECT * FROM "{table}" """);

    [Theory]
    [InlineData("Holds", "Reason", "ReleasedAt IS NULL")]
    [InlineData("Holds", "AnimalId", "ReleasedAt IS NULL")]
    [InlineData("Holds", "PlacedAt", "ReleasedAt IS NULL")]
    [InlineData("AgreedSplits", "LeanMg", "WithdrawnAt IS NULL")]
    [InlineData("AgreedSplits", "AgreedById", "WithdrawnAt IS NULL")]
    [InlineData("Fillings", "TareMg", "EmptiedAt IS NULL")]
    [InlineData("Fillings", "LugId", "EmptiedAt IS NULL")]
    [InlineData("Fillings", "JobId", "EmptiedAt IS NULL")]
    [InlineData("Tickets", "TargetId", "VoidedAt IS NULL")]
    [InlineData("Parts", "AnimalId", "GivenAt IS NULL")]
    [InlineData("Jobs", "PriceListId", "HandedOverAt IS NULL")]
    [InlineData("Jobs", "Number", "HandedOverAt IS NULL")]
    [InlineData("Holds", "BatchId", "ReleasedAt IS NULL")]
    [InlineData("Batches", "FormulaVersionId", "ReleasedAt IS NULL AND EndedAt IS NULL")]
    [InlineData("Batches", "Pooling", "ReleasedAt IS NULL AND EndedAt IS NULL")]
    [InlineData("BatchEntries", "AllotmentId", "LeftAt IS NULL")]
    [InlineData("Loads", "GreenMg", "MixedAt IS NULL")]
    [InlineData("Draws", "WeighedMg", "StruckAt IS NULL")]
    [InlineData("Draws", "FillingId", "StruckAt IS NULL")]
    [InlineData("Draws", "AlreadyInBecause", "StruckAt IS NULL")]
    [InlineData("BatchSteps", "At", "UndoneAt IS NULL")]
    [InlineData("BatchReadings", "TemperatureHundredthsF", "StruckAt IS NULL")]
    [InlineData("BatchReadings", "TakenAt", "StruckAt IS NULL")]
    [InlineData("Boxes", "WeighedId", "UnpackedAt IS NULL AND HandOverId IS NULL")]
    [InlineData("Boxes", "JobId", "UnpackedAt IS NULL AND HandOverId IS NULL")]
    [InlineData("IngredientLots", "LotCode", "StruckAt IS NULL")]
    [InlineData("IngredientLots", "NitritePpm", "StruckAt IS NULL")]
    [InlineData("IngredientLots", "AmountMg", "StruckAt IS NULL")]
    [InlineData("LotUses", "LotId", "StruckAt IS NULL")]
    [InlineData("LotUses", "AmountMg", "StruckAt IS NULL")]
    public void What_was_settled_when_the_row_was_written_stays(string table, string column, string open) =>
        AssertRefused(table, $"{table}: this part is settled", $"""UPDATE "{table}" SET "{column}" = 1 WHERE {open}""");

    [Theory]
    [InlineData("Holds", "ReleasedAt", "ReleasedBecause")]
    [InlineData("AgreedSplits", "WithdrawnAt", "WithdrawnBecause")]
    [InlineData("Fillings", "EmptiedAt", "EmptiedAt")]
    [InlineData("Parts", "GivenAt", "GivenTo")]
    [InlineData("Batches", "ReleasedAt", "WrittenSupport")]
    [InlineData("Batches", "EndedAt", "EndedAt")]
    [InlineData("BatchEntries", "LeftAt", "LeftAt")]
    [InlineData("Loads", "MixedAt", "FatWeighedMg")]
    [InlineData("Draws", "StruckAt", "StruckBecause")]
    [InlineData("BatchSteps", "UndoneAt", "UndoneAt")]
    [InlineData("BatchReadings", "StruckAt", "StruckBecause")]
    [InlineData("Boxes", "UnpackedAt", "Place")]
    [InlineData("Boxes", "HandOverId", "Place")]
    [InlineData("IngredientLots", "StruckAt", "UsedUpAt")]
    [InlineData("LotUses", "StruckAt", "StruckBecause")]
    public void A_row_that_was_closed_is_not_opened_or_changed_again(string table, string moment, string column) =>
        AssertRefused(table, $"{table}: closed by {moment}", $"""UPDATE "{table}" SET "{column}" = NULL WHERE "{moment}" IS NOT NULL """);

    [Fact]
    public void The_entities_can_not_change_a_weight_either()
    {
        using var records = _shop.Open();
        var weighIn = records.WeighIns.First();
        records.Entry(weighIn).Property(one => one.Scale).CurrentValue = "another";

        var refusal = Assert.Throws<Microsoft.EntityFrameworkCore.DbUpdateException>(() => records.SaveChanges());
        Assert.Contains("WeighIns: no update", refusal.InnerException!.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_entities_can_not_delete_a_journal_entry_a_hand_or_a_payment()
    {
        foreach (var pick in (Func<RecordsContext, object>[])[records => records.Journal.First(), records => records.Staff.First(), records => records.Payments.First()])
        {
            using var records = _shop.Open();
            records.Remove(pick(records));

            var refusal = Assert.Throws<Microsoft.EntityFrameworkCore.DbUpdateException>(() => records.SaveChanges());
            Assert.Contains("no delete", refusal.InnerException!.Message, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void The_entities_can_not_move_a_job_to_other_prices()
    {
        using var records = _shop.Open();
        var job = records.Jobs.First();
        records.Entry(job).Property(one => one.PriceListId).CurrentValue = job.PriceListId + 1;

        var refusal = Assert.Throws<Microsoft.EntityFrameworkCore.DbUpdateException>(() => records.SaveChanges());
        Assert.Contains("Jobs: this part is settled", refusal.InnerException!.Message, StringComparison.Ordinal);
    }

    private void AssertRefused(string table, string because, string sql)
    {
        var before = Rows(table);
        Assert.NotEqual(0, before);

        var refusal = Assert.Throws<SqliteException>(() => _shop.Execute(sql));

        Assert.Contains(because, refusal.Message, StringComparison.Ordinal);
        Assert.Equal(before, Rows(table));
    }

    private int Rows(string table) => int.Parse(_shop.Column($"""SELECT COUNT(*) FROM "{table}" """)[0]!, System.Globalization.CultureInfo.InvariantCulture);
}
