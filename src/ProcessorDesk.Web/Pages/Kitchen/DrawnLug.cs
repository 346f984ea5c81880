using System.Globalization;
using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade.Tickets;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Kitchen;

/// <summary>The lug a hand typed or scanned at the mixer, as it is filled now.</summary>
/// <param name="Left">What is in it by its weigh-in and what was drawn.</param>
public sealed record DrawnLug(int FillingId, int Number, int JobId, int JobNumber, string Owner, string Left)
{
    /// <summary>Reads a number of a lug, or the code on its ticket; words say what to do where neither fits.</summary>
    public static (DrawnLug? Lug, string Problem) Read(RecordsContext records, string typed, int batchId, ShopDay shop)
    {
        var text = typed.Trim();
        if (text == "")
            return (null, "Type the number on the lug, or scan its ticket.");
        if (text.Length <= 4 && int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number))
            return Numbered(records, number, batchId, shop) is { } numbered ? (numbered, "") : (null, $"No meat is in a lug {number}. Type the number that stands on it.");
        if (!TicketCode.Parse(text).Try(out var code, out _))
            return (null, "Type the two or three figures on the lug, or scan its ticket.");
        var ticketed = records.Tickets.AsNoTracking()
            .Where(ticket => ticket.Number == code.Number && ticket.Kind == TicketKind.Filling && ticket.VoidedAt == null)
            .Select(ticket => ticket.TargetId);
        return Find(records, records.Fillings.Where(filling => ticketed.Contains(filling.Id)), shop) is { } scanned
            ? (scanned, "")
            : (null, "This ticket is not one of a lug. Scan the lug's own ticket, or type its number.");
    }

    /// <summary>The open filling; where there is none, one that a struck draw of this batch had emptied.</summary>
    private static DrawnLug? Numbered(RecordsContext records, int number, int batchId, ShopDay shop) =>
        Find(records, records.Fillings.Open().Where(filling => filling.Lug.Number == number), shop)
        ?? Find(records, records.Draws.Where(draw => draw.Load.BatchId == batchId && draw.StruckAt != null && draw.Filling.Lug.Number == number && draw.Filling.EmptiedAt == draw.At)
            .OrderByDescending(draw => draw.Id).Select(draw => draw.Filling).Take(1), shop);

    private static DrawnLug? Find(RecordsContext records, IQueryable<Filling> fillings, ShopDay shop)
    {
        var found = fillings.AsNoTracking()
            .Select(filling => new { filling.Id, filling.Lug.Number, filling.JobId, JobNumber = filling.Job.Number, Owner = filling.Job.Owner.Name })
            .SingleOrDefault();
        return found is null ? null : new DrawnLug(found.Id, found.Number, found.JobId, found.JobNumber, found.Owner, shop.Print(records.LeftIn(found.Id, shop.Settings.BenchDivision)));
    }
}
