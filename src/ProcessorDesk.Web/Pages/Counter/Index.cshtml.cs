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
        var holds = records.Holds.AsNoTracking().Standing().Select(hold => new Held(hold.JobId, hold.AnimalId, hold.Reason)).ToList();
        var missing = records.Animals.Where(animal => animal.TagKey == null).Select(animal => animal.Id);
        ToDo = Read(records.Jobs
            .Where(job => job.HandedOverAt == null && (!job.DetailsComplete || job.Shares.Any(share => missing.Contains(share.AnimalId))))
            .OrderBy(job => job.TakenAt), holds);
        Recent = Read(records.Jobs.OrderByDescending(job => job.TakenAt).ThenByDescending(job => job.Number), holds);
    }

    private static List<Line> Read(IQueryable<Job> ordered, IReadOnlyList<Held> holds)
    {
        var jobs = ordered.AsNoTracking().Take(Most).Include(job => job.Owner).Include(job => job.Shares).ThenInclude(share => share.Animal).AsSplitQuery().ToList();
        return
        [
            .. jobs.Select(job => new Line(
                job,
                [.. job.Shares.OrderBy(share => share.AnimalId).Select(share => share.Animal)],
                [.. holds.Where(hold => hold.JobId == job.Id || job.Shares.Any(share => share.AnimalId == hold.AnimalId)).Select(hold => Wording.Of(hold.Reason)).Distinct()]))
        ];
    }

    private sealed record Held(int? JobId, int? AnimalId, HoldReason Reason);

    public sealed record Line(Job Job, IReadOnlyList<Animal> Animals, IReadOnlyList<string> Holds);
}
