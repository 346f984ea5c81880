using System.Globalization;
using ProcessorDesk.Records;
using Xunit;
using Xunit.Abstractions;

namespace ProcessorDesk.Web.Tests.Durability;

[Collection(DurabilityGroup.Name)]
public sealed class PowerCutTests(ITestOutputHelper output) : IDisposable
{
    /// <summary>Cuts with forms under way; one that hit nobody does not count.</summary>
    private const int CutsThatHit = 30;
    private const int MostCuts = 60;
    private const int LugsOfEach = 12;

    private readonly ShopOnThisPc _pc = new();
    private readonly List<Writer> _writers = [];
    private Books _opened = null!;

    [Fact]
    [Trait("Tier", "Long")]
    public async Task What_was_acknowledged_outlives_any_power_cut_and_nothing_is_saved_by_half()
    {
        var started = TimeProvider.System.GetTimestamp();
        await Open();
        var random = new Random(20261127);
        var (cuts, hit, lost, lostButSaved) = (0, 0, 0, 0);
        // Had every cut fallen before the save was made, nothing would have been shown: some must fall between save and answer.
        while (hit < CutsThatHit || lostButSaved == 0)
        {
            Assert.True(++cuts <= MostCuts, $"Of {MostCuts} cuts {hit} fell while forms were under way, and {lostButSaved} forms were saved but not answered.");
            var address = await _pc.Start();
            lostButSaved += Check();
            var moment = new CutMoment(whenSent: random.Next(2) == 0, 1 + random.Next(24), _pc.Cut);
            await Task.WhenAll(_writers.Select(writer => Task.Run(() => writer.Write(address, moment))));
            _pc.Clear();
            lost += moment.Hit;
            hit += moment.Hit > 0 ? 1 : 0;
        }

        var again = await _pc.Start();
        lostButSaved += Check();
        await Task.WhenAll(_writers.Select(writer => writer.Settle(again)));
        Check();

        var ledger = _writers.SelectMany(writer => writer.Ledger).ToList();
        Assert.All(ledger, form => Assert.NotNull(form.Answer));
        output.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"{cuts} power cuts, {hit} of them with forms under way; {ledger.Count} saves acknowledged; {_writers.Sum(writer => writer.Resent)} forms sent again, of {lost} lost answers {lostButSaved} were to saves that stood; {TimeProvider.System.GetElapsedTime(started).TotalSeconds:0} s."));
        Assert.True(lostButSaved < lost, "No cut fell before a save.");
        Assert.DoesNotContain("locked", _pc.Console, StringComparison.OrdinalIgnoreCase);
    }

    public void Dispose()
    {
        _writers.ForEach(writer => writer.Dispose());
        _pc.Dispose();
    }

    /// <summary>Four clerks, and four cutters each at a job of their own.</summary>
    private async Task Open()
    {
        using var opening = await Opening.Of(_pc);
        for (var i = 0; i < 4; i++)
        {
            var clerk = new Clerk(await opening.Hire($"D{i}", StaffRole.Clerk), $"D{i}", seed: i);
            await clerk.SignIn(opening.Address, "Counter");
            List<int> lugs = [.. Enumerable.Range(100 + i * LugsOfEach, LugsOfEach)];
            foreach (var lug in lugs)
                await opening.AddLug(lug);
            var cutter = new Cutter(await opening.Hire($"C{i}", StaffRole.Cutter), await opening.StartJob($"Table {i}"), lugs, seed: 10 + i);
            await cutter.SignIn(opening.Address, "Cutting");
            _writers.AddRange([clerk, cutter]);
        }

        _opened = _pc.Read(records => new Books(records));
        _pc.Clear();
    }

    /// <summary>Holds file and ledgers against each other; how many of the lost answers were to forms that are saved.</summary>
    private int Check() => _pc.Read(records =>
    {
        FileCheck.Holds(records);
        var now = new Books(records);
        LedgerCheck.Compare(_opened, now, _writers.SelectMany(writer => writer.Ledger));
        return _writers.Count(writer => writer.Lost is { } key && now.Results.ContainsKey(key));
    });
}
