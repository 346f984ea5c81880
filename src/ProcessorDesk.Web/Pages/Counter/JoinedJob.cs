using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;

namespace ProcessorDesk.Web.Pages.Counter;

/// <summary>A job that an animal is to join, as far as the drop-off must know it.</summary>
public sealed record JoinedJob(int Id, int Number, int OwnerId, int Animals, bool IsClosed)
{
    public static JoinedJob? Of(RecordsContext records, int id) =>
        records.Jobs.AsNoTracking().Where(job => job.Id == id)
            .Select(job => new JoinedJob(job.Id, job.Number, job.OwnerId, job.Shares.Count, job.SplitAgreedAt != null || job.HandedOverAt != null))
            .SingleOrDefault();
}
