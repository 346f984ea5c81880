using ProcessorDesk.Records.Tests.Cast;
using Xunit;

namespace ProcessorDesk.Records.Tests.Animals;

public sealed class HoldTests(ShopFile shop) : IClassFixture<ShopFile>
{
    [Fact]
    public void A_hold_on_an_animal_stops_every_job_with_meat_in_it_and_no_other()
    {
        var (held, other) = shop.Do((records, act) =>
        {
            var job = Sample.Job(records, act);
            Sample.Deer(records, job, act, "WT-7 1").PutOnHold(HoldReason.MissingTag, null, act.Now, act.Hand.Id);
            var free = Sample.Job(records, act);
            Sample.Deer(records, free, act);
            return (job.Id, free.Id);
        });
        using var records = shop.Open();

        var finding = Assert.Single(records.Stopping(held, HeldAct.Cut));
        Assert.Contains("WT-7 1", finding.Text, StringComparison.Ordinal);
        Assert.Contains(Wording.Of(HoldReason.MissingTag), finding.Text, StringComparison.Ordinal);
        Assert.Single(records.Stopping(held, HeldAct.HandOver));
        Assert.Empty(records.Stopping(held, HeldAct.SendToLaboratory));
        Assert.Empty(records.Stopping(other, HeldAct.Cut));
    }

    [Fact]
    public void A_hold_on_a_job_stops_it_and_leaves_its_animal_alone()
    {
        var (jobId, animalId) = shop.Do((records, act) =>
        {
            var job = Sample.Job(records, act);
            var deer = Sample.Deer(records, job, act);
            records.Holds.Add(Hold.OnJob(job, HoldReason.WrongMeatIn, "two lugs mixed", act.Now, act.Hand.Id));
            return (job.Id, deer.Id);
        });
        using var records = shop.Open();

        Assert.Single(records.Stopping(jobId, HeldAct.Grind));
        Assert.Empty(records.Stopping(jobId, HeldAct.Cut));
        Assert.Empty(records.StoppingAnimal(animalId, HeldAct.Grind));
    }

    [Fact]
    public void A_released_hold_stops_nothing_and_stays_to_be_seen()
    {
        var (jobId, animalId, holdId) = shop.Do((records, act) =>
        {
            var job = Sample.Job(records, act);
            var deer = Sample.Deer(records, job, act);
            var hold = deer.PutOnHold(HoldReason.DiseaseTest, null, act.Now, act.Hand.Id);
            records.SaveChanges();
            return (job.Id, deer.Id, hold.Id);
        });
        using (var before = shop.Open())
            Assert.Single(before.StoppingAnimal(animalId, HeldAct.Cut));

        shop.Do((records, act) =>
        {
            records.Holds.Single(hold => hold.Id == holdId).Release(act.Now, act.Hand.Id, " not detected ");
            return holdId;
        });

        using var records = shop.Open();
        Assert.Empty(records.Stopping(jobId, HeldAct.Cut));
        var kept = records.Holds.Single(hold => hold.Id == holdId);
        Assert.Equal((shop.Manager.StaffId, "not detected"), (kept.ReleasedById, kept.ReleasedBecause));
        Assert.Throws<InvalidOperationException>(() => kept.Release(shop.Now, 1, "again"));
    }

    [Fact]
    public void A_hold_is_not_released_without_a_reason() => shop.Do((records, act) =>
    {
        var hold = Sample.Deer(records, Sample.Job(records, act), act).PutOnHold(HoldReason.Other, null, act.Now, act.Hand.Id);

        Assert.Throws<ArgumentException>(() => hold.Release(act.Now, act.Hand.Id, "  "));
        Assert.Null(hold.ReleasedAt);
        return hold;
    });

    [Fact]
    public void A_rule_that_the_shop_tightened_stops_the_act()
    {
        var jobId = shop.Do((records, act) =>
        {
            var job = Sample.Job(records, act);
            records.Holds.Add(Hold.OnJob(job, HoldReason.RecordIncomplete, null, act.Now, act.Hand.Id));
            return job;
        }).Id;
        using var records = shop.Open();
        Assert.Empty(records.Stopping(jobId, HeldAct.Grind));

        Rule(rule => rule.Tighten());
        Assert.Single(records.Stopping(jobId, HeldAct.Grind));

        Rule(rule => rule.Reset());
        Assert.Empty(records.Stopping(jobId, HeldAct.Grind));
    }

    private void Rule(Action<HoldRule> change) => shop.Do((records, _) =>
    {
        var rule = records.HoldRules.Single(one => one.Reason == HoldReason.RecordIncomplete && one.Act == HeldAct.Grind);
        change(rule);
        return rule;
    });
}
