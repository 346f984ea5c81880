using System.Globalization;
using ProcessorDesk.Records.Tests.Cast;
using ProcessorDesk.Trade;
using Xunit;

namespace ProcessorDesk.Records.Tests.Yields;

/// <summary>One deer's plain ground through the verbs: 20.00 lb of lean, 19.80 back from the kitchen, 19.60 in its box.</summary>
public sealed class WayThroughTheShopTests(ShopFile shop) : IClassFixture<ShopFile>
{
    [Fact]
    public void The_statement_follows_the_meat_from_the_split_to_the_box()
    {
        var jobId = shop.Do(Trimmed);
        using var records = shop.Open();
        Assert.Equal(["Boneless meat 20.00 lb"], Told(records, jobId));

        Done(records, act => records.AgreeSplit(jobId, Weight.FromPounds(20m), act));
        Assert.Equal("Made, about 20.00 lb", Told(records, jobId)[^1]);

        var batchId = Make(records, jobId);
        Assert.Equal(["Cooking and drying 0.20 lb", "Made 19.80 lb"], Told(records, jobId)[^2..]);

        Box(records, jobId, batchId);
        Assert.Equal(["Made 19.80 lb", "Lost in packing 0.20 lb", "In boxes 19.60 lb"], Told(records, jobId)[^3..]);
    }

    private static int Trimmed(RecordsContext records, Act act)
    {
        var job = Sample.Job(records, act);
        job.CompleteDetails();
        var filling = Sample.Lug(records, job, Sample.Deer(records, job, act, "WS-1"), act);
        job.StartCutting(act.Now);
        Sample.Lean(records, filling, 22.5m, act);
        job.FinishCutting(act.Now);
        records.SaveChanges();
        return job.Id;
    }

    private int Make(RecordsContext records, int jobId)
    {
        var allotment = records.GrindAllotments.Single(one => records.AgreedSplits.Any(split => split.Id == one.AgreedSplitId && split.JobId == jobId));
        var batchId = Done(records, act => records.PlanBatch([allotment.Id], act));
        var loadId = records.Loads.Single(load => load.BatchId == batchId).Id;
        var fillingId = records.Fillings.Single(filling => filling.JobId == jobId).Id;
        Done(records, act => records.DrawMeat(new DrawOrder(loadId, fillingId, Weight.FromPounds(20m), EmptiesLug: true), act));
        Done(records, act => records.MixLoad(new MixOrder(loadId, Weight.Zero, new Dictionary<int, (Weight, WeightUnit)>()), isManager: false, act));
        Assert.Equal("Made, about 20.00 lb", Told(records, jobId)[^1]);
        Done(records, act => records.WeighFinished(batchId, null, Weight.FromPounds(21.8m), Weight.FromPounds(2m), act));
        Done(records, act => records.ReleaseBatch(batchId, null, act));
        return batchId;
    }

    private void Box(RecordsContext records, int jobId, int batchId)
    {
        var allotmentId = records.BatchEntries.Single(entry => entry.BatchId == batchId).AllotmentId;
        Done(records, act => records.PackBox(new BoxOrder(jobId, [new PacksIn(allotmentId, null, 12)], Weight.FromPounds(9m), Weight.FromPounds(0.5m), null), act));
        Done(records, act => records.UnpackBox(records.Boxes.Single(box => box.JobId == jobId).Id, "too small a box", act));
        Done(records, act => records.PackBox(new BoxOrder(jobId, [new PacksIn(allotmentId, null, 12)], Weight.FromPounds(20.1m), Weight.FromPounds(0.5m), null), act));
        Assert.Equal("Made 19.80 lb", Told(records, jobId)[^1]);
        Done(records, act => records.FinishBoxing(jobId, act));
    }

    private static List<string> Told(RecordsContext records, int jobId) =>
        [.. records.YieldAccountOf(jobId, ScaleDivision.HundredthPound).Way.Select(step => $"{step.Name} {step.Printed}")];

    private int Done(RecordsContext records, Func<Act, Outcome> verb)
    {
        var outcome = shop.Run(records, verb);
        Assert.True(outcome.IsDone, string.Join(' ', outcome.Findings.Select(finding => finding.Text)));
        return int.Parse(outcome.Result, CultureInfo.InvariantCulture);
    }
}
