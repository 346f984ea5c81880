using System.Globalization;
using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Formulas;

namespace ProcessorDesk.Web.Tests.Harness;

/// <summary>
/// A trimmed job on its way through kitchen and freezer, by the verbs alone. Finished 33.10 lb of ring, 19.86 of summer, 14.90 of hot
/// sausage and 38.40 of plain ground, each a little off what the split foretold.
/// </summary>
public static class MadeJob
{
    public static readonly IReadOnlyDictionary<string, decimal> Finished = new Dictionary<string, decimal>
    {
        ["Ring sausage"] = 33.10m,
        ["Summer sausage"] = 19.86m,
        ["Hot sausage"] = 14.90m,
        ["Plain ground"] = 38.40m,
    };

    private static readonly ScaleDivision _bench = ScaleDivision.HundredthPound;

    // Minutes since the batch went in and °F: cooked to 160, chilled from 130 to 80 in half an hour and to 40 in under five.
    private static readonly (ReadingStage Stage, int Minute, decimal Degrees)[] _record =
    [
        (ReadingStage.Cooking, 0, 45m), (ReadingStage.Cooking, 15, 95m), (ReadingStage.Cooking, 30, 135m), (ReadingStage.Cooking, 45, 160m), (ReadingStage.Cooking, 60, 161m),
        (ReadingStage.Chilling, 60, 161m), (ReadingStage.Chilling, 90, 130m), (ReadingStage.Chilling, 120, 79m), (ReadingStage.Chilling, 180, 65m),
        (ReadingStage.Chilling, 240, 52m), (ReadingStage.Chilling, 300, 44m), (ReadingStage.Chilling, 360, 39m),
    ];

    /// <summary>A job whose split is agreed and nothing is made; answers its id.</summary>
    public static int Agree(ShopUnderTest shop, string owner = "Ines Moreau")
    {
        var jobId = TrimmedJob.Make(shop, owner);
        Do(shop, "Grind", (records, act) => records.AgreeSplit(jobId, records.LeanOf(jobId, _bench), act));
        return jobId;
    }

    /// <summary>The same with everything made and in boxes, one for each product, on shelf 3.</summary>
    public static int Boxed(ShopUnderTest shop, string owner = "Ines Moreau")
    {
        var jobId = Agree(shop, owner);
        Finish(shop, jobId);
        return jobId;
    }

    /// <summary>Makes and boxes all of an agreed job, and says that this is all.</summary>
    public static void Finish(ShopUnderTest shop, int jobId)
    {
        foreach (var product in Finished.Keys)
        {
            Make(shop, jobId, product);
            Box(shop, jobId, product);
        }

        Do(shop, "Freezer", (records, act) => records.FinishBoxing(jobId, act));
    }

    /// <summary>One product from its batch sheet to its release; answers the batch's id.</summary>
    public static int Make(ShopUnderTest shop, int jobId, string product)
    {
        var batchId = Do(shop, "Kitchen", (records, act) => records.PlanBatch([AllotmentOf(records, jobId, product)], act));
        foreach (var loadId in shop.Read(records => records.Loads.Where(load => load.BatchId == batchId).OrderBy(load => load.Number).Select(load => load.Id).ToList()))
        {
            DrawInto(shop, loadId);
            Mix(shop, loadId);
        }

        Do(shop, "Kitchen", (records, act) => records.NoteReadings(batchId, [.. Record(batchId, act)], act));
        Do(shop, "Kitchen", (records, act) => records.WeighFinished(batchId, null, Weight.FromPounds(Finished[product] + 4m), Weight.FromPounds(4m), act));
        Do(shop, "Kitchen", (records, act) => records.ReleaseBatch(batchId, null, act));
        return batchId;
    }

    /// <summary>All of a product in one box; answers the box's id.</summary>
    public static int Box(ShopUnderTest shop, int jobId, string product, int packs = 20, string place = "Shelf 3") =>
        Do(shop, "Freezer", (records, act) => records.PackBox(
            new BoxOrder(jobId, [new PacksIn(AllotmentOf(records, jobId, product), null, packs)], Weight.FromPounds(Finished[product] + 0.80m), Weight.FromPounds(0.80m), place), act));

    public static int AllotmentOf(RecordsContext records, int jobId, string product) =>
        records.MadeOf(jobId).Single(made => made.Name == product).AllotmentId;

    /// <summary>What the load wants of its owner, from the lugs in the order they were filled.</summary>
    private static void DrawInto(ShopUnderTest shop, int loadId)
    {
        var (jobId, wanted) = shop.Read(records => records.LoadParts.Where(part => part.LoadId == loadId).Select(part => ValueTuple.Create(part.Entry.JobId, part.Lean)).Single());
        foreach (var fillingId in shop.Read(records => records.Fillings.Open().Where(filling => filling.JobId == jobId).OrderBy(filling => filling.Id).Select(filling => filling.Id).ToList()))
        {
            var left = shop.Read(records => records.LeftIn(fillingId, _bench));
            var drawn = Weight.Min(wanted, left);
            if (!drawn.IsPositive)
                continue;
            Do(shop, "Kitchen", (records, act) => records.DrawMeat(new DrawOrder(loadId, fillingId, drawn, EmptiesLug: drawn == left), act));
            wanted -= drawn;
        }
    }

    /// <summary>With what the formula asks for on the meat as drawn.</summary>
    private static void Mix(ShopUnderTest shop, int loadId) => Do(shop, "Kitchen", (records, act) =>
    {
        var load = records.Loads.AsNoTracking().Include(one => one.Draws)
            .Include(one => one.Batch).ThenInclude(batch => batch.FormulaVersion).ThenInclude(formula => formula.Ingredients)
            .Include(one => one.Batch).ThenInclude(batch => batch.FormulaVersion).ThenInclude(formula => formula.Product)
            .AsSplitQuery().Single(one => one.Id == loadId);
        var formula = load.Batch.FormulaVersion;
        var amounts = FormulaScaling.Scale(formula.ToTrade(), load.Drawn + load.AddedFat, ScaleDivision.TenthGram).Lines;
        var weighed = formula.Ingredients.OrderBy(line => line.Position).Zip(amounts).ToDictionary(one => one.First.Position, one => (one.Second.Amount, WeightUnit.Gram));
        return records.MixLoad(new MixOrder(loadId, load.AddedFat, weighed) { Again = weighed }, isManager: false, act);
    });

    private static IEnumerable<BatchReading> Record(int batchId, Act act) => _record.Select(one =>
        BatchReading.OfTemperature(batchId, one.Stage, 1, Temperature.FromFahrenheit(one.Degrees), act.Now.AddMinutes(one.Minute - 360), act.Now, act.Hand.Id));

    private static int Do(ShopUnderTest shop, string station, Func<RecordsContext, Act, Outcome> work)
    {
        var outcome = shop.Write(work, new Hand(shop.StaffOf(StaffRole.Manager), station));
        return outcome.IsDone
            ? int.Parse(outcome.Result, CultureInfo.InvariantCulture)
            : throw new InvalidOperationException(string.Join(' ', outcome.Findings.Select(finding => finding.Text)));
    }
}
