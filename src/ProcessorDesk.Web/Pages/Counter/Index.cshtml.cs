using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Web.Forms;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Counter;

/// <summary>Where the clerk starts: what has to be completed first, then what came in last.</summary>
public sealed class IndexModel(RecordsContext records, ShopDay shop) : StationPage
{
    private const int Most = 20;

    public ShopDay Shop => shop;

    public IReadOnlyList<Line> ToDo { get; private set; } = [];

    public IReadOnlyList<Line> Recent { get; private set; } = [];

    public void OnGet()
    {
        var missing = records.Animals.Where(animal => animal.TagKey == null).Select(animal => animal.Id);
        ToDo = Read(records.Jobs
            .Where(job => job.HandedOverAt == null && (!job.DetailsComplete || job.Shares.Any(share => missing.Contains(share.AnimalId))))
            .OrderBy(job => job.TakenAt));
        Recent = Read(records.Jobs.OrderByDescending(job => job.TakenAt).ThenByDescending(job => job.Number));
    }

    private List<Line> Read(IQueryable<Job> jobs) =>
    [
        .. jobs.AsNoTracking().Take(Most)
            .Select(job => new
            {
                job.Id, job.Number, Owner = job.Owner.Name, job.OwnerId, job.TakenAt, job.PromisedFor, job.DetailsComplete,
                job.CuttingStartedAt, job.CuttingDoneAt, job.SplitAgreedAt, job.HandedOverAt,
                Animals = job.Shares.OrderBy(share => share.AnimalId).Select(share => new { share.AnimalId, share.Animal.Species, share.Animal.Tag }).ToList(),
                Holds = records.Holds.Where(hold => hold.ReleasedAt == null && (hold.JobId == job.Id || job.Shares.Any(share => share.AnimalId == hold.AnimalId)))
                    .Select(hold => hold.Reason).ToList(),
            })
            .AsSplitQuery()
            .AsEnumerable()
            .Select(job => new Line(
                job.Id, job.Number, job.Owner, job.OwnerId, job.TakenAt, job.DetailsComplete,
                Job.StageOf(job.DetailsComplete, job.CuttingStartedAt, job.CuttingDoneAt, job.SplitAgreedAt, job.HandedOverAt),
                [.. job.Animals.Select(animal => new LineAnimal(animal.AnimalId, Wording.Of(animal.Species), animal.Tag))],
                [.. job.Holds.Distinct().Select(Wording.Of)]))
    ];

    public sealed record Line(
        int Id, int Number, string Owner, int OwnerId, DateTime TakenAt, bool DetailsComplete, JobStage Stage,
        IReadOnlyList<LineAnimal> Animals, IReadOnlyList<string> Holds);

    public sealed record LineAnimal(int Id, string Species, string? Tag);
}
