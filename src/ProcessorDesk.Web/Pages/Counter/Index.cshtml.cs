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

    private List<Line> Read(IQueryable<Job> ordered)
    {
        var jobs = ordered.AsNoTracking().Take(Most).Include(job => job.Owner).Include(job => job.Shares).ThenInclude(share => share.Animal).AsSplitQuery().ToList();
        var ids = jobs.Select(job => job.Id).ToList();
        var animals = jobs.SelectMany(job => job.Shares.Select(share => share.AnimalId)).Distinct().ToList();
        var holds = records.Holds.AsNoTracking().Standing()
            .Where(hold => (hold.JobId != null && ids.Contains(hold.JobId.Value)) || (hold.AnimalId != null && animals.Contains(hold.AnimalId.Value)))
            .Select(hold => new { hold.JobId, hold.AnimalId, hold.Reason })
            .ToList();
        return
        [
            .. jobs.Select(job => new Line(
                job,
                [.. job.Shares.OrderBy(share => share.AnimalId).Select(share => share.Animal)],
                [.. holds.Where(hold => hold.JobId == job.Id || job.Shares.Any(share => share.AnimalId == hold.AnimalId)).Select(hold => Wording.Of(hold.Reason)).Distinct()]))
        ];
    }

    public sealed record Line(Job Job, IReadOnlyList<Animal> Animals, IReadOnlyList<string> Holds);
}
