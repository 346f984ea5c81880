using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records.Tests.Cast;
using ProcessorDesk.Trade;

namespace ProcessorDesk.Records.Tests.Keeping;

/// <summary>Rows of kitchen, freezer and hand-over, each of them once open and once closed, made by the verbs.</summary>
internal static class GuardedKitchen
{
    public static void Fill(ShopFile shop)
    {
        var (job, lug, products) = shop.Do(Trimmed);
        var released = Done(shop, (records, act) => records.PlanBatch([products[0]], act));
        Draw(shop, released, lug, 6m);
        Done(shop, (records, act) => records.StrikeDraw(records.Draws.Single(draw => draw.Load.BatchId == released).Id, "typed wrong", act));
        Draw(shop, released, lug, 5m);
        Mix(shop, released);
        Lots(shop, released);
        Done(shop, (records, act) => records.TakeStep(released, BatchStepKind.Stuffed, act, records.Loads.Where(load => load.BatchId == released).ToDictionary(load => load.Id, _ => 12)));
        Done(shop, (records, act) => records.UndoStep(records.BatchSteps.Single(step => step.BatchId == released).Id, "too early", act));
        Done(shop, (records, act) => records.TakeStep(released, BatchStepKind.Packed, act));
        Done(shop, (records, act) => records.NoteReadings(released, [Reading(released, act), Reading(released, act)], act));
        Done(shop, (records, act) => records.StrikeReading(records.BatchReadings.First(reading => reading.BatchId == released).Id, "wrong probe", act));
        Done(shop, (records, act) => records.WeighFinished(released, null, Weight.FromPounds(5m), Weight.Zero, act));
        Done(shop, (records, act) => records.WriteDisposition(
            released, new DispositionOrder(DispositionKind.OwnersTold, null, "Sam Tester", DateOnly.FromDateTime(act.Now), "by telephone"), DateOnly.FromDateTime(act.Now), act));
        Done(shop, (records, act) => records.ReleaseBatch(released, null, act));

        var ended = Done(shop, (records, act) => records.PlanBatch([products[1]], act));
        Done(shop, (records, act) => records.TakeOffPlan(ended, "tomorrow", act));
        Draw(shop, Done(shop, (records, act) => records.PlanBatch([products[1]], act)), lug, 1m);
        Box(shop, job, products[0]);
        Done(shop, (records, act) => records.LogCall(new CallNote(job, new TraceStart(TracedKind.Batch, released), CallOutcome.NoAnswer, "rang twice"), act));
    }

    /// <summary>A job with 10 lb of lean and two products of 5 lb.</summary>
    private static (int Job, int Lug, List<int> Products) Trimmed(RecordsContext records, Act act)
    {
        var job = Sample.Job(records, act, "Second Owner");
        var deer = Sample.Deer(records, job, act, "WT 13");
        var plain = Sample.PlainGround(records);
        job.OrderGrind([new GrindOrder(0, plain.Id, Trade.Grinding.AskKind.OwnLean, Weight.FromPounds(5m), Proportion.Zero)]);
        job.CompleteDetails();
        job.StartCutting(act.Now);
        var lug = Sample.Lug(records, job, deer, act);
        Sample.Lean(records, lug, 10m + lug.Tare.Pounds, act);
        job.FinishCutting(act.Now);
        records.SaveChanges();
        records.AgreeSplit(job.Id, Weight.FromPounds(10m), act);
        records.SaveChanges();
        return (job.Id, lug.Id, records.GrindAllotments.Where(one => records.AgreedSplits.Any(split => split.Id == one.AgreedSplitId && split.JobId == job.Id)).Select(one => one.Id).ToList());
    }

    private static void Draw(ShopFile shop, int batch, int lug, decimal pounds) =>
        Done(shop, (records, act) => records.DrawMeat(new DrawOrder(records.Loads.Single(load => load.BatchId == batch).Id, lug, Weight.FromPounds(pounds), false), act));

    private static void Mix(ShopFile shop, int batch) => Done(shop, (records, act) =>
    {
        var lines = records.FormulaIngredients.Where(line => records.Batches.Any(one => one.Id == batch && one.FormulaVersionId == line.FormulaVersionId)).AsNoTracking().ToList();
        return records.MixLoad(new MixOrder(
            records.Loads.Single(load => load.BatchId == batch).Id, Weight.Zero, lines.ToDictionary(line => line.Position, _ => (Weight.FromGrams(40m), WeightUnit.Gram))), false, act);
    });

    /// <summary>Two lots of salt: one noted twice in the load, of which once wrongly; one struck out.</summary>
    private static void Lots(ShopFile shop, int batch)
    {
        var (load, salt) = shop.Do((records, _) =>
        {
            var ingredient = new Ingredient(new IngredientFacts("Salt", IngredientKind.Salt, Proportion.Zero, Proportion.Zero) { Salt = Proportion.Whole });
            records.Ingredients.Add(ingredient);
            records.SaveChanges();
            return (records.Loads.Single(one => one.BatchId == batch).Id, ingredient.Id);
        });
        int Receive(string code) => Done(shop, (records, act) =>
            records.ReceiveLot(new LotReceipt(salt, code, new DateOnly(2026, 11, 20), Weight.FromPounds(50m), 0, Proportion.Zero, Proportion.Zero), act));
        var lot = Receive("S 1");
        void Note(decimal grams) => Done(shop, (records, act) => records.NoteLot(new LotNote(load, 1, lot, Weight.FromGrams(grams), 0), act));
        Note(4m);
        Done(shop, (records, act) => records.StrikeLotUse(records.LotUses.Single().Id, "typed wrong", act));
        Note(40m);
        var wrong = Receive("S 2");
        Done(shop, (records, act) => records.StrikeLot(wrong, "the same box twice", act));
    }

    /// <summary>One box unpacked, one handed over, one here.</summary>
    private static void Box(ShopFile shop, int job, int product)
    {
        int Pack() => Done(shop, (records, act) => records.PackBox(new BoxOrder(job, [new PacksIn(product, null, 5)], Weight.FromPounds(6m), Weight.FromPounds(1m), "A 1"), act));
        var wrong = Pack();
        Done(shop, (records, act) => records.UnpackBox(wrong, "two owners' packs", act));
        var gone = Pack();
        Pack();
        Done(shop, (records, act) => records.IssueInvoice(job, DateOnly.FromDateTime(act.Now), new Dictionary<int, int>(), act));
        Done(shop, (records, act) => records.HandOver(new HandOverOrder(job, [gone], [], "Second Owner", Owing: true), act));
    }

    private static BatchReading Reading(int batch, Act act) =>
        BatchReading.OfTemperature(batch, ReadingStage.Chilling, 1, Temperature.FromFahrenheit(38), act.Now, act.Now, act.Hand.Id);

    private static int Done(ShopFile shop, Func<RecordsContext, Act, Outcome> work)
    {
        using var records = shop.Open();
        var outcome = shop.Run(records, act => work(records, act));
        return outcome.IsDone
            ? int.Parse(outcome.Result, System.Globalization.CultureInfo.InvariantCulture)
            : throw new InvalidOperationException(string.Join(' ', outcome.Findings.Select(finding => finding.Text)));
    }
}
