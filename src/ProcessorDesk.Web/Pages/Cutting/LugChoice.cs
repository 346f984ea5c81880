using System.Globalization;
using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Tickets;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Cutting;

/// <summary>The lug a hand typed or scanned: free, or filled for a job already.</summary>
/// <param name="FillingId">The open filling; null where the lug is free.</param>
/// <param name="JobId">Whose filling it is; null where the lug is free.</param>
/// <param name="AnimalIds">The animals of the open filling.</param>
/// <param name="Standing">What stands weighed in it.</param>
public sealed record LugChoice(
    int LugId, int Number, Weight Tare, int? FillingId, int? JobId, string ForWhom, IReadOnlyList<int> AnimalIds, IReadOnlyList<LugChoice.InIt> Standing)
{
    /// <summary>Reads a number of a lug, or the code on the ticket of what it holds; words say what to do where neither fits.</summary>
    public static (LugChoice? Lug, string Problem) Read(RecordsContext records, string typed, int jobId, ShopDay shop)
    {
        var text = typed.Trim();
        if (text == "")
            return (null, "Type the number on the lug, or scan its ticket.");
        if (text.Length <= 4 && int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number))
            return Find(records, number, shop) is { } numbered ? Fit(numbered, jobId) : (null, $"There is no lug {number}. Type the number that stands on it, or have the office add it.");
        if (!TicketCode.Parse(text).Try(out var code, out _))
            return (null, "Type the two or three figures on the lug, or scan its ticket.");
        var ticketed = records.Tickets.AsNoTracking()
            .Where(ticket => ticket.Number == code.Number && ticket.Kind == TicketKind.Filling && ticket.VoidedAt == null)
            .SelectMany(ticket => records.Fillings.Where(filling => filling.Id == ticket.TargetId), (ticket, filling) => new { filling.Lug.Number, filling.EmptiedAt })
            .SingleOrDefault();
        return ticketed switch
        {
            null => (null, "This ticket is not one of a lug. Scan the lug's own ticket, or type its number."),
            { EmptiedAt: not null } => (null, $"This ticket is of an earlier filling: lug {ticketed.Number} was emptied since. Type the lug's number."),
            _ => Fit(Find(records, ticketed.Number, shop)!, jobId),
        };
    }

    private static (LugChoice? Lug, string Problem) Fit(LugChoice lug, int jobId) =>
        lug.JobId is { } other && other != jobId
            ? (null, $"Lug {lug.Number} holds meat of {lug.ForWhom}. Take another lug, or empty that one first.")
            : (lug, "");

    private static LugChoice? Find(RecordsContext records, int number, ShopDay shop)
    {
        var lug = records.Lugs.AsNoTracking().Where(one => one.Number == number && one.RetiredAt == null)
            .Select(one => new { one.Id, one.Number, one.Tare })
            .SingleOrDefault();
        if (lug is null)
            return null;
        var open = records.Fillings.AsNoTracking().Open().Where(filling => filling.LugId == lug.Id)
            .Select(filling => new
            {
                filling.Id,
                filling.Tare,
                filling.JobId,
                JobNumber = filling.Job.Number,
                Owner = filling.Job.Owner.Name,
                Animals = filling.Animals.Select(animal => animal.AnimalId).ToList(),
            })
            .SingleOrDefault();
        if (open is null)
            return new LugChoice(lug.Id, lug.Number, lug.Tare, null, null, "", [], []);
        var standing = records.WeighIns.AsNoTracking().Standing().Where(one => one.FillingId == open.Id)
            .Select(one => new { one.Id, one.Kind, one.Net })
            .AsEnumerable()
            .Select(one => new InIt(one.Id, one.Kind, one.Net, shop.Print(one.Net)))
            .ToList();
        return new LugChoice(lug.Id, lug.Number, open.Tare, open.Id, open.JobId, $"{open.Owner}, job {open.JobNumber}", open.Animals, standing);
    }

    public sealed record InIt(int WeighInId, WeighInKind Kind, Weight Net, string Printed);
}
