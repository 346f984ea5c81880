using FsCheck.Xunit;
using ProcessorDesk.Trade.Yields;
using Xunit;
using static ProcessorDesk.Trade.Species;

namespace ProcessorDesk.Trade.Tests.Yields;

[Properties(MaxTest = 1000, Arbitrary = [typeof(Sizes)])]
public sealed class ChillStatementTests
{
    /// <summary>
    /// Sources: University of Kentucky (hog 1.0 to 1.5 %); Fitzhenry 2019, fallow deer (1.35 to 1.98 %); University of Tennessee (goat 3
    /// to 10 %, measured from 2.2). Of 100 lb hot the loss in pounds is the percent.
    /// </summary>
    [Theory]
    [InlineData(Hog, "0.99", YieldVerdict.Outside)]
    [InlineData(Hog, "1", YieldVerdict.InsideUsual)]
    [InlineData(Hog, "1.5", YieldVerdict.InsideUsual)]
    [InlineData(Hog, "1.51", YieldVerdict.Outside)]
    [InlineData(WhiteTailDeer, "1.34", YieldVerdict.Outside)]
    [InlineData(MuleDeer, "1.35", YieldVerdict.InsideUsual)]
    [InlineData(WhiteTailDeer, "1.98", YieldVerdict.InsideUsual)]
    [InlineData(WhiteTailDeer, "1.99", YieldVerdict.Outside)]
    [InlineData(Goat, "2.19", YieldVerdict.Outside)]
    [InlineData(Goat, "2.2", YieldVerdict.InsideExtreme)]
    [InlineData(Goat, "2.99", YieldVerdict.InsideExtreme)]
    [InlineData(Goat, "3", YieldVerdict.InsideUsual)]
    [InlineData(Goat, "10", YieldVerdict.InsideUsual)]
    [InlineData(Goat, "10.01", YieldVerdict.Outside)]
    [InlineData(Bear, "4", YieldVerdict.NoRange)]
    [InlineData(Lamb, "4", YieldVerdict.NoRange)]
    public void The_published_range_of_each_species(Species species, string lost, YieldVerdict verdict)
    {
        var chilled = 100m - decimal.Parse(lost, System.Globalization.CultureInfo.InvariantCulture);

        var statement = ChillStatement.Of(species, Weight.FromPounds(100m), Weight.FromPounds(chilled));

        Assert.Equal(verdict, statement.Verdict);
        Assert.Equal(ChillLoss.For(species), statement.Published);
    }

    [Fact]
    public void No_loss_is_made_up_for_a_species_nobody_published()
    {
        Assert.Null(ChillLoss.For(Bear));
        Assert.Equal("No figure is published for this species.", ChillStatement.Of(Bear, Weight.FromPounds(200m), Weight.FromPounds(190m)).Standing);
    }

    [Fact]
    public void A_loss_is_of_something() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => ChillStatement.Of(Beef, Weight.Zero, Weight.Zero));

    [Property]
    public void Before_undoes_after(Keyed keyed)
    {
        foreach (var loss in ChillLoss.All)
        {
            var (low, high) = loss.After(keyed.Weight);
            Assert.True(low <= high && high <= keyed.Weight);
            Assert.InRange(loss.Before(high).Low.Milligrams, keyed.Weight.Milligrams - 1, keyed.Weight.Milligrams + 1);
            Assert.InRange(loss.Before(low).High.Milligrams, keyed.Weight.Milligrams - 1, keyed.Weight.Milligrams + 1);
        }
    }
}
