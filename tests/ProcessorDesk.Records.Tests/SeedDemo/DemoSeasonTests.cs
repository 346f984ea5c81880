using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Trade;
using Xunit;

namespace ProcessorDesk.Records.Tests.SeedDemo;

public sealed class DemoSeasonTests(DemoFile demo) : IClassFixture<DemoFile>
{
    [Fact]
    public void There_is_a_job_at_every_station()
    {
        using var records = demo.Open();
        var stages = records.Jobs.AsEnumerable().GroupBy(job => job.Stage).ToDictionary(group => group.Key, group => group.Count());

        Assert.Equal(
            Enum.GetValues<JobStage>().Order(),
            stages.Keys.Order());
        Assert.InRange(stages.Values.Sum(), 12, 24);
    }

    [Fact]
    public void Animals_are_pooled_for_one_owner_and_shared_by_several()
    {
        using var records = demo.Open();
        var shares = records.Shares.Include(share => share.Animal).ToList();

        Assert.Contains(shares.GroupBy(share => share.JobId), job => job.Count() == 2);
        Assert.Contains(shares.GroupBy(share => share.Animal), animal => animal.Key.Species == Species.Hog && animal.Count() == 2);
        Assert.Contains(shares.GroupBy(share => share.Animal), animal => animal.Key.Species == Species.Beef && animal.Count() == 3);
        Assert.All(shares.GroupBy(share => share.AnimalId), animal =>
            Assert.Equal(Ratio.One, animal.Aggregate(Ratio.Zero, (sum, share) => sum + share.Fraction)));
    }

    [Fact]
    public void Something_waits_for_a_test_something_for_its_tag_and_neither_is_cut()
    {
        using var records = demo.Open();
        var held = records.Holds.Where(hold => hold.ReleasedAt == null)
            .Select(hold => new { hold.Reason, Cut = records.Jobs.Any(job => job.CuttingStartedAt != null && job.Shares.Any(share => share.AnimalId == hold.AnimalId)) })
            .ToList();

        Assert.Equal([HoldReason.DiseaseTest, HoldReason.MissingTag], held.Select(hold => hold.Reason).Order());
        Assert.DoesNotContain(held, hold => hold.Cut);
    }

    [Fact]
    public void A_struck_weight_a_credit_a_balance_and_a_part_to_fetch_are_there()
    {
        using var records = demo.Open();

        Assert.Single(records.Strikes);
        Assert.Single(records.Invoices, invoice => invoice.CreditsInvoiceId != null);
        Assert.Contains(records.Jobs.Select(job => job.Id).ToList(), job => records.BalanceOf(job) > Money.Zero);
        Assert.Contains(records.Parts, part => part.GivenAt == null);
        Assert.Contains(records.Parts, part => part.GivenAt != null);
        Assert.Contains(records.Jobs, job => job.NoPork);
        Assert.Contains(records.Jobs, job => job.Pooling == Pooling.Pooled);
    }

    [Fact]
    public void One_owner_asked_for_more_than_the_trim_bears()
    {
        using var records = demo.Open();
        var waiting = records.Jobs.Where(job => job.CuttingDoneAt != null && job.SplitAgreedAt == null).Select(job => job.Id).ToList();
        var division = ScaleDivision.HundredthPound;

        Assert.Contains(waiting, job => records.PlanGrind(job, records.LeanOf(job, division), division).Split.Allotments.Any(given => given.Reasons.Count > 0));
    }

    [Fact]
    public void Everything_sums()
    {
        using var records = demo.Open();

        Assert.All(records.AgreedSplits.Include(split => split.Allotments).ToList(), split =>
            Assert.Equal(split.Lean.Milligrams, split.Allotments.Sum(one => one.Lean.Milligrams)));
        Assert.All(records.Invoices.Include(invoice => invoice.Lines).ToList(), invoice =>
            Assert.Equal(invoice.Total.Cents, invoice.Lines.Sum(line => line.Amount.Cents + line.Tax.Cents)));
        Assert.Equal(
            Enumerable.Range(1, records.Invoices.Count()),
            records.Invoices.Select(invoice => invoice.Number).OrderBy(number => number));
    }

    [Fact]
    public void Every_formula_keeps_its_cure_inside_the_limit()
    {
        using var records = demo.Open();
        var formulas = records.FormulaVersions.Include(formula => formula.Product).Include(formula => formula.Ingredients).ToList();

        Assert.Contains(formulas, formula => formula.HasCure);
        Assert.All(formulas, formula => Assert.Empty(formula.ToTrade().Check()));
    }

    [Fact]
    public void The_journal_holds_together_and_nothing_is_in_the_future()
    {
        using var records = demo.Open();

        Assert.Null(records.FirstBroken());
        Assert.True(records.Journal.Max(entry => entry.At) <= demo.Now.UtcDateTime);
        Assert.True(records.WeighIns.Max(weighIn => weighIn.At) <= demo.Now.UtcDateTime);
    }

    [Fact]
    public void No_lug_still_holds_the_meat_of_a_job_that_left()
    {
        using var records = demo.Open();

        Assert.NotEmpty(records.Fillings.Where(filling => filling.Job.HandedOverAt != null));
        Assert.Empty(records.Fillings.Open().Where(filling => filling.Job.HandedOverAt != null));
    }

    [Fact]
    public void Filling_again_changes_nothing()
    {
        using var records = demo.Open();
        var before = (records.Jobs.Count(), records.Journal.Count());

        demo.Fill();

        Assert.Equal(before, (records.Jobs.Count(), records.Journal.Count()));
    }

    [Theory]
    [InlineData(0, 1)]
    [InlineData(6, 30)]
    [InlineData(14, 0)]
    [InlineData(23, 59)]
    public void The_season_can_end_at_any_hour(int hour, int minute)
    {
        using var late = new DemoFile(new DateTimeOffset(2026, 11, 1, hour, minute, 0, TimeSpan.Zero));
        using var records = late.Open();

        Assert.True(records.Journal.Max(entry => entry.At) <= late.Now.UtcDateTime);
        Assert.Equal(19, records.Jobs.Count());
        var zone = TimeZoneInfo.FindSystemTimeZoneById("America/Chicago");
        Assert.All(records.Journal.Select(entry => entry.At).ToList(), at =>
            Assert.InRange(TimeZoneInfo.ConvertTimeFromUtc(at, zone).TimeOfDay, TimeSpan.FromHours(7), TimeSpan.FromHours(17)));
    }
}
