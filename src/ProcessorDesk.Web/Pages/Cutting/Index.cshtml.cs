using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Web.Forms;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Cutting;

/// <summary>Jobs on the table, jobs ready for the knife, and jobs that must wait, each with its reason.</summary>
public sealed class IndexModel(RecordsContext records, ShopDay shop) : StationPage
{
    public IReadOnlyList<Line> OnTable { get; private set; } = [];

    public IReadOnlyList<Line> Ready { get; private set; } = [];

    public IReadOnlyList<Line> Waiting { get; private set; } = [];

    public void OnGet()
    {
        var jobs = records.Jobs.AsNoTracking().ToCut();
        var animals = jobs.SelectMany(job => job.Shares)
            .OrderBy(share => share.AnimalId)
            .Select(share => new { share.JobId, share.Animal.Species, share.Animal.Tag, share.Animal.Rail, Since = share.Animal.HungAt ?? share.Animal.ArrivedAt })
            .ToLookup(animal => animal.JobId);
        var stopping = records.StoppingKnife(jobs);
        var lines = jobs
            .Select(job => new { job.Id, job.Number, Owner = job.Owner.Name, job.PromisedFor, job.NoPork, job.TakenAt, job.CuttingStartedAt })
            .AsEnumerable()
            .Select(job => (Job: job, Since: animals[job.Id].Select(animal => (DateTime?)animal.Since).Min() ?? job.TakenAt))
            .OrderBy(one => one.Job.PromisedFor ?? DateOnly.MaxValue)
            .ThenBy(one => one.Since)
            .Select(one => new Line(
                one.Job.Id, one.Job.Number, one.Job.Owner, one.Job.NoPork,
                [.. animals[one.Job.Id].Select(animal => $"{Wording.Of(animal.Species)}, {(animal.Tag is null ? "no tag" : "tag " + animal.Tag)}{(animal.Rail is null ? "" : ", rail " + animal.Rail)}")],
                Why(one.Since, one.Job.PromisedFor),
                one.Job.CuttingStartedAt is { } started ? $"On the table since {shop.Moment(started)}" : null,
                [.. stopping[one.Job.Id].Select(finding => finding.Text)]))
            .ToList();
        OnTable = [.. lines.Where(line => line.Started is not null)];
        Ready = [.. lines.Where(line => line.Started is null && line.Stopping.Count == 0)];
        Waiting = [.. lines.Where(line => line.Started is null && line.Stopping.Count > 0)];
    }

    private string Why(DateTime since, DateOnly? promised)
    {
        var days = shop.Today.DayNumber - shop.DayOf(since).DayNumber;
        var here = days switch { 0 => "Here since today", 1 => "Here 1 day", _ => $"Here {days} days" };
        return promised is not { } day ? here + "; no day promised"
            : $"{here}, promised {shop.Date(day)}{(day < shop.Today ? " (late)" : day == shop.Today ? " (today)" : "")}";
    }

    public sealed record Line(
        int JobId, int Number, string Owner, bool NoPork, IReadOnlyList<string> Animals, string Why, string? Started, IReadOnlyList<string> Stopping);
}
