using ProcessorDesk.Trade.Grinding;
using Xunit;
using static ProcessorDesk.Trade.Tests.Grinding.Grind;

namespace ProcessorDesk.Trade.Tests.Grinding;

/// <summary>
/// One owner, two deer, four lugs of lean, four asks: every figure worked by hand beside it. Blends and losses are common
/// practice, no source.
/// </summary>
public sealed class TwoDeerStory
{
    private static readonly GrindSplit Story = Splitting.Split(
        Hundredth.Sum([Lb(34.62m - 3.10m), Lb(29.48m - 3.10m), Lb(22.06m - 2.86m), Lb(18.75m - 3.10m)]),
        [
            GrindAsk.OfLean("Smoked ring sausage", Lb(25m), Blend(lean: 70m, additions: 4m)),
            GrindAsk.OfFinished("Summer sausage", Lb(20m), Blend(lean: 80m, additions: 3.5m, loss: 15m)),
            GrindAsk.OfFinished("Fresh hot sausage", Lb(15m), Blend(lean: 75m, additions: 2m)),
            GrindAsk.OfRest("Plain ground", GrindBlend.Plain),
        ],
        PlainGround,
        Hundredth);

    [Fact]
    public void The_net_lean_of_the_four_lugs_is_92_75_lb()
    {
        Assert.Equal(31.52m + 26.38m + 19.20m + 15.65m, 92.75m);
        Assert.Equal(92.75m, Hundredth.Figure(Story.Lean));
    }

    [Fact]
    public void The_lean_is_25_00_and_18_19_and_11_03_and_the_rest_38_53()
    {
        var summer = decimal.Round(20m / (1m - 0.15m) / 1.035m * 0.80m, 2, MidpointRounding.AwayFromZero);
        var hot = decimal.Round(15m / 1.02m * 0.75m, 2, MidpointRounding.AwayFromZero);
        Assert.Equal([18.19m, 11.03m], [summer, hot]);

        Assert.Equal([25.00m, summer, hot, 92.75m - 25.00m - summer - hot], Story.Leans());
        Assert.Equal(38.53m, Story.Leans()[3]);
        AddsUp(Story, Hundredth);
    }

    [Theory]
    [InlineData(0, "25.00", "10.71", "35.71", "37.14", "37.14")] // 25.00 × 30/70; × 1.04
    [InlineData(1, "18.19", "4.55", "22.74", "23.54", "20.01")] // 18.19 × 20/80 = 4.5475; × 1.035 = 23.5359; × 0.85 = 20.009
    [InlineData(2, "11.03", "3.68", "14.71", "15.00", "15.00")] // 11.03 × 25/75 = 3.6767; × 1.02 = 15.0042
    [InlineData(3, "38.53", "0.00", "38.53", "38.53", "38.53")]
    public void Fat_block_green_and_finished_follow_from_the_printed_lean(
        int ask, string lean, string fat, string block, string green, string finished)
    {
        var allotment = Story.Allotments[ask];

        Assert.Equal(
            [lean, fat, block, green, finished],
            new[] { allotment.Lean, allotment.AddedFat, allotment.MeatBlock, allotment.Green, allotment.Finished }
                .Select(Hundredth.PrintFigure));
    }

    [Fact]
    public void Everyone_gets_what_was_asked_so_there_is_nothing_to_explain()
    {
        Assert.True(Story.IsAsAsked);
        Assert.Equal(4, Story.Allotments.Count);
    }
}
