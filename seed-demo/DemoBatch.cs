using System.Globalization;
using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;

namespace ProcessorDesk.SeedDemo;

/// <summary>One batch of the season, from its plan to its release, told step by step as a job is.</summary>
internal sealed class DemoBatch(Season season, string product, params DemoJob[] jobs)
{
    private int _id;

    private RecordsContext Records => season.Records;

    private DemoKitchen Kitchen => new(Records);

    /// <summary>All of it. Fresh, on one morning; smoked or cooked, mixed before noon, in the smokehouse the next day, released the day after.</summary>
    public DemoBatch Make(int daysAgo)
    {
        if (!DemoProducts.IsHeated(product))
            return Plan(season.At(daysAgo, 9, 0)).Fill(season.At(daysAgo, 9, 10)).Finish(season.At(daysAgo, 10, 0)).Release(season.At(daysAgo, 10, 10));
        return Smoke(daysAgo).Finish(season.At(daysAgo - 2, 8, 0)).Release(season.At(daysAgo - 2, 8, 30));
    }

    /// <summary>Up to the last reading of the chilling, on the day after it was mixed.</summary>
    public DemoBatch Smoke(int daysAgo, bool withGap = false) =>
        Plan(season.At(daysAgo, 11, 0)).Fill(season.At(daysAgo, 11, 10))
            .Step(season.At(daysAgo - 1, 7, 10), BatchStepKind.Stuffed)
            .Step(season.At(daysAgo - 1, 7, 30), BatchStepKind.HeatStarted)
            .Note(season.At(daysAgo - 1, 12, 4), ReadingStage.Cooking, season.At(daysAgo - 1, 7, 30), withGap ? DemoReadings.CookingWithGap : DemoReadings.Cooking)
            .Step(season.At(daysAgo - 1, 12, 5), BatchStepKind.ChillStarted)
            .Note(season.At(daysAgo - 1, 16, 45), ReadingStage.Chilling, season.At(daysAgo - 1, 12, 5), DemoReadings.Chilling);

    public DemoBatch Plan(DateTimeOffset at) => Do(at, "plan a batch", act =>
    {
        var allotments = jobs.Select(job => Records.MadeOf(job.Id).Single(one => one.Name == product).AllotmentId).ToList();
        var outcome = Records.PlanBatch(allotments, act);
        _id = outcome.IsDone ? int.Parse(outcome.Result, CultureInfo.InvariantCulture) : 0;
        return outcome;
    });

    /// <summary>Draws and mixes every load, each ten minutes after the one before.</summary>
    public DemoBatch Fill(DateTimeOffset at) => Do(at, "draw meat", act => EachLoad(load => Kitchen.Draw(_id, load, act)))
        .Do(at.AddMinutes(10), "mix a load", act => EachLoad(load => Kitchen.Mix(_id, load, act)));

    public DemoBatch Draw(DateTimeOffset at, int load) => Do(at, "draw meat", act => Kitchen.Draw(_id, load, act));

    public DemoBatch Mix(DateTimeOffset at, int load) => Do(at, "mix a load", act => Kitchen.Mix(_id, load, act));

    /// <summary>Another job's lug was tipped in before anybody saw it: it is booked, and the batch waits.</summary>
    public DemoBatch WrongLug(DateTimeOffset at, DemoJob other, decimal pounds, string because) => Do(at, "note what is already in", act =>
    {
        var load = Records.Loads.Where(one => one.BatchId == _id).OrderBy(one => one.Number).Select(one => one.Id).First();
        var lug = Records.Fillings.Open().Where(one => one.JobId == other.Id).OrderBy(one => one.Id).Select(one => one.Id).First();
        return Records.DrawMeat(new DrawOrder(load, lug, Weight.FromPounds(pounds), EmptiesLug: false, because), act);
    });

    public DemoBatch Step(DateTimeOffset at, BatchStepKind kind) => Do(at, "note a step", act => Records.TakeStep(_id, kind, act));

    /// <summary>Readings typed off the chart.</summary>
    /// <param name="from">When the first of them was read.</param>
    public DemoBatch Note(DateTimeOffset at, ReadingStage stage, DateTimeOffset from, IReadOnlyList<DemoReadings.Line> lines) => Do(at, "note readings", act =>
        Records.NoteReadings(_id, [.. DemoReadings.Of(_id, stage, from, lines, act)], act));

    /// <summary>Packed, and weighed load by load: about what the formula foretold, a little less in one batch than in another.</summary>
    public DemoBatch Finish(DateTimeOffset at) => Step(at, BatchStepKind.Packed).Do(at.AddMinutes(5), "weigh the finished product", act =>
    {
        var division = ScaleDivision.HundredthPound;
        var batch = Records.Batches.AsNoTracking().Include(one => one.Loads).Include(one => one.Entries).ThenInclude(entry => entry.Allotment).AsSplitQuery().Single(one => one.Id == _id);
        var loads = batch.Loads.OrderBy(load => load.Number).ToList();
        var expected = division.Sum(batch.Entries.Select(entry => entry.Allotment.Finished));
        var weights = division.Split(division.FromCount(division.CountOf(expected) - 7 * (batch.Number % 4)), [.. loads.Select(load => division.CountOf(load.Green))]);
        for (var i = 0; i < loads.Count; i++)
        {
            if (Records.WeighFinished(_id, loads[i].Id, division.Round(weights[i]), Weight.Zero, act, PiecesOf(weights[i])) is { IsDone: false } refused)
                return refused;
            Records.SaveChanges();
        }

        return !DemoProducts.IsHeated(product) ? Outcome.Done(_id) : Records.WeighLeft(_id, Weight.FromPounds(0.95m + 0.11m * (batch.Number % 4)), act);
    });

    /// <summary>Rings of about a pound; all else is not counted.</summary>
    private int? PiecesOf(Weight weight) => product == DemoProducts.Ring ? (int)Math.Max(1, weight.Milligrams / Weight.FromPounds(0.98m).Milligrams) : null;

    /// <summary>The chart ran out; somebody who knows judged the batch in a letter, which the manager wrote down.</summary>
    public DemoBatch MakeByLetter(int daysAgo) => Smoke(daysAgo, withGap: true).Finish(season.At(daysAgo - 2, 8, 0))
        .Hold(season.At(daysAgo - 2, 8, 10), HoldReason.RecordIncomplete, "No readings from 131 to 154 °F")
        .Dispose(season.At(daysAgo - 2, 9, 0), DispositionKind.OwnersTold, null, "Nell Harrowgate", "By telephone: a day later, the chart ran out")
        .Dispose(season.At(daysAgo - 3, 16, 0), DispositionKind.ExpertsLetter, ReadingStage.Cooking, "Dr. Ida Marsh, meat laboratory", "Letter 26-114: the house's own log of the air shows 170 °F all the while")
        .ReleaseHold(season.At(daysAgo - 3, 16, 10), "Judged in letter 26-114")
        .Release(season.At(daysAgo - 3, 16, 20));

    private DemoBatch Dispose(DateTimeOffset at, DispositionKind kind, ReadingStage? stage, string name, string reference) => Do(at, "write down what was done about a batch", act =>
    {
        var day = DateOnly.FromDateTime(at.DateTime);
        return Records.WriteDisposition(_id, new DispositionOrder(kind, stage, name, day, reference), day, act);
    }, "NH");

    private DemoBatch ReleaseHold(DateTimeOffset at, string because) => Do(at, "release a batch from hold", act =>
        Records.ReleaseBatchHold(Records.Holds.Standing().Single(hold => hold.BatchId == _id).Id, because, act), "NH");

    public DemoBatch Release(DateTimeOffset at) => Do(at, "release a batch", act => Records.ReleaseBatch(_id, null, act));

    public DemoBatch Hold(DateTimeOffset at, HoldReason reason, string note) => Do(at, "put a batch on hold", act => Records.HoldBatch(_id, reason, note, act), "NH");

    private Outcome EachLoad(Func<int, Outcome> work)
    {
        foreach (var load in Records.Loads.Where(one => one.BatchId == _id).OrderBy(one => one.Number).Select(one => one.Number).ToList())
        {
            if (work(load) is { IsDone: false } refused)
                return refused;
            Records.SaveChanges();
        }

        return Outcome.Done(_id);
    }

    private DemoBatch Do(DateTimeOffset at, string verb, Func<Act, Outcome> work, string initials = "BQ")
    {
        season.Do(at, verb, initials, "Kitchen", work);
        return this;
    }
}
