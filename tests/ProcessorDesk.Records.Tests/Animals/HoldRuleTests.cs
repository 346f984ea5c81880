using ProcessorDesk.Records.Tests.Cast;
using Xunit;

namespace ProcessorDesk.Records.Tests.Animals;

public sealed class HoldRuleTests(ShopFile shop) : IClassFixture<ShopFile>
{
    /// <summary>
    /// What each reason stops: cut, bone out, grind, batch, release, hand over, send the head to the laboratory. X stops. An animal
    /// whose test is pending or detected waits, and its head goes to the laboratory (Michigan State University Extension 2022;
    /// Minnesota Department of Agriculture); the rest is common practice, no source.
    /// </summary>
    private static readonly Dictionary<HoldReason, string> _table = new()
    {
        [HoldReason.DiseaseTest] = "XXXXXX-",
        [HoldReason.DiseaseDetected] = "XXXXXX-",
        [HoldReason.MissingTag] = "XXXXXX-",
        [HoldReason.Dispute] = "--XXXX-",
        [HoldReason.TooWarm] = "XXXXXX-",
        [HoldReason.CoolerFailed] = "XXXXXX-",
        [HoldReason.WrongMeatIn] = "--XXXX-",
        [HoldReason.RecordIncomplete] = "----XX-",
        [HoldReason.Other] = "--XXXX-",
    };

    [Fact]
    public void The_built_in_rules_are_those_of_the_table()
    {
        using var records = shop.Open();
        var rules = records.HoldRules.ToList();

        Assert.Equal(Enum.GetValues<HoldReason>().Order(), _table.Keys.Order());
        Assert.Equal(Enum.GetValues<HoldReason>().Length * Enum.GetValues<HeldAct>().Length, rules.Count);
        foreach (var (reason, stops) in _table)
        {
            var laid = rules.Where(rule => rule.Reason == reason).OrderBy(rule => rule.Act).Select(rule => rule.Stops ? 'X' : '-');
            Assert.Equal(stops, string.Concat(laid));
        }

        Assert.All(rules, rule => Assert.Equal(rule.Stops, rule.BuiltIn));
    }

    [Fact]
    public void A_tightened_rule_can_be_reset_to_what_is_built_in()
    {
        var loose = new HoldRule(HoldReason.Dispute, HeldAct.Cut, stops: false);

        loose.Tighten();
        Assert.True(loose.Stops);

        loose.Reset();
        Assert.False(loose.Stops);
    }

    [Fact]
    public void A_built_in_rule_can_not_be_loosened()
    {
        var strict = new HoldRule(HoldReason.DiseaseTest, HeldAct.Cut, stops: true);

        strict.Tighten();
        strict.Reset();

        Assert.True(strict.Stops);
        Assert.DoesNotContain(typeof(HoldRule).GetProperties(), property => property.SetMethod is { IsPublic: true });
        Assert.Equal(["Reset", "Tighten"], typeof(HoldRule).GetMethods()
            .Where(method => method.DeclaringType == typeof(HoldRule) && !method.IsSpecialName).Select(method => method.Name).Order());
    }
}
