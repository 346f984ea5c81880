using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Yields;
using ProcessorDesk.Web.Hosting;
using ProcessorDesk.Web.Pages.Cooler;

namespace ProcessorDesk.Web.Pages.Today;

/// <summary>Sorts what is in the shop into kinds of work.</summary>
/// <param name="address">Where a line leads: page, what the page calls its thing, the thing, and the job where the page is closed to the hand.</param>
internal sealed class TodayWork(TodayFacts facts, ShopDay shop, Func<string, string, int, int, string> address)
{
    private const int DaysAhead = 3;
    private readonly Dictionary<int, TodayJob> _jobs = facts.Jobs.ToDictionary(job => job.Id);
    private readonly ILookup<int, TodayJob> _ofAnimal = facts.Jobs.SelectMany(job => job.Animals.Select(animal => (animal.Id, Job: job))).ToLookup(one => one.Id, one => one.Job);

    public TodaySection Cooler => new("cooler", "warm or hung too long", "nothing warm or hung too long", "Cooler",
    [
        .. NextToCut.Sort(Hanging.Where(one => one.Next.IsWarm || IsTooLong(one.Animal)), one => one.Next).Select(one => new TodayLine(
            OfJob("/Find/Job", "id", one.Job),
            TodayWords.Name(one.Animal.Species, one.Animal.Tag),
            $"{string.Join(" ", one.Next.Reasons)} {TodayWords.Whose(one.Job)}.",
            one.Next.IsWarm ? "Warm" : "Hung too long",
            "warn"))
    ]);

    public TodaySection ToCut => new("cut", "to cut, these first", "nothing free to cut", "Cutting",
    [
        .. NextToCut.Sort(Hanging.Where(one => IsFree(one.Job)), one => one.Next)
            .DistinctBy(one => one.Job.Id)
            .Select(one => new TodayLine(
                OfJob("/Cutting/Sheet", "id", one.Job), TodayWords.Whose(one.Job), $"{TodayWords.Animals(one.Job)}. {string.Join(" ", one.Next.Reasons)}"))
    ]);

    public TodaySection ToSplit => new("split", "with trim to split", "no trim to split", "Grind",
    [
        .. Jobs(job => job.Stage == JobStage.TrimWeighed).Select(job => (Job: job, Short: job.Short(shop.Settings.BenchDivision))).OrderByDescending(one => one.Short.Count > 0)
            .Select(one => new TodayLine(
                OfJob("/Grind/Split", "id", one.Job), TodayWords.Whose(one.Job),
                $"{TodayWords.Animals(one.Job)}. {string.Join(" ", one.Short.Take(1))} {Promise(one.Job)}", one.Short.Count > 0 ? "Short of trim" : "", "warn"))
    ]);

    public TodaySection ToBox => OfJobs("box", "made, to be put in boxes", "nothing to put in boxes", "Freezer", "/Freezer/Job",
        job => job.Stage == JobStage.Made, job => $"{Promise(job)} {InPart(job)}");

    public TodaySection Ready => OfJobs("ready", "ready to go", "nothing ready to go", "Pickup", "/Pickup/Job",
        job => job.Stage == JobStage.Boxed && !IsUnclaimed(job), job => $"{TodayWords.Money(job)}. {Promise(job)} {InPart(job)}{job.Phone}");

    public TodaySection Unclaimed => OfJobs("unclaimed", "not fetched", "nothing unclaimed", "Pickup", "/Pickup/Job",
        IsUnclaimed, job => $"In boxes since {shop.Date(job.BoxedAt!.Value)}. {TodayWords.Money(job)}. Call {job.Phone}.", job => $"{DaysBoxed(job)} days");

    public TodaySection Promised => OfJobs("promised", "promised soon or late", "nothing promised in these days", "", "/Find/Job",
        job => job.Promised is { } day && day <= shop.Today.AddDays(DaysAhead) && job.Stage != JobStage.Boxed,
        job => $"{Promise(job)} {Wording.Of(job.Stage)}. {InPart(job)}",
        job => job.Promised < shop.Today ? "Late" : "");

    public TodaySection Details => OfJobs("details", "with details to fill in", "no details missing", "", "/Counter/Order",
        job => !job.DetailsComplete, job => $"{TodayWords.Animals(job)}, taken in {shop.Moment(job.TakenAt)}. Ticket given, details after.", key: "job");

    private IEnumerable<(TodayJob Job, TodayAnimal Animal, NextToCut Next)> Hanging =>
        from job in facts.Jobs
        where job.Stage is JobStage.InCooler or JobStage.DetailsMissing
        from animal in job.Animals
        group (job, animal) by animal.Id into owned
        let first = owned.First()
        select (first.job, first.animal, NextToCut.Of(
            false, first.animal.Species, first.animal.State, first.animal.Surface, first.animal.WeighedCold, first.animal.ArrivedAt, first.animal.HungAt,
            owned.Min(one => one.job.Promised), shop));

    private bool IsTooLong(TodayAnimal animal) => animal.HungAt is { } hung
        && animal.State is not (ArrivalState.FreshBoned or ArrivalState.FrozenBoned)
        && HangingGuidance.For(animal.Species).Say(shop.DayOf(hung), shop.Today).Standing == HangingStanding.TooLong;

    private bool IsFree(TodayJob job) =>
        job.Stage == JobStage.InCooler
        && !facts.Troubles.Any(hold => hold.StopsKnife && (hold.JobId == job.Id || job.Animals.Any(animal => animal.Id == hold.AnimalId)))
        && job.Animals.All(animal => animal.IsWhollyShared);

    private bool IsUnclaimed(TodayJob job) => job.BoxedAt is { } boxed && shop.IsUnclaimed(boxed);

    private int DaysBoxed(TodayJob job) => shop.Today.DayNumber - shop.DayOf(job.BoxedAt!.Value).DayNumber;

    private IEnumerable<TodayJob> Jobs(Func<TodayJob, bool> which) => facts.Jobs.Where(which);

    /// <summary>The job a trouble is about; null where it left or was never open.</summary>
    public TodayJob? JobOf(TodayFacts.Trouble trouble) =>
        trouble.JobId is { } jobId ? _jobs.GetValueOrDefault(jobId)
        : trouble.AnimalId is { } animalId ? _ofAnimal[animalId].FirstOrDefault()
        : null;

    private string OfJob(string page, string key, TodayJob job) => address(page, key, job.Id, job.Id);

    private TodaySection OfJobs(
        string id, string title, string noneOf, string station, string page, Func<TodayJob, bool> which, Func<TodayJob, string> words, Func<TodayJob, string>? chip = null, string key = "id") =>
        new(id, title, noneOf, station, [.. Jobs(which).Select(job => new TodayLine(OfJob(page, key, job), TodayWords.Whose(job), words(job).Trim(), chip?.Invoke(job) ?? "", "warn"))]);

    private string Promise(TodayJob job) => job.Promised is { } day ? $"Promised {shop.Date(day)}." : "No day promised.";

    private static string InPart(TodayJob job) => (job.HasLeftInPart, job.BoxesHere) switch
    {
        (false, _) => "",
        (true, 0) => "Part of it was fetched. ",
        (true, 1) => "Part of it was fetched; one box is here. ",
        (true, _) => $"Part of it was fetched; {job.BoxesHere} boxes are here. ",
    };
}
