using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;

namespace ProcessorDesk.Web.Tests.Durability;

/// <summary>All that stands in the shop's file, read at one time.</summary>
internal sealed class Books
{
    public Books(RecordsContext records)
    {
        using var oneMoment = records.Database.BeginTransaction();
        Results = records.FormKeys.AsNoTracking().ToDictionary(key => key.Key, key => key.Result);
        Jobs =
        [
            .. records.Jobs.AsNoTrackingWithIdentityResolution().AsSplitQuery().Include(job => job.Owner).Include(job => job.CutOrder).Include(job => job.People)
                .Include(job => job.Shares).ThenInclude(share => share.Animal).ThenInclude(animal => animal.Parts)
        ];
        WeighIns = [.. records.WeighIns.AsNoTracking().Include(one => one.Strike).Include(one => one.Filling!.Lug).Include(one => one.Filling!.Animals)];
        Payments = [.. records.Payments.AsNoTracking()];
        Tickets = [.. records.Tickets.AsNoTracking()];
        Acts = [.. records.Journal.AsNoTracking().OrderBy(entry => entry.Id).AsEnumerable().Select(BookedAct.Of)];
        Rows = AllRows(records).ToHashSet();
    }

    /// <summary>The result of each form that was saved, by its key.</summary>
    public IReadOnlyDictionary<string, string> Results { get; }

    public IReadOnlyList<Job> Jobs { get; }

    public IReadOnlyList<WeighIn> WeighIns { get; }

    public IReadOnlyList<Payment> Payments { get; }

    public IReadOnlyList<Ticket> Tickets { get; }

    public IReadOnlyList<BookedAct> Acts { get; }

    /// <summary>Every row of every table that a drop-off or a weighing adds to, as "Job 17".</summary>
    public IReadOnlySet<string> Rows { get; }

    private static IEnumerable<string> AllRows(RecordsContext records) =>
    [
        .. records.Owners.Select(one => $"Owner {one.Id}"),
        .. records.Jobs.Select(one => $"Job {one.Id}"),
        .. records.JobPeople.Select(one => $"JobPerson {one.Id}"),
        .. records.CutOrderLines.Select(one => $"CutOrderLine {one.JobId}/{one.Position}"),
        .. records.GrindOrders.Select(one => $"GrindOrder {one.JobId}/{one.Position}"),
        .. records.Animals.Select(one => $"Animal {one.Id}"),
        .. records.Shares.Select(one => $"Share {one.Id}"),
        .. records.Parts.Select(one => $"Part {one.Id}"),
        .. records.Holds.Select(one => $"Hold {one.Id}"),
        .. records.Payments.Select(one => $"Payment {one.Id}"),
        .. records.Tickets.Select(one => $"Ticket {one.Number}"),
        .. records.Fillings.Select(one => $"Filling {one.Id}"),
        .. records.Fillings.SelectMany(one => one.Animals).Select(one => $"FillingAnimal {one.FillingId}/{one.AnimalId}"),
        .. records.WeighIns.Select(one => $"WeighIn {one.Id}"),
        .. records.Strikes.Select(one => $"Strike {one.WeighInId}"),
        .. records.Invoices.Select(one => $"Invoice {one.Id}"),
    ];
}
