using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Process;
using Xunit;

namespace ProcessorDesk.Records.Tests.SeedDemo;

/// <summary>The batches of the demo.</summary>
[Collection(DemoShelf.Name)]
public sealed class DemoKitchenTests(DemoFile demo)
{
    [Fact]
    public void Every_product_was_made_and_released()
    {
        using var records = demo.Open();

        Assert.Equal(records.Products.Select(product => product.Name).Order(), records.Batches.Where(batch => batch.ReleasedAt != null).Select(batch => batch.Product.Name).Distinct().Order());
    }

    [Fact]
    public void There_is_a_batch_at_every_step_on_the_way()
    {
        using var records = demo.Open();
        var open = Open(records);
        var now = demo.Now.UtcDateTime;

        Assert.True(open.Count(batch => batch.Loads.All(load => load.Draws.Count == 0)) >= 2);
        Assert.Contains(open, batch => batch.Loads.Any(load => load.MixedAt != null) && batch.Loads.Any(load => load.MixedAt == null && load.Draws.Count > 0));
        var resting = open.Where(batch => batch.MixedAt is not null && Steps(records, batch).SequenceEqual([BatchStepKind.RestStarted])).ToList();
        Assert.Contains(resting, batch => batch.MixedAt!.Value.AddMinutes(batch.FormulaVersion.RestMinutes) > now);
        Assert.Contains(resting, batch => batch.MixedAt!.Value.AddMinutes(batch.FormulaVersion.RestMinutes) < now);
        Assert.Contains(open, batch => batch.Pooling == Pooling.Pooled && batch.Entries.Count == 3 && Steps(records, batch).Last() == BatchStepKind.HeatStarted);
        Assert.Contains(open, batch => Steps(records, batch).Last() == BatchStepKind.Packed && !records.Holds.Standing().Any(hold => hold.BatchId == batch.Id));
    }

    [Fact]
    public void Allotments_wait_own_pooled_and_held()
    {
        using var records = demo.Open();
        var waiting = records.GrindAllotments
            .Where(one => !records.BatchEntries.Any(entry => entry.AllotmentId == one.Id && entry.LeftAt == null))
            .Join(records.AgreedSplits, one => one.AgreedSplitId, split => split.Id, (one, split) => new { one.ProductId, split.JobId })
            .Join(records.Jobs, one => one.JobId, job => job.Id, (one, job) => new { one.ProductId, Job = job })
            .ToList();
        bool Held(int jobId) => records.Stopping(jobId, HeldAct.Batch).Count > 0;

        Assert.Contains(waiting, one => one.Job.Pooling == Pooling.Own && !Held(one.Job.Id));
        Assert.Contains(waiting.Where(one => one.Job.Pooling == Pooling.Pooled).GroupBy(one => one.ProductId), product => product.Select(one => one.Job.OwnerId).Distinct().Count() > 1);
        Assert.Contains(waiting, one => Held(one.Job.Id));
    }

    [Fact]
    public void One_batch_is_held_by_its_record_and_one_by_a_wrong_lug_whose_owner_is_touched()
    {
        using var records = demo.Open();
        var held = records.Holds.Standing().Where(hold => hold.BatchId != null).OrderBy(hold => hold.Reason).Select(hold => new { hold.Reason, Id = hold.BatchId!.Value }).ToList();

        Assert.Equal([HoldReason.WrongMeatIn, HoldReason.RecordIncomplete], held.Select(hold => hold.Reason));
        Assert.Equal(2, records.TouchedBy(held[0].Id).Select(job => job.OwnerId).Distinct().Count());
        Assert.Equal(ProcessVerdict.NotShown, Cooking(records, held[1].Id).Verdict);
    }

    /// <summary>120 ppm nitrite in comminuted product kept cold, at least, and 156 at most: 9 CFR 424.21(c).</summary>
    [Fact]
    public void Every_cured_load_lies_inside_the_limit_as_weighed()
    {
        using var records = demo.Open();
        var loads = records.Loads.Include(load => load.Draws).Include(load => load.Ingredients)
            .Where(load => load.MixedAt != null && load.Batch.Product.Cured).AsSplitQuery().ToList();

        Assert.NotEmpty(loads);
        Assert.All(loads, load =>
        {
            var nitrite = load.Ingredients.Sum(line => line.Weighed.Milligrams * 0.0625m * (line.HoldsCure ? 1 : 0));
            Assert.InRange(nitrite * 1_000_000m / load.WeighedBlock.Milligrams, 120m, 156.25m);
        });
    }

    [Fact]
    public void Every_released_batch_has_its_record_and_its_shares_sum_to_what_was_weighed()
    {
        using var records = demo.Open();
        var released = records.Batches.Include(batch => batch.Product).Include(batch => batch.Rules).Include(batch => batch.Loads).ThenInclude(load => load.Draws)
            .Include(batch => batch.Loads).ThenInclude(load => load.Ingredients).Include(batch => batch.Entries)
            .Where(batch => batch.ReleasedAt != null).AsSplitQuery().ToList();

        Assert.All(released, batch =>
        {
            Assert.Empty(batch.MissingFrom(records.LinesOf(batch.Id), records.DispositionsOf(batch.Id), ScaleDivision.HundredthPound));
            var entries = batch.Entries.Select(entry => entry.Id).ToList();
            Assert.Equal(
                records.WeighIns.Where(one => one.BatchId == batch.Id && one.Kind == WeighInKind.FinishedProduct).AsEnumerable().Sum(one => one.Net.Milligrams),
                records.FinishedShares.Where(share => entries.Contains(share.EntryId)).AsEnumerable().Sum(share => share.Weight.Milligrams));
            if (batch.Product.ProcessKind is ProcessKind.Smoked or ProcessKind.Cooked && records.DispositionsOf(batch.Id).All(one => one.Kind != DispositionKind.ExpertsLetter))
            {
                Assert.Equal(ProcessVerdict.Meets, Cooking(records, batch.Id).Verdict);
                Assert.Equal(ProcessVerdict.Meets, Cooking(records, batch.Id).ComeUp.Verdict);
                Assert.Equal(ProcessVerdict.Meets, Cooling.Check(CoolingOptions.One, Readings(records, batch.Id, ReadingStage.Chilling)).Verdict);
            }
        });
    }

    [Fact]
    public void One_batch_was_released_by_an_experts_letter_and_goes_back_in_whole_pieces()
    {
        using var records = demo.Open();
        var letter = Assert.Single(records.Dispositions.Where(one => one.Kind == DispositionKind.ExpertsLetter));

        Assert.NotEqual(ProcessVerdict.Meets, Cooking(records, letter.BatchId).Verdict);
        Assert.NotNull(records.Batches.Single(batch => batch.Id == letter.BatchId).ReleasedAt);
        Assert.Equal(
            records.WeighIns.Where(one => one.BatchId == letter.BatchId && one.Kind == WeighInKind.FinishedProduct).Sum(one => one.Packs),
            records.FinishedShares.Where(share => share.Entry.BatchId == letter.BatchId).Sum(share => share.Pieces));
        Assert.True(records.FinishedShares.Where(share => share.Entry.BatchId == letter.BatchId).All(share => share.Pieces > 0));
    }

    private static List<Batch> Open(RecordsContext records) =>
        [.. records.Batches.Include(batch => batch.FormulaVersion).Include(batch => batch.Entries).Include(batch => batch.Loads).ThenInclude(load => load.Draws)
            .Where(batch => batch.ReleasedAt == null && batch.EndedAt == null).AsSplitQuery()];

    private static List<BatchStepKind> Steps(RecordsContext records, Batch batch) =>
        [.. records.BatchSteps.Where(step => step.BatchId == batch.Id && step.UndoneAt == null).OrderBy(step => step.At).ThenBy(step => step.Id).Select(step => step.Kind)
            .AsEnumerable().DefaultIfEmpty()];

    private static LethalityCheck Cooking(RecordsContext records, int batchId) =>
        Lethality.Check(LethalityKind.Meat65Log, Readings(records, batchId, ReadingStage.Cooking));

    private static List<ProcessReading> Readings(RecordsContext records, int batchId, ReadingStage stage) =>
        [.. records.BatchReadings.Where(one => one.BatchId == batchId && one.Stage == stage).AsEnumerable().Select(one => new ProcessReading(one.TakenAt, one.Probe, one.Temperature!.Value))];
}
