using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records.Tests.Cast;
using ProcessorDesk.Trade;
using Xunit;

namespace ProcessorDesk.Records.Tests.Weighing;

public sealed class WeighInTests(ShopFile shop) : IClassFixture<ShopFile>
{
    [Fact]
    public void Net_is_gross_less_tare() => shop.Do((records, act) =>
    {
        var job = Sample.Job(records, act);
        var weighIn = Sample.Lean(records, Sample.Lug(records, job, Sample.Deer(records, job, act), act), 22.75m, act);

        Assert.Equal(Weight.FromPounds(22.75m) - Weight.FromPounds(2.5m), weighIn.Net);
        Assert.Equal(job.Id, weighIn.JobId);
        return weighIn;
    });

    [Fact]
    public void Net_may_be_zero_but_never_less()
    {
        var two = Weight.FromPounds(2m);

        Assert.Equal(Weight.Zero, OfJob(two, two).Net);
        Assert.Throws<ArgumentOutOfRangeException>(() => OfJob(two - Weight.FromMilligrams(1), two));
        Assert.Throws<ArgumentOutOfRangeException>(() => OfJob(two, Weight.Zero - two));
    }

    [Fact]
    public void A_strike_takes_a_reason_and_only_one_stands()
    {
        var weighIn = OfJob(Weight.FromPounds(2m), Weight.Zero);

        Assert.Equal("Because", weighIn.StrikeOut("  ", shop.Now, 1)!.Field);
        Assert.Null(weighIn.Strike);
        Assert.Null(weighIn.StrikeOut(" wrong lug ", shop.Now, 1));
        Assert.Contains("before", weighIn.StrikeOut("again", shop.Now, 2)!.Text, StringComparison.Ordinal);
        Assert.Equal(("wrong lug", 1), (weighIn.Strike!.Because, weighIn.Strike.ById));
    }

    [Fact]
    public void The_file_takes_one_strike_for_a_weight_though_the_first_was_not_loaded()
    {
        var id = shop.Do((records, act) =>
        {
            var weighIn = OfJob(Weight.FromPounds(2m), Weight.Zero, Sample.Job(records, act).Id);
            records.WeighIns.Add(weighIn);
            weighIn.StrikeOut("wrong", act.Now, act.Hand.Id);
            records.SaveChanges();
            return weighIn.Id;
        });

        Assert.Throws<DbUpdateException>(() => shop.Do((records, act) =>
            records.WeighIns.Single(one => one.Id == id).StrikeOut("wrong again", act.Now, act.Hand.Id)));

        Assert.Equal(["wrong"], shop.Column($"SELECT Because FROM Strikes WHERE WeighInId = {id}"));
    }

    [Fact]
    public void Struck_weights_and_other_kinds_stay_out_of_the_lean()
    {
        var jobId = shop.Do((records, act) =>
        {
            var job = Sample.Job(records, act);
            var deer = Sample.Deer(records, job, act);
            Sample.Lean(records, Sample.Lug(records, job, deer, act), 22.51m, act);
            Sample.Lean(records, Sample.Lug(records, job, deer, act), 12.51m, act);
            Sample.Lean(records, Sample.Lug(records, job, deer, act), 99m, act).StrikeOut("wrong job", act.Now, act.Hand.Id);
            records.WeighIns.Add(WeighIn.OfJob(WeighInKind.FatTrim, job.Id, null, Weight.FromPounds(3m), Weight.Zero, Sample.Bench, act.Now, act.Hand.Id));
            return job;
        }).Id;
        using var records = shop.Open();

        Assert.Equal("30.02 lb", ScaleDivision.HundredthPound.Print(records.LeanOf(jobId, ScaleDivision.HundredthPound)));
        Assert.Equal(3, records.WeighIns.Standing().Count(one => one.JobId == jobId));
        Assert.Equal(4, records.WeighIns.Count(one => one.JobId == jobId));
    }

    [Fact]
    public void The_lean_of_a_job_without_any_is_zero()
    {
        using var records = shop.Open();

        Assert.Equal(Weight.Zero, records.LeanOf(999_999, ScaleDivision.HundredthPound));
    }

    private WeighIn OfJob(Weight gross, Weight tare, int jobId = 1) =>
        WeighIn.OfJob(WeighInKind.LeanTrim, jobId, null, gross, tare, Sample.Bench, shop.Now, 1);
}
