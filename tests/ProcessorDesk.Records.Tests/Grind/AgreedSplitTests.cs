using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records.Tests.Cast;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Grinding;
using Xunit;

namespace ProcessorDesk.Records.Tests.Grind;

public sealed class AgreedSplitTests(ShopFile shop) : IClassFixture<ShopFile>
{
    [Theory]
    [InlineData("10", "10.01")]
    [InlineData("10", "9.99")]
    [InlineData("10", "0")]
    public void Allotments_that_do_not_sum_to_the_lean_are_not_agreed(string lean, string allotted) => Assert.Throws<ArgumentException>(() =>
        new AgreedSplit(1, Pounds(lean), shop.Now, 1, [Given(Pounds(allotted))]));

    [Fact]
    public void An_agreed_split_is_kept_with_its_figures_and_its_reasons()
    {
        var jobId = shop.Do((records, act) =>
        {
            var job = Sample.Job(records, act);
            records.AgreedSplits.Add(new AgreedSplit(job.Id, Pounds("10"), act.Now, act.Hand.Id, [Given(Pounds("10"), "The trim ran out.", "Rounded down.")]));
            return job;
        }).Id;
        using var records = shop.Open();

        var kept = records.AgreedSplits.Include(split => split.Allotments).Single(split => split.JobId == jobId);

        var one = Assert.Single(kept.Allotments);
        Assert.Equal((Pounds("10"), Pounds("2.5"), Pounds("12.5")), (one.Lean, one.AddedFat, one.MeatBlock));
        Assert.Equal("The trim ran out.\nRounded down.", one.Reasons);
    }

    [Fact]
    public void At_most_one_split_stands_for_a_job()
    {
        var job = shop.Do(NewJob);
        shop.Do((records, act) => Agree(records, job, act));

        Assert.Throws<DbUpdateException>(() => shop.Do((records, act) => Agree(records, job, act)));

        shop.Do((records, act) =>
        {
            records.AgreedSplits.Single(split => split.JobId == job && split.WithdrawnAt == null).Withdraw(act.Now, act.Hand.Id, "the owner called");
            return job;
        });
        shop.Do((records, act) => Agree(records, job, act));
        Assert.Equal(["2"], shop.Column($"SELECT COUNT(*) FROM AgreedSplits WHERE JobId = {job}"));
    }

    [Fact]
    public void A_split_is_withdrawn_once_and_with_a_reason()
    {
        var split = new AgreedSplit(1, Pounds("1"), shop.Now, 1, [Given(Pounds("1"))]);

        Assert.Throws<ArgumentException>(() => split.Withdraw(shop.Now, 1, " "));
        split.Withdraw(shop.Now, 1, "the owner called");
        Assert.Throws<InvalidOperationException>(() => split.Withdraw(shop.Now, 1, "again"));
    }

    private static int NewJob(RecordsContext records, Act act) => Sample.Job(records, act).Id;

    private static int Agree(RecordsContext records, int jobId, Act act)
    {
        records.AgreedSplits.Add(new AgreedSplit(jobId, Pounds("10"), act.Now, act.Hand.Id, [Given(Pounds("10"))]));
        return jobId;
    }

    private static Weight Pounds(string pounds) =>
        Weight.FromPounds(decimal.Parse(pounds, System.Globalization.CultureInfo.InvariantCulture));

    /// <summary>Plain ground is product 1 with formula 1 in every shop.</summary>
    private static GrindAllotment Given(Weight lean, params string[] reasons) => new(1, 1, 1, new Allotment(
        GrindAsk.OfRest("Sticks", GrindBlend.Plain), lean, Pounds("2.5"), lean + Pounds("2.5"), lean, lean, lean, lean, reasons));
}
