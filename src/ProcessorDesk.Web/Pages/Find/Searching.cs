using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;

namespace ProcessorDesk.Web.Pages.Find;

/// <summary>Looks jobs and owners up. A search is four queries, a ticket two.</summary>
internal static class Searching
{
    public const int Most = 40;

    /// <summary>The jobs a ticket stands for: one, or several where an animal is shared.</summary>
    public static IReadOnlyList<FoundJob> JobsOf(this RecordsContext records, Ticket ticket)
    {
        var id = ticket.TargetId;
        var jobs = records.Jobs.AsNoTracking();
        return Rows(records, ticket.Kind switch
        {
            TicketKind.Claim => jobs.Where(job => job.Id == id),
            TicketKind.Carcass => jobs.Where(job => records.Shares.Where(share => share.AnimalId == id).Select(share => share.JobId).Contains(job.Id)),
            TicketKind.Part => jobs.Where(job => records.Parts.Where(part => part.Id == id).SelectMany(part => part.Animal.Shares).Select(share => share.JobId).Contains(job.Id)),
            TicketKind.Filling => jobs.Where(job => records.Fillings.Where(filling => filling.Id == id).Select(filling => filling.JobId).Contains(job.Id)),
            TicketKind.Batch => jobs.Where(job => records.JobsInBatch(id).Contains(job.Id)),
            TicketKind.Box => jobs.Where(job => records.Boxes.Where(box => box.Id == id).Select(box => box.JobId).Contains(job.Id)),
        });
    }

    /// <summary>The jobs whose meat is in a batch.</summary>
    public static IReadOnlyList<FoundJob> JobsOf(this RecordsContext records, FoundBatch batch) =>
        Rows(records, records.Jobs.AsNoTracking().Where(job => records.JobsInBatch(batch.Id).Contains(job.Id)));

    /// <summary>Jobs by their number, the tag of an animal, or a lug that is being filled.</summary>
    public static IReadOnlyList<FoundJob> ByNumberOrTag(this RecordsContext records, Asked asked)
    {
        var number = asked.Number ?? -1;
        var filling = records.Fillings.Where(filling => filling.EmptiedAt == null && filling.Lug.Number == number).Select(filling => filling.JobId);
        var jobs = records.Jobs.AsNoTracking();
        if (asked.TagKey is not { } key)
            return Rows(records, jobs.Where(job => job.Number == number || filling.Contains(job.Id)));
        // What begins with the key stands in the index of tags between the key and the last that can follow it.
        var last = key + '\uffff';
        var tagged = records.Shares.Where(share => string.Compare(share.Animal.TagKey, key) >= 0 && string.Compare(share.Animal.TagKey, last) < 0).Select(share => share.JobId);
        return Rows(records, jobs.Where(job => job.Number == number || filling.Contains(job.Id) || tagged.Contains(job.Id)));
    }

    /// <summary>Jobs by the name or phone of the owner or of somebody around them; two queries.</summary>
    public static IReadOnlyList<FoundJob> ByPeople(this RecordsContext records, Asked asked)
    {
        var owners = records.Owners.Found(asked.Text).Select(owner => owner.Id);
        var around = records.JobPeople.Found(asked.Text).OrderByDescending(person => person.Id).Take(Most)
            .Select(person => new { person.JobId, person.Name })
            .ToLookup(person => person.JobId, person => person.Name);
        var ids = around.Select(job => job.Key).ToList();
        var jobs = Rows(records, records.Jobs.AsNoTracking().Where(job => owners.Contains(job.OwnerId) || ids.Contains(job.Id)));
        return [.. jobs.Select(job => job with { People = [.. around[job.Id]] })];
    }

    public static IReadOnlyList<Owner> OwnersWithoutJobs(this RecordsContext records, Asked asked) =>
        [.. records.Owners.Found(asked.Text).AsNoTracking().Where(owner => !records.Jobs.Any(job => job.OwnerId == owner.Id)).OrderBy(owner => owner.Name).Take(Most)];

    /// <summary>The owner's jobs besides one, those still here first.</summary>
    public static IReadOnlyList<FoundJob> OthersOf(this RecordsContext records, int ownerId, int besides) =>
        Rows(records, records.Jobs.AsNoTracking().Where(job => job.OwnerId == ownerId && job.Id != besides));

    /// <summary>What stands beside a job comes by the job's own index; a name from another table is looked up row by row, since a join beside the job would be made for all jobs.</summary>
    private static List<FoundJob> Rows(RecordsContext records, IQueryable<Job> jobs) =>
    [
        .. jobs
            .OrderBy(job => job.HandedOverAt != null).ThenByDescending(job => job.TakenAt).ThenByDescending(job => job.Number)
            .Take(Most)
            .Select(job => new FoundJob(
                job.Id, job.Number, job.OwnerId, job.Owner.Name, job.Owner.Phone, job.TakenAt,
                Job.StageOf(job.DetailsComplete, job.CuttingStartedAt, job.CuttingDoneAt, job.SplitAgreedAt, job.MadeAt, job.BoxedAt, job.HandedOverAt),
                job.Shares.Select(share => new FoundJob.Animal(
                    share.AnimalId,
                    records.Animals.Where(animal => animal.Id == share.AnimalId).Select(animal => animal.Species).First(),
                    records.Animals.Where(animal => animal.Id == share.AnimalId).Select(animal => animal.Tag).First())).ToList(),
                records.Fillings.Where(filling => filling.JobId == job.Id && filling.EmptiedAt == null)
                    .Select(filling => records.Lugs.Where(lug => lug.Id == filling.LugId).Select(lug => lug.Number).First()).ToList()))
            .AsSingleQuery()
    ];
}
