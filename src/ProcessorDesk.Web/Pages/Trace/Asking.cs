using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Web.Hosting;
using ProcessorDesk.Web.Pages.Find;

namespace ProcessorDesk.Web.Pages.Trace;

/// <summary>What can be traced by what was typed or scanned; at most five queries.</summary>
internal static class Asking
{
    public const int Most = 20;

    /// <summary>What a ticket stands for, void or not: what was unpacked is traced too. Null where there is no such ticket.</summary>
    public static TraceStart? OfTicket(this RecordsContext records, Asked asked)
    {
        if (asked.Code is not { } code)
            return null;
        var found = records.Tickets.AsNoTracking().Where(ticket => ticket.Number == code.Number)
            .Select(ticket => new { ticket.Kind, ticket.TargetId, AnimalId = records.Parts.Where(part => part.Id == ticket.TargetId).Select(part => part.AnimalId).FirstOrDefault() })
            .SingleOrDefault();
        return found is null ? null : found.Kind switch
        {
            TicketKind.Claim => new TraceStart(TracedKind.Job, found.TargetId),
            TicketKind.Carcass => new TraceStart(TracedKind.Animal, found.TargetId),
            TicketKind.Part => new TraceStart(TracedKind.Animal, found.AnimalId),
            TicketKind.Filling => new TraceStart(TracedKind.Lug, found.TargetId),
            TicketKind.Batch => new TraceStart(TracedKind.Batch, found.TargetId),
            TicketKind.Box => new TraceStart(TracedKind.Box, found.TargetId),
        };
    }

    /// <summary>The job with that number.</summary>
    public static IEnumerable<Found> JobNumbered(this RecordsContext records, int number) => records.Jobs.AsNoTracking()
        .Where(job => job.Number == number)
        .Select(job => new { job.Id, job.Number, job.Owner.Name })
        .AsEnumerable().Select(job => new Found(new TraceStart(TracedKind.Job, job.Id), $"Job {job.Number}, {job.Name}", ""));

    /// <summary>The batch with that number.</summary>
    public static IEnumerable<Found> BatchNumbered(this RecordsContext records, int number, ShopDay shop) => records.Batches.AsNoTracking()
        .Where(batch => batch.Number == number)
        .Select(batch => new { batch.Id, batch.Number, batch.Product.Name, batch.PlannedAt })
        .AsEnumerable().Select(batch => new Found(new TraceStart(TracedKind.Batch, batch.Id), $"Batch {batch.Number}, {batch.Name}", $"planned {shop.Date(batch.PlannedAt)}"));

    /// <summary>The fillings of the lug with that number, the newest first.</summary>
    public static IEnumerable<Found> LugNumbered(this RecordsContext records, int number, ShopDay shop) => records.Fillings.AsNoTracking()
        .Where(filling => records.Lugs.Where(lug => lug.Number == number).Select(lug => lug.Id).Contains(filling.LugId))
        .OrderByDescending(filling => filling.Id).Take(Most)
        .Select(filling => new { filling.Id, filling.OpenedAt, filling.EmptiedAt, Job = filling.Job.Number, filling.Job.Owner.Name })
        .AsEnumerable().Select(filling => new Found(
            new TraceStart(TracedKind.Lug, filling.Id), $"Lug {number}, job {filling.Job}, {filling.Name}",
            $"filled {shop.Date(filling.OpenedAt)}, {(filling.EmptiedAt is { } emptied ? $"emptied {shop.Date(emptied)}" : "in use")}"));

    /// <summary>Animals whose tag begins with what was typed.</summary>
    public static IEnumerable<Found> Tagged(this RecordsContext records, string key, ShopDay shop)
    {
        var last = key + '\uffff';
        return records.Animals.AsNoTracking()
            .Where(animal => string.Compare(animal.TagKey, key) >= 0 && string.Compare(animal.TagKey, last) < 0)
            .OrderBy(animal => animal.TagKey).Take(Most)
            .Select(animal => new { animal.Id, animal.Species, animal.Tag, animal.ArrivedAt })
            .AsEnumerable().Select(animal => new Found(new TraceStart(TracedKind.Animal, animal.Id), $"{Wording.Of(animal.Species)}, tag {animal.Tag}", $"came in {shop.Date(animal.ArrivedAt)}"));
    }

    /// <summary>Lots by the code on the bag, the newest first.</summary>
    public static IEnumerable<Found> Lots(this RecordsContext records, string code, ShopDay shop) => records.IngredientLots.AsNoTracking()
        .Where(lot => lot.LotCode == code)
        .OrderByDescending(lot => lot.Id).Take(Most)
        .Select(lot => new { lot.Id, lot.LotCode, lot.Ingredient.Name, lot.ReceivedOn })
        .AsEnumerable().Select(lot => new Found(new TraceStart(TracedKind.IngredientLot, lot.Id), $"{lot.Name}, lot {lot.LotCode}", $"received {shop.Date(lot.ReceivedOn)}"));
}
