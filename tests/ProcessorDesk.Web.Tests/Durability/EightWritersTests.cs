using System.Globalization;
using ProcessorDesk.Records;
using Xunit;
using Xunit.Abstractions;

namespace ProcessorDesk.Web.Tests.Durability;

[Collection(DurabilityGroup.Name)]
public sealed class EightWritersTests(ITestOutputHelper output) : IDisposable
{
    private const int Writers = 8;
    private const int SavesOfEach = 25;

    private readonly ShopOnThisPc _pc = new();
    private readonly List<Writer> _writers = [];

    [Fact]
    [Trait("Tier", "Long")]
    public async Task Eight_tables_weigh_at_once_without_a_lock_error_or_a_lost_weight()
    {
        using var opening = await Opening.Of(_pc);
        for (var i = 0; i < Writers; i++)
        {
            var cutter = new Cutter(await opening.Hire($"C{i}", StaffRole.Cutter), await opening.StartJob($"Table {i}"), [], seed: i);
            await cutter.SignIn(opening.Address, "Cutting");
            _writers.Add(cutter);
        }

        var opened = _pc.Read(records => new Books(records));

        // Every writer takes up its forms first, so that what is measured is saving.
        foreach (var writer in _writers)
            await writer.TakeUp(SavesOfEach);
        var started = TimeProvider.System.GetTimestamp();
        var slowest = await Task.WhenAll(_writers.Select(writer => Task.Run(writer.SendAll)));
        var seconds = TimeProvider.System.GetElapsedTime(started).TotalSeconds;

        var saved = _pc.Read(records =>
        {
            FileCheck.Holds(records);
            return LedgerCheck.Compare(opened, new Books(records), _writers.SelectMany(writer => writer.Ledger));
        });
        _pc.Clear();
        output.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"{saved} saves of {Writers} writers in {seconds:0.00} s, {saved / seconds:0} a second; the slowest took {slowest.Max().TotalMilliseconds:0} ms."));
        Assert.Equal(Writers * SavesOfEach, saved);
        Assert.DoesNotContain("locked", _pc.Console, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("Fault", _pc.Console, StringComparison.Ordinal);
    }

    public void Dispose()
    {
        _writers.ForEach(writer => writer.Dispose());
        _pc.Dispose();
    }
}
