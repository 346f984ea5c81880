using ProcessorDesk.Trade.Blending;
using Xunit;
using static ProcessorDesk.Trade.Tests.Blending.Mixer;

namespace ProcessorDesk.Trade.Tests.Blending;

public sealed class BlendCheckTests
{
    public static TheoryData<string, BlendWanted> Wrong => new()
    {
        { "Block", Block(0.004m, 0m, 20m, Meat("Lean", 10m, 300)) },
        { "Fat.Most", Block(1m, 0m, 100.0001m, Meat("Lean", 10m, 300)) },
        { "Fat.Least", Block(1m, 20.0001m, 20m, Meat("Lean", 10m, 300)) },
        { "Materials", Block(1m, 0m, 20m) },
        { "Materials", Block(1m, 0m, 20m, [.. Enumerable.Repeat(Meat("Lean", 10m, 300), 41)]) },
        { "Materials[0].Fat", Block(1m, 0m, 20m, Meat("Lean", 100.0001m, 300)) },
        { "Materials[1].LeastShare", Block(1m, 0m, 20m, Meat("Lean", 10m, 300), Meat("Trim", 10m, 300, least: 100.0001m)) },
        { "Materials[1].MostShare", Block(1m, 0m, 20m, Meat("Lean", 10m, 300), Meat("Trim", 10m, 300, most: 100.0001m)) },
        { "Materials[1].OnHand", Block(1m, 0m, 20m, Meat("Lean", 10m, 300), Meat("Trim", 10m, 300, onHand: -0.01m)) },
    };

    [Theory]
    [MemberData(nameof(Wrong))]
    public void What_is_wrong_is_found_beside_its_field(string field, BlendWanted wanted) =>
        Assert.Equal(field, Assert.Single(BlendCheck.Check(wanted)).Field);

    [Fact]
    public void The_ends_of_what_is_possible_are_not_found()
    {
        Assert.Empty(BlendCheck.Check(Block(0.005m, 100m, 100m, Meat("Fat", 100m, 0, least: 100m, most: 100m, onHand: 0m))));
        Assert.Empty(BlendCheck.Check(Block(1m, 0m, 0m, [.. Enumerable.Repeat(Meat("Lean", 0m, 300, most: 0m), 40)])));
    }

    [Fact]
    public void A_band_may_be_given_by_one_end_or_by_lean()
    {
        Assert.Equal(new FatBand(Percent(0m), Percent(30m)), FatBand.AtMost(Percent(30m)));
        Assert.Equal(new FatBand(Percent(30m), Percent(100m)), FatBand.AtLeast(Percent(30m)));
        Assert.Equal(new FatBand(Percent(30m), Percent(30m)), FatBand.Exactly(Percent(30m)));
        Assert.Equal(FatBand.AtMost(Percent(30m)), FatBand.LeanAtLeast(Percent(70m)));
        Assert.Throws<ArgumentOutOfRangeException>(() => FatBand.LeanAtLeast(Percent(100.0001m)));
    }
}
