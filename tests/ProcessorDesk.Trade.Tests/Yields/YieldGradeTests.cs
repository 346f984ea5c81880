using FsCheck.Xunit;
using ProcessorDesk.Trade.Yields;
using Xunit;

namespace ProcessorDesk.Trade.Tests.Yields;

[Properties(MaxTest = 1000, Arbitrary = [typeof(Sizes)])]
public sealed class YieldGradeTests
{
    private static readonly Proportion s_none = Proportion.Zero;

    /// <summary>500 lb and 10 in² make 2.50 + 1.90 − 3.20 = 1.20 before fat, so fat of x inches is 1.20 + 2.5 x.</summary>
    [Theory]
    [InlineData("0", "1.20", 1)]
    [InlineData("0.31996", "1.9999", 1)] // dropped, never rounded
    [InlineData("0.32", "2.00", 2)]
    [InlineData("0.71996", "2.9999", 2)]
    [InlineData("0.72", "3.00", 3)]
    [InlineData("1.12", "4.00", 4)]
    [InlineData("1.52", "5.00", 5)]
    [InlineData("1.91996", "5.9999", 5)]
    [InlineData("2.4", "7.20", 5)]
    public void The_fraction_is_dropped_and_five_is_the_last_grade(string fat, string calculated, int grade)
    {
        var found = YieldGrade.Of(Figure(fat), s_none, Weight.FromPounds(500m), 10m);

        Assert.Equal(Ratio.FromDecimal(Figure(calculated)), found.Calculated);
        Assert.Equal(grade, found.Grade);
    }

    [Fact]
    public void A_figure_under_one_is_grade_one() =>
        Assert.Equal(1, YieldGrade.Of(0m, s_none, Weight.FromPounds(300m), 20m).Grade); // 2.5 + 1.14 − 6.4

    [Fact]
    public void Figures_outside_their_range_are_a_slip()
    {
        var carcass = Weight.FromPounds(700m);
        Assert.Throws<ArgumentOutOfRangeException>(() => YieldGrade.Of(-0.1m, s_none, carcass, 12m));
        Assert.Throws<ArgumentOutOfRangeException>(() => YieldGrade.Of(0.4m, Proportion.FromPercent(100.1m), carcass, 12m));
        Assert.Throws<ArgumentOutOfRangeException>(() => YieldGrade.Of(0.4m, s_none, Weight.Zero, 12m));
        Assert.Throws<ArgumentOutOfRangeException>(() => YieldGrade.Of(0.4m, s_none, carcass, 0m));
    }

    [Property]
    public void Fat_and_weight_raise_it_and_a_larger_ribeye_lowers_it(Keyed keyed, Proportion inside)
    {
        var carcass = keyed.Weight + Weight.FromPounds(1m);
        var plain = YieldGrade.Of(0.4m, inside, carcass, 12m);

        Assert.True(YieldGrade.Of(0.41m, inside, carcass, 12m).Calculated > plain.Calculated);
        Assert.True(YieldGrade.Of(0.4m, inside, carcass + Weight.FromPounds(1m), 12m).Calculated > plain.Calculated);
        Assert.True(YieldGrade.Of(0.4m, inside, carcass, 12.1m).Calculated < plain.Calculated);
        Assert.InRange(plain.Grade, 1, 5);
    }

    private static decimal Figure(string text) => decimal.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
}
