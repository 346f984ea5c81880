using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records.Tests.Cast;
using Xunit;

namespace ProcessorDesk.Records.Tests.Keeping;

public sealed class PragmasTests(ShopFile shop) : IClassFixture<ShopFile>
{
    private static readonly string[] _expected = ["wal", "2", "1", "5000", "1"];

    [Fact]
    public void A_first_connection_is_told_everything()
    {
        using var records = shop.Open();

        Assert.Equal(_expected, Read(records));
    }

    [Fact]
    public void A_connection_out_of_the_pool_is_told_everything_again()
    {
        using (var spoilt = shop.Open())
        {
            spoilt.Database.OpenConnection();
            spoilt.Database.ExecuteSqlRaw("PRAGMA synchronous = OFF; PRAGMA foreign_keys = OFF; PRAGMA recursive_triggers = OFF");
        }

        using var records = shop.Open();

        Assert.Equal(_expected, Read(records));
    }

    [Fact]
    public void A_connection_closed_and_opened_again_is_told_everything()
    {
        using var records = shop.Open();
        records.Database.OpenConnection();
        records.Database.ExecuteSqlRaw("PRAGMA synchronous = OFF");
        records.Database.CloseConnection();

        Assert.Equal(_expected, Read(records));
    }

    [Fact]
    public async Task A_connection_opened_asynchronously_is_told_everything()
    {
        await using var records = shop.Open();
        await records.Database.OpenConnectionAsync();

        Assert.Equal(_expected, Read(records));
    }

    [Fact]
    public void Connections_open_at_the_same_time_are_told_each()
    {
        var open = Enumerable.Range(0, 5).Select(_ => shop.Open()).ToList();
        open.ForEach(records => records.Database.OpenConnection());

        Assert.All(open, records => Assert.Equal(_expected, Read(records)));

        open.ForEach(records => records.Dispose());
    }

    private static List<string> Read(RecordsContext records)
    {
        records.Database.OpenConnection();
        var read = ((string[])["journal_mode", "synchronous", "foreign_keys", "busy_timeout", "recursive_triggers"]).Select(pragma =>
        {
            using var command = records.Database.GetDbConnection().CreateCommand();
            command.CommandText = "PRAGMA " + pragma;
            return Convert.ToString(command.ExecuteScalar(), System.Globalization.CultureInfo.InvariantCulture)!;
        }).ToList();
        records.Database.CloseConnection();
        return read;
    }
}
