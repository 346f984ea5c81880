using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Records.Tests.Plans;
using ProcessorDesk.Seasons.Tests.Looking;
using Xunit;
using Xunit.Abstractions;

namespace ProcessorDesk.Seasons.Tests;

/// <summary>Ten seasons: a hundred thousand jobs, a million weigh-ins. What holds on a small season holds here, and no page works harder than after one.</summary>
[Trait("Tier", "Long")]
public sealed class TenSeasonsTests(OneSeason one, TenSeasons ten, ITestOutputHelper output) : IClassFixture<OneSeason>, IClassFixture<TenSeasons>
{
    /// <summary>Generous: two minutes are wanted, on two cores with nothing else to do.</summary>
    private static readonly TimeSpan s_longestFill = TimeSpan.FromMinutes(10);

    /// <summary>Generous too: what a page may take on a busy machine.</summary>
    private static readonly TimeSpan s_longestPage = TimeSpan.FromSeconds(2);

    [Fact]
    public void Ten_seasons_are_written_in_good_time_and_keep_every_promise()
    {
        output.WriteLine($"One season was written in {one.FillTook.TotalSeconds:0.0} s, {new FileInfo(one.DatabasePath).Length / 1_000_000} MB.");
        output.WriteLine($"Ten seasons were written in {ten.FillTook.TotalSeconds:0.0} s, {new FileInfo(ten.DatabasePath).Length / 1_000_000} MB.");

        SeasonChecks.All(ten.DatabasePath);
        using var records = RecordsFile.Open(ten.DatabasePath);
        Assert.Equal(100_000, records.Jobs.Count());
        Assert.InRange(records.WeighIns.Count(), 1_000_000, 1_400_000);
        Assert.Equal(20_000, records.Owners.Count());
        Assert.Equal(2_000, records.Jobs.GroupBy(job => job.OwnerId).Count(jobs => jobs.Count() > 30));
        Assert.InRange(records.Jobs.Count(job => job.HandedOverAt == null), 100, 500);
        Assert.InRange(ten.FillTook, TimeSpan.Zero, s_longestFill);
    }

    [Fact]
    public async Task No_page_reads_a_whole_table_that_grows() =>
        Expect.None(QueryFindings.Scans(ten.DatabasePath, await ten.Walk()));

    [Fact]
    public async Task No_page_asks_more_than_six_times() =>
        Expect.None(QueryFindings.TooMany(await ten.Walk()));

    /// <summary>An index of what is open may be read from end to end, so it must be short.</summary>
    [Fact]
    public void An_index_of_what_is_open_stays_short()
    {
        using var connection = new SqliteConnection(RecordsFile.ConnectionString(ten.DatabasePath));
        connection.Open();
        foreach (var (index, table, filter) in PartialIndexes(connection).Where(index => FileTables.Short.Contains(index.Index)))
        {
            using var command = connection.CreateCommand();
            command.CommandText = $"SELECT COUNT(*) FROM \"{table}\" INDEXED BY \"{index}\" WHERE {filter}";
            var rows = (long)command.ExecuteScalar()!;
            output.WriteLine($"{index}: {rows}");
            Assert.InRange(rows, 0, 2_000);
        }
    }

    [Fact]
    public async Task A_page_works_no_harder_after_ten_seasons_than_after_one()
    {
        var after = (await PageCost.Of(one), await PageCost.Of(ten));
        output.WriteLine($"{"page",-20} {"queries",7} {"ms after 1",10} {"after 10",8} {"steps after 1",13} {"after 10",10}");
        var faults = new List<(string, string)>();
        foreach (var (page, (first, last)) in after.Item1.Join(after.Item2, cost => cost.Page, cost => cost.Page, (first, last) => (first, last)).Select(pair => (pair.first.Page, pair)))
        {
            output.WriteLine($"{page,-20} {last.Queries,7} {first.Median.TotalMilliseconds,10:0.0} {last.Median.TotalMilliseconds,8:0.0} {first.Steps,13} {last.Steps,10}");
            if (last.Steps > 2 * first.Steps + PageCost.SmallChange)
                faults.Add((page, $"{first.Steps} steps after one season, {last.Steps} after ten: {last.Address}"));
            if (last.Median > s_longestPage)
                faults.Add((page, $"takes {last.Median.TotalMilliseconds:0} ms"));
        }

        Expect.None(faults);
    }

    private static IEnumerable<(string Index, string Table, string Filter)> PartialIndexes(SqliteConnection connection)
    {
        using var command = connection.CreateCommand();
        command.CommandText = "SELECT name, tbl_name, substr(sql, instr(sql, ' WHERE ') + 7) FROM sqlite_master WHERE type = 'index' AND sql LIKE '% WHERE %'";
        using var reader = command.ExecuteReader();
        while (reader.Read())
            yield return (reader.GetString(0), reader.GetString(1), reader.GetString(2));
    }
}
