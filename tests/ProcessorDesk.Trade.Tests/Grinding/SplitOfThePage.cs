using ProcessorDesk.Trade.Grinding;
using Xunit;
using static ProcessorDesk.Trade.Tests.Grinding.Grind;

namespace ProcessorDesk.Trade.Tests.Grinding;

/// <summary>The second example of docs/arithmetic.md, worked there with a pencil: 60 lb over asks that do not all go round.</summary>
public sealed class SplitOfThePage
{
    private static readonly GrindSplit Page = Split(
        60m,
        GrindAsk.OfPercent("Snack sticks", Proportion.FromPercent(40m), Blend(lean: 85m, additions: 3.5m, loss: 35m, smallest: 10m, step: 5m)),
        GrindAsk.OfLean("Bologna", Lb(6m), Blend(lean: 72m, additions: 6.5m, loss: 11m, smallest: 10m)),
        GrindAsk.OfFinished("Summer sausage", Lb(30m), Blend(lean: 80m, additions: 3.5m, loss: 15m)),
        GrindAsk.OfLean("Jerky", Lb(15m), Blend(additions: 5m, loss: 55m)));

    [Theory]
    [InlineData(0, "20.53", "3.62", "24.15", "25.00", "16.25")]
    [InlineData(1, "0.00", "0.00", "0.00", "0.00", "0.00")]
    [InlineData(2, "27.28", "6.82", "34.10", "35.29", "30.00")]
    [InlineData(3, "12.19", "0.00", "12.19", "12.80", "5.76")]
    [InlineData(4, "0.00", "0.00", "0.00", "0.00", "0.00")]
    public void The_figures_are_those_of_the_page(int ask, string lean, string fat, string block, string green, string finished)
    {
        var allotment = Page.Allotments[ask];

        Assert.Equal(
            [lean, fat, block, green, finished],
            new[] { allotment.Lean, allotment.AddedFat, allotment.MeatBlock, allotment.Green, allotment.Finished }
                .Select(Hundredth.PrintFigure));
    }

    [Fact]
    public void The_reasons_are_those_of_the_page() =>
        Assert.Equal(
            [
                "Mix rounded down from 29.22 lb to 25.00 lb: it is made in steps of 5.00 lb.",
                "Dropped: 8.88 lb of mix is under the smallest run of 10.00 lb.",
                "Asked for 15.00 lb; 12.19 lb of lean was left.",
            ],
            Page.Allotments.SelectMany(allotment => allotment.Reasons));
}
