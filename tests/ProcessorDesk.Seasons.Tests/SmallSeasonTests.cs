using ProcessorDesk.Seasons.Tests.Looking;
using Xunit;

namespace ProcessorDesk.Seasons.Tests;

/// <summary>
/// Every page of the app in each of its states, for every role, over a small season: SQLite plans a query without statistics the
/// same over a few hundred jobs as over a hundred thousand.
/// </summary>
public sealed class SmallSeasonTests(SmallSeason shop) : IClassFixture<SmallSeason>
{
    [Fact]
    public async Task No_page_reads_a_whole_table_that_grows()
    {
        var scans = QueryFindings.Scans(shop.DatabasePath, await shop.Walk());

        Expect.None(scans);
    }

    [Fact]
    public async Task No_page_asks_more_than_six_times()
    {
        var tooMany = QueryFindings.TooMany(await shop.Walk());

        Expect.None(tooMany);
    }

    [Fact]
    public async Task No_page_fails() => Assert.Empty((await shop.Walk()).Where(load => load.Status >= 500).Select(load => load.Address));

    [Fact]
    public async Task Every_page_was_opened_and_answered()
    {
        var answered = (await shop.Walk()).Where(load => load.Status < 400).Select(load => load.Page).ToHashSet();

        Assert.Empty(PageWalk.Pages(shop).Except(answered));
    }
}
