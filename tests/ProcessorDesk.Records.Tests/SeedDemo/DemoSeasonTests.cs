using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Trade;
using Xunit;

namespace ProcessorDesk.Records.Tests.SeedDemo;

/// <summary>The demo as a whole; what stands at each station is in the tests beside.</summary>
[Collection(DemoShelf.Name)]
public sealed class DemoSeasonTests(DemoFile demo)
{
    [Fact]
    public void There_is_a_job_at_every_station()
    {
        using var records = demo.Open();
        var stages = records.Jobs.AsEnumerable().GroupBy(job => job.Stage).ToDictionary(group => group.Key, group => group.Count());

        Assert.Equal(Enum.GetValues<JobStage>().Order(), stages.Keys.Order());
        Assert.InRange(stages.Values.Sum(), 36, 46);
    }

    [Fact]
    public void A_small_cast_comes_back_and_no_one_is_on_file_twice()
    {
        using var records = demo.Open();
        var jobs = records.Jobs.Include(job => job.Owner).AsEnumerable().CountBy(job => job.Owner.Name).ToDictionary();

        Assert.InRange(records.Owners.Count(), 18, 24);
        Assert.Equal(records.Owners.Count(), records.Owners.Select(owner => owner.Phone).Distinct().Count());
        Assert.Contains(jobs.Values, count => count >= 3);
    }

    [Fact]
    public void Jobs_of_the_season_before_keep_its_prices()
    {
        using var records = demo.Open();
        var lists = records.Jobs.OrderBy(job => job.Number).Select(job => job.PriceList.Name).ToList();

        Assert.Equal(["Last season", "Last season", "This season"], lists.Take(3));
        Assert.All(lists.Skip(3), name => Assert.Equal("This season", name));
    }

    [Fact]
    public void Everything_sums()
    {
        using var records = demo.Open();

        Assert.All(records.Shares.ToList().GroupBy(share => share.AnimalId), animal =>
            Assert.Equal(Ratio.One, animal.Aggregate(Ratio.Zero, (sum, share) => sum + share.Fraction)));
        Assert.All(records.AgreedSplits.Include(split => split.Allotments).ToList(), split =>
            Assert.Equal(split.Lean.Milligrams, split.Allotments.Sum(one => one.Lean.Milligrams)));
        Assert.All(records.Invoices.Include(invoice => invoice.Lines).ToList(), invoice =>
            Assert.Equal(invoice.Total.Cents, invoice.Lines.Sum(line => line.Amount.Cents + line.Tax.Cents)));
    }

    [Fact]
    public void Numbers_that_people_say_have_no_gaps()
    {
        using var records = demo.Open();

        Assert.Equal(Enumerable.Range(1001, records.Jobs.Count()), records.Jobs.Select(job => job.Number).Order());
        Assert.Equal(Enumerable.Range(1, records.Invoices.Count()), records.Invoices.Select(invoice => invoice.Number).Order());
        Assert.Equal(Enumerable.Range(1, records.Batches.Count()), records.Batches.Select(batch => batch.Number).Order());
        Assert.All(records.Boxes.ToList().GroupBy(box => box.JobId), job =>
            Assert.Equal(Enumerable.Range(1, job.Count()), job.Select(box => box.Number).Order()));
    }

    [Fact]
    public void The_journal_holds_together_and_nothing_is_in_the_future()
    {
        using var records = demo.Open();
        var now = demo.Now.UtcDateTime;

        Assert.Null(records.FirstBroken());
        Assert.True(records.Journal.Max(entry => entry.At) <= now);
        Assert.True(records.WeighIns.Max(weighIn => weighIn.At) <= now);
        Assert.True(records.BatchReadings.Max(reading => reading.TakenAt) <= now);
        Assert.Empty(records.BatchReadings.Where(reading => reading.TakenAt > reading.At));
    }

    [Fact]
    public void Filling_again_changes_nothing()
    {
        using var records = demo.Open();
        var before = (records.Jobs.Count(), records.Journal.Count());

        demo.Fill();

        Assert.Equal(before, (records.Jobs.Count(), records.Journal.Count()));
    }

    /// <summary>The shop's clock is six hours behind; on 1 November 2026 it was put back in the night.</summary>
    [Theory]
    [InlineData(6, 30)]
    [InlineData(15, 1)]
    [InlineData(23, 59)]
    public void The_season_can_end_at_any_hour(int hour, int minute)
    {
        using var late = new DemoFile(new DateTimeOffset(2026, 11, 1, hour, minute, 0, TimeSpan.Zero));
        using var records = late.Open();

        Assert.InRange(records.Jobs.Count(), 36, 46);
        Assert.True(records.Journal.Max(entry => entry.At) <= late.Now.UtcDateTime);
        var zone = TimeZoneInfo.FindSystemTimeZoneById("America/Chicago");
        Assert.All(records.Journal.Select(entry => entry.At).ToList(), at =>
            Assert.InRange(TimeZoneInfo.ConvertTimeFromUtc(at, zone).TimeOfDay, TimeSpan.FromHours(7), TimeSpan.FromHours(17)));
        Assert.Contains(
            records.Batches.Where(batch => batch.ReleasedAt == null && batch.MixedAt != null).Select(batch => new { batch.MixedAt, batch.FormulaVersion.RestMinutes }).ToList(),
            batch => batch.MixedAt!.Value.AddMinutes(batch.RestMinutes) > late.Now.UtcDateTime);
    }
}
