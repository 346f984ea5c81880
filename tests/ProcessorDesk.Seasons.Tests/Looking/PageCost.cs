using Microsoft.Data.Sqlite;
using ProcessorDesk.Records;

namespace ProcessorDesk.Seasons.Tests.Looking;

/// <summary>What a page costs at its dearest address.</summary>
/// <param name="Median">Of the server's own time, over several loads.</param>
/// <param name="Steps">Of the engine, over all its queries.</param>
internal sealed record PageCost(string Page, string Address, int Queries, TimeSpan Median, long Steps)
{
    private const int Times = 7;

    /// <summary>Steps that mean nothing: a few hundred rows more or less.</summary>
    public const long SmallChange = 20_000;

    public static async Task<IReadOnlyList<PageCost>> Of(SeasonUnderTest shop)
    {
        using var connection = new SqliteConnection(RecordsFile.ConnectionString(shop.DatabasePath));
        connection.Open();
        using var desk = await shop.ComeIn(StaffRole.Manager);
        var costs = new List<PageCost>();
        foreach (var address in PageWalk.Addresses(shop))
        {
            shop.Loads.Take();
            for (var i = 0; i <= Times; i++)
                await desk.Client.GetAsync(address);
            // The first load warms up; of an address that leads on, each page counts for itself.
            costs.AddRange(shop.Loads.Take().GroupBy(load => load.Address).Select(loads => new PageCost(
                loads.First().Page,
                loads.Key,
                loads.Max(load => load.Queries.Count),
                loads.Skip(1).Select(load => load.Took).Order().ElementAt(Times / 2),
                loads.Last().Queries.Sum(query => QueryWork.StepsOf(query, connection)))));
        }

        return [.. costs.GroupBy(cost => cost.Page).Select(page => page.MaxBy(cost => cost.Steps)!).OrderBy(cost => cost.Page, StringComparer.Ordinal)];
    }
}
