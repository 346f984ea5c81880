using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Yields;
using ProcessorDesk.Web.Hosting;
using ProcessorDesk.Web.Pages.Cooler;

namespace ProcessorDesk.Web.Pages.Today;

/// <summary>Sorts what is in the shop into kinds of work.</summary>
/// <param name="address">Where a line leads: page, what the page calls the job, the job.</param>
internal sealed class TodayWork(TodayFacts facts, ShopDay shop, Func<string, string, int, string> address)
{
    private const int DaysAhead = 3;
    private readonly Dictionary<int, TodayFacts.OpenJob> _jobs = facts.Jobs.ToDictionary(job => job.Id);
    private readonly ILookup<int, TodayFacts.Owned> _ofJob = facts.Shares.ToLookup(share => share.JobId);
    private readonly ILookup<int, TodayFacts.Owned> _ofAnimal = facts.Shares.ToLookup(share => share.AnimalId);

    public TodaySection Holds => new("holds", "on hold", "nothing on hold", "",
    [
        .. facts.Holds.Select(hold => (Hold: hold, Job: JobOf(hold))).Where(one => one.Job is not null).Select(one => new TodayLine(
            address("/Find/Job", "id", one.Job!.Id),
            one.Hold.Species is { } species ? Name(species, one.Hold.Tag) : $"Job {one.Job.Number}",
            $"{Whose(one.Job)}, since {shop.Moment(one.Hold.At)}.{(one.Hold.Note is { } note ? " " + note + "." : "")}",
            $"On hold: {Wording.Of(one.Hold.Reason)}",
            "hold"))
    ]);

    public TodaySection Cooler => new("cooler", "warm or hung too long", "nothing warm or hung too long", "Cooler",
    [
        .. NextToCut.Sort(Hanging.Where(one => one.Next.IsWarm || IsTooLong(one.Animal)), one => one.Next).Select(one => new TodayLine(
            address("/Find/Job", "id", one.Animal.JobId),
            Name(one.Animal.Species, one.Animal.Tag),
            $"{string.Join(" ", one.Next.Reasons)} {Whose(_jobs[one.Animal.JobId])}.",
            one.Next.IsWarm ? "Warm" : "Hung too long",
            "warn"))
    ]);

    public TodaySection ToCut => new("cut", "to cut, these first", "nothing free to cut", "Cutting",
    [
        .. NextToCut.Sort(Hanging.Where(one => IsFree(one.Animal.JobId)), one => one.Next)
            .DistinctBy(one => one.Animal.JobId)
            .Select(one => new TodayLine(
                address("/Cutting/Sheet", "id", one.Animal.JobId), Whose(_jobs[one.Animal.JobId]), $"{Animals(one.Animal.JobId)}. {string.Join(" ", one.Next.Reasons)}"))
    ]);

    public TodaySection ToSplit => Jobs("split", "with trim to split", "no trim to split", "Grind", "/Grind/Split", "id",
        job => job.Stage == JobStage.TrimWeighed, job => $"{Animals(job.Id)}. {Promise(job)}");

    public TodaySection Ready => Jobs("ready", "ready to settle and hand over", "nothing ready to go", "Pickup", "/Pickup/Job", "id",
        job => job.Stage is JobStage.Made or JobStage.Boxed, job => $"{Money(job)}. {Promise(job)} {job.Phone}");

    public TodaySection Promised => Jobs("promised", "promised soon or late", "nothing promised in these days", "", "/Find/Job", "id",
        job => job.Promised is { } day && day <= shop.Today.AddDays(DaysAhead) && job.Stage is not (JobStage.Made or JobStage.Boxed),
        job => $"{Promise(job)} {Wording.Of(job.Stage)}.",
        job => job.Promised < shop.Today ? "Late" : "");

    public TodaySection Details => Jobs("details", "with details to fill in", "no details missing", "", "/Counter/Order", "job",
        job => !job.DetailsComplete, job => $"{Animals(job.Id)}, taken in {shop.Moment(job.TakenAt)}. Ticket given, details after.");

    private IEnumerable<(TodayFacts.Owned Animal, NextToCut Next)> Hanging =>
        from share in facts.Shares
        where _jobs.TryGetValue(share.JobId, out var job) && job.Stage is JobStage.InCooler or JobStage.DetailsMissing
        group share by share.AnimalId into animal
        let first = animal.First()
        select (first, NextToCut.Of(
            false, first.Species, first.State, first.Surface, first.WeighedCold, first.ArrivedAt, first.HungAt,
            animal.Min(share => _jobs[share.JobId].Promised), shop));

    private bool IsTooLong(TodayFacts.Owned animal) => animal.HungAt is { } hung
        && animal.State is not (ArrivalState.FreshBoned or ArrivalState.FrozenBoned)
        && HangingGuidance.For(animal.Species).Say(shop.DayOf(hung), shop.Today).Standing == HangingStanding.TooLong;

    private bool IsFree(int jobId) =>
        _jobs[jobId].Stage == JobStage.InCooler
        && !facts.Holds.Any(hold => hold.StopsKnife && (hold.JobId == jobId || _ofJob[jobId].Any(share => share.AnimalId == hold.AnimalId)))
        && _ofJob[jobId].All(share => _ofAnimal[share.AnimalId].Aggregate(Ratio.Zero, (sum, one) => sum + one.Fraction) == Ratio.One);

    private TodayFacts.OpenJob? JobOf(TodayFacts.Held hold) =>
        hold.JobId is { } jobId ? _jobs.GetValueOrDefault(jobId)
        : hold.AnimalId is { } animalId ? _ofAnimal[animalId].Select(share => _jobs.GetValueOrDefault(share.JobId)).FirstOrDefault(job => job is not null)
        : null;

    private TodaySection Jobs(
        string id, string title, string noneOf, string station, string page, string key,
        Func<TodayFacts.OpenJob, bool> which, Func<TodayFacts.OpenJob, string> words, Func<TodayFacts.OpenJob, string>? chip = null) =>
        new(id, title, noneOf, station,
            [.. facts.Jobs.Where(which).Select(job => new TodayLine(address(page, key, job.Id), Whose(job), words(job), chip?.Invoke(job) ?? "", "warn"))]);

    private static string Whose(TodayFacts.OpenJob job) => $"Job {job.Number}, {job.Owner}";

    private static string Name(Species species, string? tag) => tag is null ? $"{Wording.Of(species)}, no tag" : $"{Wording.Of(species)}, tag {tag}";

    private string Animals(int jobId) => string.Join("; ", _ofJob[jobId].Select(share => Name(share.Species, share.Tag)));

    private string Promise(TodayFacts.OpenJob job) => job.Promised is { } day ? $"Promised {shop.Date(day)}." : "No day promised.";

    private static string Money(TodayFacts.OpenJob job) =>
        !job.IsInvoiced ? "Not invoiced" : job.BalanceCents <= 0 ? "Paid" : $"{Trade.Money.FromCents(job.BalanceCents).Print()} owed";
}
