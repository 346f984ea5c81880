using Microsoft.Data.Sqlite;
using ProcessorDesk.Records;
using ProcessorDesk.Trade.Tickets;
using Xunit;

namespace ProcessorDesk.Seasons.Tests;

/// <summary>What holds in any shop's file, asked of the file itself: each question lists what breaks it.</summary>
internal static class SeasonChecks
{
    private static readonly (string Promise, string Broken)[] s_promises =
    [
        ("references lead somewhere", "SELECT \"table\" FROM pragma_foreign_key_check"),
        ("allotments sum to their split's lean",
            "SELECT s.Id FROM AgreedSplits s LEFT JOIN GrindAllotments a ON a.AgreedSplitId = s.Id GROUP BY s.Id HAVING COALESCE(SUM(a.LeanMg), 0) <> s.LeanMg"),
        ("the shares of an animal sum to one", "SELECT AnimalId FROM Shares GROUP BY AnimalId HAVING SUM(840 * Numerator / Denominator) <> 840"),
        ("every animal is somebody's", "SELECT Id FROM Animals WHERE Id NOT IN (SELECT AnimalId FROM Shares)"),
        ("invoice lines sum to the net and the tax",
            "SELECT i.Id FROM Invoices i LEFT JOIN InvoiceLines l ON l.InvoiceId = i.Id GROUP BY i.Id HAVING SUM(l.AmountCents) <> i.NetCents OR SUM(l.TaxCents) <> i.TaxCents"),
        ("net and tax are the total", "SELECT Id FROM Invoices WHERE NetCents + TaxCents <> TotalCents"),
        ("a credit turns its invoice", "SELECT c.Id FROM Invoices c JOIN Invoices i ON i.Id = c.CreditsInvoiceId WHERE c.TotalCents <> -i.TotalCents"),
        ("one invoice stands for a job that left",
            """
            SELECT j.Id FROM Jobs j WHERE j.HandedOverAt IS NOT NULL AND 1 <>
            (SELECT COUNT(*) FROM Invoices i WHERE i.JobId = j.Id AND i.CreditsInvoiceId IS NULL AND NOT EXISTS (SELECT 1 FROM Invoices c WHERE c.CreditsInvoiceId = i.Id))
            """),
        ("nobody paid too much",
            "SELECT j.Id FROM Jobs j WHERE (SELECT SUM(TotalCents) FROM Invoices WHERE JobId = j.Id) < (SELECT SUM(AmountCents) FROM Payments WHERE JobId = j.Id AND NOT IsDeposit)"),
        ("net is gross less tare", "SELECT Id FROM WeighIns WHERE NetMg <> GrossMg - TareMg OR NetMg < 0"),
        ("lean stands once in a lug",
            "SELECT FillingId FROM WeighIns w WHERE FillingId IS NOT NULL AND NOT EXISTS (SELECT 1 FROM Strikes s WHERE s.WeighInId = w.Id) GROUP BY FillingId HAVING COUNT(*) > 1"),
        ("no lug holds the meat of a job that left", "SELECT f.Id FROM Fillings f JOIN Jobs j ON j.Id = f.JobId WHERE f.EmptiedAt IS NULL AND j.HandedOverAt IS NOT NULL"),
        ("no job that left is on hold", "SELECT h.Id FROM Holds h JOIN Shares s ON s.AnimalId = h.AnimalId JOIN Jobs j ON j.Id = s.JobId WHERE h.ReleasedAt IS NULL AND j.CuttingStartedAt IS NOT NULL"),
        ("a batch's entries are its loads' parts",
            "SELECT e.Id FROM BatchEntries e JOIN GrindAllotments a ON a.Id = e.AllotmentId JOIN LoadParts p ON p.EntryId = e.Id GROUP BY e.Id HAVING SUM(p.LeanMg) <> a.LeanMg OR SUM(p.GreenMg) <> a.GreenMg"),
        ("owners meet only where all agreed to pooling",
            "SELECT b.Id FROM Batches b JOIN BatchEntries e ON e.BatchId = b.Id JOIN Jobs j ON j.Id = e.JobId WHERE b.Pooling = 2 AND j.Pooling = 1"),
        ("nothing is drawn that was not weighed",
            """
            SELECT d.FillingId FROM Draws d GROUP BY d.FillingId HAVING SUM(d.WeighedMg) >
            (SELECT SUM(w.NetMg) + 5 * COUNT(*) FROM WeighIns w WHERE w.FillingId = d.FillingId AND NOT EXISTS (SELECT 1 FROM Strikes s WHERE s.WeighInId = w.Id))
            """),
        ("a mixed load holds its meat", "SELECT l.Id FROM Loads l WHERE l.MixedAt IS NOT NULL AND ABS(l.LeanMg - (SELECT COALESCE(SUM(d.WeighedMg), 0) FROM Draws d WHERE d.LoadId = l.Id)) > 50"),
        ("what a load was made with came from lots", "SELECT l.LoadId FROM LoadIngredients l WHERE l.WeighedMg <> (SELECT COALESCE(SUM(u.AmountMg), 0) FROM LotUses u WHERE u.LoadId = l.LoadId AND u.Position = l.Position AND u.StruckAt IS NULL)"),
        ("no more of a lot was used than came in", "SELECT l.Id FROM IngredientLots l JOIN LotUses u ON u.LotId = l.Id WHERE u.StruckAt IS NULL GROUP BY l.Id HAVING SUM(u.AmountMg) > l.AmountMg OR SUM(u.Pieces) > l.Pieces"),
        ("finished shares are what was weighed",
            """
            SELECT b.Id FROM Batches b WHERE b.ReleasedAt IS NOT NULL AND (SELECT SUM(w.NetMg) FROM WeighIns w WHERE w.BatchId = b.Id)
            <> (SELECT SUM(f.WeightMg) FROM FinishedShares f JOIN BatchEntries e ON e.Id = f.EntryId WHERE e.BatchId = b.Id)
            """),
        ("every box of a job that left has left", "SELECT b.Id FROM Boxes b JOIN Jobs j ON j.Id = b.JobId WHERE j.HandedOverAt IS NOT NULL AND b.HandOverId IS NULL"),
        ("what left was made and boxed", "SELECT Id FROM Jobs WHERE HandedOverAt IS NOT NULL AND (MadeAt IS NULL OR BoxedAt IS NULL)"),
        ("batches are numbered without gaps", "SELECT MAX(Number) FROM Batches HAVING MIN(Number) <> 1 OR MAX(Number) <> COUNT(*) OR MAX(Number) + 1 <> (SELECT Next FROM Counters WHERE Name = 'batch')"),
        ("jobs are numbered without gaps", "SELECT MAX(Number) FROM Jobs HAVING MAX(Number) - MIN(Number) + 1 <> COUNT(*) OR MAX(Number) + 1 <> (SELECT Next FROM Counters WHERE Name = 'job')"),
        ("invoices are numbered without gaps", "SELECT MAX(Number) FROM Invoices HAVING MIN(Number) <> 1 OR MAX(Number) <> COUNT(*) OR MAX(Number) + 1 <> (SELECT Next FROM Counters WHERE Name = 'invoice')"),
        ("numbers go up with time", "SELECT a.Id FROM Jobs a JOIN Jobs b ON b.Number = a.Number + 1 WHERE b.TakenAt < a.TakenAt"),
        ("what is old has left", "SELECT Id FROM Jobs WHERE HandedOverAt IS NULL AND TakenAt < '2026-11-12'"),
        ("nothing is in the future", "SELECT Id FROM Journal WHERE At > '2026-11-27 15:00:00' UNION ALL SELECT Id FROM WeighIns WHERE At > '2026-11-27 15:00:00'"),
    ];

    public static void All(string databasePath)
    {
        using var records = RecordsFile.Open(databasePath);
        using var connection = new SqliteConnection(RecordsFile.ConnectionString(databasePath));
        connection.Open();
        foreach (var (promise, broken) in s_promises)
        {
            using var command = connection.CreateCommand();
            (command.CommandText, command.CommandTimeout) = (broken, 0);
            Assert.True(command.ExecuteScalar() is null, promise);
        }

        Assert.Null(records.FirstBroken());
        var ticket = TicketCode.First;
        foreach (var number in records.Tickets.OrderBy(one => one.Number).Select(one => one.Number))
        {
            Assert.Equal(ticket.Number, number);
            ticket = ticket.Next();
        }
    }
}
