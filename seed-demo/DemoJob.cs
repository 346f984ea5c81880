using System.Globalization;
using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Grinding;

namespace ProcessorDesk.SeedDemo;

/// <summary>One job of the season, told as its way through the shop. Each step is put down with its time and played in order.</summary>
internal sealed partial class DemoJob(Season season, TakenOwner owner)
{
    private static readonly ScaleDivision s_bench = ScaleDivision.HundredthPound;
    private int _jobId;

    private RecordsContext Records => season.Records;

    /// <summary>Known once its drop-off was played.</summary>
    public int Id => _jobId;

    public DemoJob TakeIn(
        int daysAgo, int hour, int minute, IReadOnlyList<TakenAnimal> animals, string style, IReadOnlyList<DemoAsk> asks,
        int promisedInDays, bool noPork = false, decimal deposit = 50m, bool whole = true, Pooling pooling = Pooling.Own, string? notes = null) =>
        Do(daysAgo, hour, minute, "take in a job", "IP", "Counter", act =>
        {
            var order = new TakenOrder(Cuts(style), [.. asks.Select(Ask)], season.Day(-promisedInDays), pooling, PackWrap.Vacuum, noPork, notes);
            var outcome = Records.TakeIn(
                new DropOff(Known(owner), [], animals, whole ? order : null, Money.FromDollars(deposit), PaymentMethod.Cash, whole), season.Day(daysAgo), act);
            _jobId = Number(outcome);
            return outcome;
        });

    /// <summary>Another owner's share of this job's one animal, with an order of its own; answers that owner's job.</summary>
    public DemoJob ShareWith(
        int daysAgo, int hour, int minute, TakenOwner other, (Ratio Own, Ratio Other) fractions, string style, IReadOnlyList<DemoAsk> asks, DemoJob? third = null)
    {
        var job = new DemoJob(season, other);
        Do(daysAgo, hour, minute, "divide an animal", "DM", "Counter", act =>
        {
            var animalId = Records.Shares.Where(share => share.JobId == _jobId).Select(share => share.AnimalId).Single();
            var animal = Records.Animals.AsNoTracking().Include(one => one.Shares).Single(one => one.Id == animalId);
            List<(int, Ratio)> kept = [(_jobId, fractions.Own)];
            if (third is not null)
                kept.Add((third._jobId, animal.Shares.Single(share => share.JobId == third._jobId).Fraction));
            var outcome = Records.ShareOut(animal.Id, animal.Version, kept, (Known(other), fractions.Other), season.Day(daysAgo), act);
            if (outcome.IsDone)
                job._jobId = Number(outcome);
            return outcome;
        });
        return job.Do(daysAgo, hour, minute + 4, "change an order", "DM", "Counter", _ =>
        {
            var found = Records.Jobs.Include(one => one.CutOrder).Include(one => one.Asks).AsSplitQuery().Single(one => one.Id == job._jobId);
            new TakenOrder(Cuts(style), [.. asks.Select(Ask)], season.Day(-12), Pooling.Own, PackWrap.FreezerPaper, false, null).WriteOn(found);
            found.CompleteDetails();
            return Outcome.Done(found.Id);
        });
    }

    public DemoJob Hold(int daysAgo, int hour, int minute, HoldReason reason, string note) => Do(daysAgo, hour, minute, "put a job on hold", "NH", "Counter", act =>
    {
        Records.Holds.Add(ProcessorDesk.Records.Hold.OnJob(Job(), reason, note, act.Now, act.Hand.Id));
        return Outcome.Done(_jobId);
    });

    public DemoJob Hang(int daysAgo, int hour, int minute, string rail, params decimal[] hot) => Hang(daysAgo, hour, minute, rail, WeighInKind.HotHanging, hot);

    public DemoJob Chilled(int daysAgo, int hour, int minute, string rail, params decimal[] chilled) => Hang(daysAgo, hour, minute, rail, WeighInKind.ChilledHanging, chilled);

    private DemoJob Hang(int daysAgo, int hour, int minute, string rail, WeighInKind kind, decimal[] pounds)
    {
        for (var i = 0; i < pounds.Length; i++)
        {
            var place = i;
            Do(daysAgo, hour, minute + i, "hang a carcass", "OT", "Cooler", act =>
                Records.Hang(Animals()[place], rail, kind, Weight.FromPounds(pounds[place]), null, act));
        }

        return this;
    }

    private DemoJob Do(int daysAgo, int hour, int minute, string verb, string initials, string station, Func<Act, Outcome> work)
    {
        season.Do(season.At(daysAgo, hour, minute), verb, initials, station, work);
        return this;
    }

    private Job Job() => Records.Jobs.Single(job => job.Id == _jobId);

    private List<int> Animals() =>
        [.. Records.Shares.Where(share => share.JobId == _jobId).OrderBy(share => share.AnimalId).Select(share => share.AnimalId)];

    /// <summary>The owner as found on file, where an earlier job brought them there.</summary>
    private TakenOwner Known(TakenOwner taken) =>
        taken with { Id = Records.Owners.Where(one => one.Name == taken.Name).Select(one => (int?)one.Id).SingleOrDefault() };

    private PlannedAsk Ask(DemoAsk ask) => new(
        Records.FormulaVersions.AsNoTracking().Newest().Single(formula => formula.Product.Name == ask.Product),
        ask.Kind,
        ask.Kind is AskKind.OwnLean or AskKind.Finished ? Weight.FromPounds(ask.Amount) : Weight.Zero,
        ask.Kind == AskKind.Percent ? Proportion.FromPercent(ask.Amount) : Proportion.Zero);

    private static List<CutOrderLine> Cuts(string style) =>
        [.. CutMenu.Groups.Select((group, i) => new CutOrderLine(i, group.Code, CutMenu.Styles.Single(one => one.Code == style).CutFor(group.Code), null, null))];

    private static int Number(Outcome outcome) => outcome.IsDone ? int.Parse(outcome.Result, CultureInfo.InvariantCulture) : 0;

    private static Outcome Told(Finding? refusal) => refusal is null ? Outcome.Done() : Outcome.Refused(refusal);
}
