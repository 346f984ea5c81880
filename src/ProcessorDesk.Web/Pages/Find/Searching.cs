using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;

namespace ProcessorDesk.Web.Pages.Find;

/// <summary>Looks jobs and owners up. A search is three queries, a ticket two.</summary>
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
            TicketKind.Carcass => jobs.Where(job => job.Shares.Any(share => share.AnimalId == id)),
            TicketKind.Part => jobs.Where(job => job.Shares.Any(share => share.Animal.Parts.Any(part => part.Id == id))),
            TicketKind.Filling => jobs.Where(job => records.Fillings.Any(filling => filling.Id == id && filling.JobId == job.Id)),
            TicketKind.Batch => jobs.Where(job => records.JobsInBatch(id).Contains(job.Id)),
            TicketKind.Box => jobs.Where(job => records.Boxes.Where(box => box.Id == id).Select(box => box.JobId).Contains(job.Id)),
        }, "", "");
    }

    /// <summary>The jobs whose meat is in a batch.</summary>
    public static IReadOnlyList<FoundJob> JobsOf(this RecordsContext records, FoundBatch batch) =>
        Rows(records, records.Jobs.AsNoTracking().Where(job => records.JobsInBatch(batch.Id).Contains(job.Id)), "", "");

    /// <summary>Jobs by their number, the tag of an animal, or a lug that is being filled.</summary>
    public static IReadOnlyList<FoundJob> ByNumberOrTag(this RecordsContext records, Asked asked)
    {
        var (number, key) = (asked.Number ?? -1, asked.TagKey ?? "");
        return Rows(records, records.Jobs.AsNoTracking().Where(job =>
            job.Number == number
            || key != "" && job.Shares.Any(share => share.Animal.TagKey!.StartsWith(key))
            || records.Fillings.Any(filling => filling.JobId == job.Id && filling.EmptiedAt == null && filling.Lug.Number == number)), key, "");
    }

    /// <summary>Jobs by the name or phone of the owner or of somebody around them.</summary>
    public static IReadOnlyList<FoundJob> ByPeople(this RecordsContext records, Asked asked)
    {
        var owners = records.Owners.Found(asked.Text).Select(owner => owner.Id);
        var like = asked.Text.Length < 2 ? "" : "%" + asked.Text.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("%", "\\%", StringComparison.Ordinal).Replace("_", "\\_", StringComparison.Ordinal) + "%";
        return Rows(records, records.Jobs.AsNoTracking().Where(job =>
            owners.Contains(job.OwnerId)
            || like != "" && job.People.Any(person => EF.Functions.Like(person.Name, like, "\\") || EF.Functions.Like(person.Phone!, like, "\\"))), "", like);
    }

    public static IReadOnlyList<Owner> OwnersWithoutJobs(this RecordsContext records, Asked asked) =>
        [.. records.Owners.Found(asked.Text).AsNoTracking().Where(owner => !records.Jobs.Any(job => job.OwnerId == owner.Id)).OrderBy(owner => owner.Name).Take(Most)];

    /// <summary>The owner's jobs besides one, those still here first.</summary>
    public static IReadOnlyList<FoundJob> OthersOf(this RecordsContext records, int ownerId, int besides) =>
        Rows(records, records.Jobs.AsNoTracking().Where(job => job.OwnerId == ownerId && job.Id != besides), "", "");

    private static List<FoundJob> Rows(RecordsContext records, IQueryable<Job> jobs, string key, string like) =>
    [
        .. jobs
            .OrderBy(job => job.HandedOverAt != null).ThenByDescending(job => job.TakenAt).ThenByDescending(job => job.Number)
            .Take(Most)
            .Select(job => new FoundJob(
                job.Id, job.Number, job.OwnerId, job.Owner.Name, job.Owner.Phone, job.TakenAt,
                Job.StageOf(job.DetailsComplete, job.CuttingStartedAt, job.CuttingDoneAt, job.SplitAgreedAt, job.MadeAt, job.BoxedAt, job.HandedOverAt),
                job.Shares.OrderBy(share => share.AnimalId).Select(share => share.Animal.Species).ToList(),
                job.Shares.Where(share => share.Animal.Tag != null).Select(share => share.Animal.Tag!).ToList(),
                records.Fillings.Where(filling => filling.JobId == job.Id && filling.EmptiedAt == null).Select(filling => filling.Lug.Number).ToList(),
                like == "" ? new List<string>() : job.People.Where(person => EF.Functions.Like(person.Name, like, "\\") || EF.Functions.Like(person.Phone!, like, "\\")).Select(person => person.Name).ToList(),
                key != "" && job.Shares.Any(share => share.Animal.TagKey!.StartsWith(key))))
    ];
}
