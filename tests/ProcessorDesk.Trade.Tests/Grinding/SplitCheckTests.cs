using ProcessorDesk.Trade.Grinding;
using Xunit;
using static ProcessorDesk.Trade.Tests.Grinding.Grind;

namespace ProcessorDesk.Trade.Tests.Grinding;

public sealed class SplitCheckTests
{
    [Fact]
    public void A_second_product_for_the_rest_is_found_beside_its_field()
    {
        GrindAsk[] asks = [GrindAsk.OfRest("Sticks", Blend()), GrindAsk.OfLean("Ring", Lb(1m), Blend()), GrindAsk.OfRest("Patties", Blend())];

        Assert.Equal("Asks[2].Kind", Assert.Single(SplitCheck.Check(asks)).Field);
        Assert.Throws<ArgumentException>(() => Split(10m, asks));
    }

    [Theory]
    [MemberData(nameof(Impossible))]
    public void An_impossible_ask_is_found_and_never_split(string field, Func<GrindAsk, GrindAsk> spoil)
    {
        var ask = spoil(GrindAsk.OfLean("Ring", Lb(1m), Blend()));

        Assert.Equal("Asks[0]." + field, Assert.Single(SplitCheck.Check([ask])).Field);
        Assert.Throws<ArgumentException>(() => Split(10m, ask));
    }

    public static TheoryData<string, Func<GrindAsk, GrindAsk>> Impossible => new()
    {
        { "Amount", ask => ask with { Amount = Lb(-0.01m) } },
        { "Percent", ask => ask with { Percent = Proportion.FromPercent(100.0001m) } },
        { "LeanShare", ask => ask with { Blend = ask.Blend with { LeanShare = Proportion.Zero } } },
        { "LeanShare", ask => ask with { Blend = ask.Blend with { LeanShare = Proportion.FromPercent(100.0001m) } } },
        { "Additions", ask => ask with { Blend = ask.Blend with { Additions = Ratio.Of(-1, 100) } } },
        { "Loss", ask => ask with { Blend = ask.Blend with { Loss = Proportion.Whole } } },
        { "LossHigh", ask => ask with { Blend = ask.Blend with { LossHigh = Proportion.Whole } } },
        { "LossHigh", ask => ask with { Blend = ask.Blend with { LossLow = Proportion.FromPercent(1m) } } },
        { "SmallestRun", ask => ask with { Blend = ask.Blend with { SmallestRun = Lb(-1m) } } },
        { "Step", ask => ask with { Blend = ask.Blend with { Step = Lb(-1m) } } },
    };

    [Fact]
    public void The_ends_of_what_is_possible_are_not_found()
    {
        var ask = GrindAsk.OfPercent("Ring", Proportion.Whole, Blend(lean: 0.0001m, loss: 99.9999m)) with { Amount = Weight.Zero };

        Assert.Empty(SplitCheck.Check([ask]));
    }

    [Fact]
    public void A_lean_below_zero_is_a_slip()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Split(-0.01m));
    }
}
