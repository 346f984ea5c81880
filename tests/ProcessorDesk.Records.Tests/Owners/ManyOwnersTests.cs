using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records.Tests.Cast;
using ProcessorDesk.Records.Tests.Plans;
using Xunit;
using Xunit.Abstractions;

namespace ProcessorDesk.Records.Tests.Owners;

/// <summary>Twenty thousand owners, which is many years of a busy shop.</summary>
public sealed class ManyOwnersTests : IClassFixture<ManyOwners>
{
    private readonly ShopFile _shop;
    private readonly ITestOutputHelper _output;

    public ManyOwnersTests(ManyOwners many, ITestOutputHelper output) => (_shop, _output) = (many.Shop, output);

    [Theory]
    [InlineData("amily 1999", "Family 19990")]
    [InlineData("0119990", "Family 19990")]
    [InlineData("Fa", "Family 0")]
    public void Finding_one_among_twenty_thousand_uses_the_index(string typed, string name)
    {
        using var records = _shop.Open();

        var started = TimeProvider.System.GetTimestamp();
        var found = records.Owners.Found(typed).OrderBy(owner => owner.Id).Take(20).Select(owner => owner.Name).ToList();
        _output.WriteLine($"first \"{typed}\": {TimeProvider.System.GetElapsedTime(started).TotalMilliseconds:0.0} ms");
        started = TimeProvider.System.GetTimestamp();
        for (var times = 0; times < 20; times++)
            records.Owners.Found(typed).OrderBy(owner => owner.Id).Take(20).Load();
        _output.WriteLine($"each \"{typed}\": {TimeProvider.System.GetElapsedTime(started).TotalMilliseconds / 20:0.00} ms");

        Assert.Contains(name, found);
        var plan = Assert.Single(_shop.PlansOf(again => again.Owners.Found(typed).OrderBy(owner => owner.Id).Take(20).Load()));
        Assert.Empty(plan.Scans);
        Assert.Contains(plan.Steps, step => step.Contains("VIRTUAL TABLE INDEX", StringComparison.Ordinal)
            || step.Contains("IX_Owners_Name", StringComparison.Ordinal));
    }
}
