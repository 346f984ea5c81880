using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Seasons.Tests.Filing;
using ProcessorDesk.Seasons.Tests.Generating;
using ProcessorDesk.Trade;
using Xunit;

namespace ProcessorDesk.Seasons.Tests;

/// <summary>The made-up seasons are a shop's: its rules hold, its pages' own queries read them, and the same seed makes the same.</summary>
public sealed class GeneratorTests(SeasonFiles files) : IClassFixture<SeasonFiles>
{
    [Fact]
    public void The_same_seed_makes_the_same_file_and_another_another()
    {
        var first = FileRows.DigestOf(files.Small);

        Assert.Equal(first, FileRows.DigestOf(files.Fill("again", SeasonFiles.Seed)));
        Assert.NotEqual(first, FileRows.DigestOf(files.Fill("another", SeasonFiles.Seed + 1)));
    }

    [Fact]
    public void A_small_season_keeps_every_promise()
    {
        SeasonChecks.All(files.Small);
        using var records = RecordsFile.Open(files.Small);
        Assert.Equal(Enum.GetValues<JobStage>().Order(), records.Jobs.AsEnumerable().Select(job => job.Stage).Distinct().Order());
        Assert.Equal(SeasonSize.Small.Jobs, records.Jobs.Count());
        Assert.Equal(SeasonSize.Small.Owners, records.Owners.Count());
        Assert.Equal(SeasonSize.Small.Owners / 10, records.Jobs.GroupBy(job => job.OwnerId).Count(jobs => jobs.Count() > 30));
    }

    /// <summary>A new table is filled by the seasons too, or its pages are looked at empty.</summary>
    [Fact]
    public void No_table_is_empty()
    {
        var counts = FileRows.Counts(files.Small);
        using var records = RecordsFile.Open(files.Small);

        Assert.All(records.Model.GetEntityTypes(), entity => Assert.True(counts.GetValueOrDefault(entity.GetTableName()!) > 0, entity.ShortName()));
    }

    [Fact]
    public void What_was_written_reads_back_as_the_app_would_have_made_it()
    {
        using var records = RecordsFile.Open(files.Small);
        var division = records.Shop.Single().BenchDivision;
        var jobs = records.Jobs.Include(job => job.CutOrder).Include(job => job.Asks).AsSplitQuery().Where(job => job.HandedOverAt != null).OrderBy(job => job.Id).ToList();

        Assert.NotEmpty(jobs);
        foreach (var job in jobs.Where((_, i) => i % 10 == 0))
        {
            var lean = records.LeanOf(job.Id, division);
            var split = records.AgreedSplits.Include(one => one.Allotments).Single(one => one.JobId == job.Id && one.WithdrawnAt == null);
            Assert.Equal(split.Lean, lean);
            Assert.Equal(
                records.PlanGrind(job.Id, lean, division).Lines.Select(line => (line.Ask.Product.Id, line.Given.Lean, line.Given.Green, line.Given.FinishedLow)),
                split.Allotments.OrderBy(one => one.Position).Select(one => (one.ProductId, one.Lean, one.Green, one.FinishedLow)));
            Assert.Equal(CutMenu.Groups.Select(group => group.Code), job.CutOrder.OrderBy(line => line.Position).Select(line => line.Group));
            Assert.All(records.WeightsOf(job.Id, division).Animals, animal => Assert.True(animal.Arrival > animal.HotHanging && animal.Fraction <= Ratio.One));
            Assert.All(records.MadeOf(job.Id), product => Assert.True(product is { IsReleased: true, Finished.IsPositive: true }));
            Assert.NotNull(YieldAccounts.Kept(records.Invoices.First(invoice => invoice.JobId == job.Id).Statement));
            Assert.Equal(DateTimeKind.Utc, job.TakenAt.Kind);
        }
    }

    [Fact]
    public void What_was_released_has_the_record_its_way_of_making_needs_and_goes_back_as_the_app_shares_it()
    {
        using var records = RecordsFile.Open(files.Small);
        var division = records.Shop.Single().BenchDivision;
        var released = records.Batches.Where(batch => batch.ReleasedAt != null).OrderBy(batch => batch.Id).Select(batch => batch.Id).ToList();

        Assert.NotEmpty(released);
        foreach (var id in released.Where((_, i) => i % 10 == 0))
        {
            var batch = records.ReadBatch(id)!;
            var lines = records.LinesOf(id);
            Assert.Empty(batch.MissingFrom(lines, records.DispositionsOf(id), division));
            Assert.Equal(
                batch.SharesOf(lines, division).Select(share => (share.EntryId, share.LoadId, share.Weight)),
                records.FinishedShares.Where(share => share.Entry.BatchId == id).OrderBy(share => share.EntryId).Select(share => new { share.EntryId, share.LoadId, share.Weight }).AsEnumerable()
                    .Select(share => (share.EntryId, share.LoadId, share.Weight)));
        }
    }

    [Fact]
    public void A_row_that_points_at_nothing_is_refused()
    {
        using var rows = new SeasonRows(files.Fill("lost", SeasonFiles.Seed));
        rows.Add(new AgreedSplit(1_000_000, Weight.Zero, SeasonGenerator.Ends, 1, []));
        rows.Write();

        Assert.Throws<InvalidOperationException>(rows.Finish);
    }
}
