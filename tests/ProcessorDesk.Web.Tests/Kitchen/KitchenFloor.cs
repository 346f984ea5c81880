using System.Globalization;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Web.Tests.Harness;

namespace ProcessorDesk.Web.Tests.Kitchen;

/// <summary>
/// A shop with the tests' products and a mixer of 25 lb. Each job is the two deer of one owner: ring sausage 25.00 lb lean and 10.71 lb fat, 37.14 lb
/// green in two loads; hot sausage 11.03 and 3.68, 15.00 green in one; lugs of 31.52, 26.38, 19.20 and 15.65 lb.
/// </summary>
public sealed class KitchenFloor : ShopUnderTest
{
    public KitchenFloor()
    {
        TrimmedJob.Prepare(this);
        Write((records, _) =>
        {
            records.Shop.Single().Describe("Our shop", null, null, "America/Chicago", null, 14);
            return Outcome.Done();
        });
    }

    public int Job(string owner, Pooling pooling = Pooling.Own)
    {
        var id = MadeJob.Agree(this, owner);
        Write((records, _) =>
        {
            records.Jobs.Single(job => job.Id == id).Arrange(new DateOnly(2026, 12, 11), pooling, PackWrap.Vacuum, noPork: false, notes: null);
            return Outcome.Done();
        });
        return id;
    }

    public int Number(int job) => Read(records => records.Jobs.Single(one => one.Id == job).Number);

    public string Allotment(int job, string product) => Text(Read(records => MadeJob.AllotmentOf(records, job, product)));

    /// <summary>A batch of one job's product; its id and its loads', in order.</summary>
    public (int Batch, List<int> Loads) Plan(int job, string product = "Ring sausage") => Plan(product, job);

    public (int Batch, List<int> Loads) Plan(string product, params int[] jobs)
    {
        var id = Do((records, act) => records.PlanBatch([.. jobs.Select(job => MadeJob.AllotmentOf(records, job, product))], act));
        return (id, Read(records => records.Loads.Where(load => load.BatchId == id).OrderBy(load => load.Number).Select(load => load.Id).ToList()));
    }

    /// <summary>Numbers of the job's lugs in the order they were filled.</summary>
    public List<string> Lugs(int job) =>
        Read(records => records.Fillings.Where(filling => filling.JobId == job).OrderBy(filling => filling.Id).Select(filling => filling.Lug.Number).ToList()).ConvertAll(Text);

    public void Draw(int load, int job, decimal pounds, int lug = 0) => Do((records, act) => records.DrawMeat(
        new DrawOrder(load, records.Fillings.Where(filling => filling.JobId == job).OrderBy(filling => filling.Id).Select(filling => filling.Id).Skip(lug).First(), Weight.FromPounds(pounds), false), act));

    /// <summary>Hot sausage of a job in its one load, drawn and mixed as planned; the batch's id.</summary>
    public int MixedHot(int job)
    {
        var (batch, loads) = Plan(job, "Hot sausage");
        Draw(loads[0], job, 11.03m);
        Do((records, act) => records.MixLoad(
            new MixOrder(loads[0], Weight.FromPounds(3.68m), new Dictionary<int, (Weight, WeightUnit)> { [0] = (Weight.FromGrams(133.4m), WeightUnit.Gram) }), false, act));
        return batch;
    }

    /// <summary>Ring sausage of a job, both loads drawn and mixed as planned, with 20.2 g of cure each; the batch's id.</summary>
    public int MixedRing(int job)
    {
        var (batch, loads) = Plan(job);
        foreach (var (load, fat) in loads.Zip([5.36m, 5.35m]))
        {
            Draw(load, job, 12.50m);
            Do((records, act) => records.MixLoad(
                new MixOrder(load, Weight.FromPounds(fat), new Dictionary<int, (Weight, WeightUnit)> { [0] = (Weight.FromGrams(303.8m), WeightUnit.Gram), [1] = (Weight.FromGrams(20.2m), WeightUnit.Gram) })
                {
                    Again = new Dictionary<int, (Weight, WeightUnit)> { [1] = (Weight.FromGrams(20.1m), WeightUnit.Gram) },
                }, false, act));
        }

        return batch;
    }

    public int Do(Func<RecordsContext, Act, Outcome> work)
    {
        var outcome = Write(work, new Hand(StaffOf(StaffRole.Manager), "Kitchen"));
        return outcome.IsDone ? int.Parse(outcome.Result, CultureInfo.InvariantCulture) : throw new InvalidOperationException(string.Join(' ', outcome.Findings.Select(finding => finding.Text)));
    }

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
