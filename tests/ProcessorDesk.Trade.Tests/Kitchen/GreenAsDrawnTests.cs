using FsCheck.Xunit;
using ProcessorDesk.Trade.Kitchen;
using Xunit;

namespace ProcessorDesk.Trade.Tests.Kitchen;

[Properties(MaxTest = 1000, Arbitrary = [typeof(BatchCases)])]
public sealed class GreenAsDrawnTests
{
    private static readonly ScaleDivision s_bench = ScaleDivision.HundredthPound;

    [Theory]
    [InlineData(12.50, 18.57, 12.50, 18.57)]
    [InlineData(12.50, 18.57, 6.25, 9.29)]  // 18.57 / 2 = 9.285
    [InlineData(12.50, 18.57, 10.00, 14.86)] // 18.57 × 0.8 = 14.856
    [InlineData(12.50, 18.57, 0.00, 0.00)]
    [InlineData(0.00, 0.01, 0.00, 0.01)]
    public void Green_follows_the_lean_that_was_drawn(double lean, double green, double drawn, double made) =>
        Assert.Equal(Pounds(made), GreenAsDrawn.Of(Pounds(lean), Pounds(green), Pounds(drawn), s_bench));

    [Fact]
    public void Meat_below_zero_is_a_slip() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => GreenAsDrawn.Of(Pounds(1), Pounds(1), Weight.FromMilligrams(-1), s_bench));

    [Property]
    public void Meat_drawn_as_planned_makes_the_green_that_was_planned(BatchCase batch) =>
        Assert.All(batch.Parts, part => Assert.Equal(
            batch.Division.CountOf(part.Green), batch.Division.CountOf(GreenAsDrawn.Of(part.Lean, part.Green, part.Lean, batch.Division))));

    private static Weight Pounds(double pounds) => Weight.FromPounds((decimal)pounds);
}
