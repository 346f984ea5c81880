using Microsoft.EntityFrameworkCore;

namespace ProcessorDesk.Web.Pages.OwnersPage;

/// <summary>When what happened to a job.</summary>
public sealed record JobFacts(
    int Id,
    int Number,
    int LinkGeneration,
    DateTime TakenAt,
    DateOnly? PromisedFor,
    bool DetailsComplete,
    PackWrap Wrap,
    DateTime? CuttingStartedAt,
    DateTime? CuttingDoneAt,
    DateTime? SplitAgreedAt,
    DateTime? MadeAt,
    DateTime? BoxedAt,
    DateTime? HandedOverAt)
{
    public JobStage Stage => Job.StageOf(DetailsComplete, CuttingStartedAt, CuttingDoneAt, SplitAgreedAt, MadeAt, BoxedAt, HandedOverAt);

    /// <summary>One query, the same for a job that is there and for one that is not.</summary>
    public static JobFacts? Read(RecordsContext records, int number) => records.Jobs.AsNoTracking()
        .Where(job => job.Number == number)
        .Select(job => new JobFacts(
            job.Id, job.Number, job.LinkGeneration, job.TakenAt, job.PromisedFor, job.DetailsComplete, job.Wrap,
            job.CuttingStartedAt, job.CuttingDoneAt, job.SplitAgreedAt, job.MadeAt, job.BoxedAt, job.HandedOverAt))
        .SingleOrDefault();
}
