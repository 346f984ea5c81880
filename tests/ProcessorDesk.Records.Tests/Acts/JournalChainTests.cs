using Microsoft.Data.Sqlite;
using ProcessorDesk.Records.Tests.Cast;
using Xunit;

namespace ProcessorDesk.Records.Tests.Acts;

/// <summary>Each test has a shop of its own, since it spoils the journal; that needs the guards gone.</summary>
public sealed class JournalChainTests : IDisposable
{
    private readonly ShopFile _shop = new();

    public JournalChainTests()
    {
        for (var times = 0; times < 4; times++)
            _shop.Do((records, act) => Sample.Job(records, act));
    }

    [Fact]
    public void An_untouched_journal_is_whole()
    {
        using var records = _shop.Open();

        Assert.Equal(6, records.Journal.Count());
        Assert.Null(records.FirstBroken());
    }

    [Theory]
    [InlineData("UPDATE Journal SET Verb = 'nothing much' WHERE Id = 3")]
    [InlineData("UPDATE Journal SET Changes = replace(Changes, '100', '200') WHERE Id = 3")]
    [InlineData("UPDATE Journal SET ById = ById + 1 WHERE Id = 3")]
    [InlineData("UPDATE Journal SET At = '2020-01-01 00:00:00' WHERE Id = 3")]
    [InlineData("UPDATE Journal SET Station = 'elsewhere' WHERE Id = 3")]
    [InlineData("UPDATE Journal SET Hash = upper(hex(zeroblob(32))) WHERE Id = 3")]
    [InlineData("UPDATE Journal SET PreviousHash = '' WHERE Id = 3")]
    [InlineData("DELETE FROM Journal WHERE Id = 3")]
    public void An_altered_or_removed_entry_shows(string tamper)
    {
        Assert.Throws<SqliteException>(() => _shop.Execute(tamper));

        Assert.Equal(1, _shop.Execute($"DROP TRIGGER Journal_no_update; DROP TRIGGER Journal_no_delete; {tamper}"));

        using var records = _shop.Open();
        Assert.Equal(3, records.FirstBroken());
    }

    [Fact]
    public void An_entry_taken_off_the_end_shows()
    {
        _shop.Execute("DROP TRIGGER Journal_no_delete; DELETE FROM Journal WHERE Id = 6");

        using var records = _shop.Open();
        Assert.Equal(6, records.FirstBroken());
    }

    public void Dispose() => _shop.Dispose();
}
