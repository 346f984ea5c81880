using FsCheck.Xunit;
using Xunit;

namespace ProcessorDesk.Trade.Tests.Measures;

[Properties(MaxTest = 1000, Arbitrary = [typeof(Sizes)])]
public sealed class ProportionAndRatioTests
{
    [Theory]
    [InlineData("0", 0, "0 %")]
    [InlineData("0.0001", 1, "0.0001 %")]
    [InlineData("0.00005", 1, "0.0001 %")]
    [InlineData("0.000049", 0, "0 %")]
    [InlineData("6.25", 62_500, "6.25 %")]
    [InlineData("15", 150_000, "15 %")]
    [InlineData("100", 1_000_000, "100 %")]
    [InlineData("214748.3647", int.MaxValue, "214748.3647 %")]
    public void A_percent_is_kept_in_parts_per_million(string percent, int parts, string printed)
    {
        var proportion = Proportion.FromPercent(decimal.Parse(percent, System.Globalization.CultureInfo.InvariantCulture));

        Assert.Equal(parts, proportion.PartsPerMillion);
        Assert.Equal(printed, proportion.Print());
    }

    [Fact]
    public void A_proportion_has_its_ends()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Proportion.FromPartsPerMillion(-1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Proportion.FromPercent(-0.0001m));
        Assert.Throws<OverflowException>(() => Proportion.FromPercent(214_748.3648m));
        Assert.Throws<OverflowException>(() => Proportion.FromPartsPerMillion(int.MaxValue) + Proportion.FromPartsPerMillion(1));
        Assert.Equal(Ratio.One, Proportion.Whole.ToRatio());
        Assert.Equal(Proportion.Zero, default);
    }

    [Theory]
    [InlineData(1, 2, "1/2")]
    [InlineData(2, 4, "1/2")]
    [InlineData(-1, 2, "-1/2")]
    [InlineData(1, -2, "-1/2")]
    [InlineData(0, 7, "0")]
    [InlineData(6, 3, "2")]
    public void A_ratio_is_in_lowest_terms_with_its_sign_in_front(int numerator, int denominator, string text) =>
        Assert.Equal(text, Ratio.Of(numerator, denominator).ToString());

    [Fact]
    public void The_default_ratio_is_zero_and_nothing_is_over_zero()
    {
        Assert.Equal(Ratio.Zero, default);
        Assert.Equal(Ratio.Of(0, 5), default);
        Assert.True(default(Ratio).Denominator.IsOne);
        Assert.Throws<DivideByZeroException>(() => Ratio.Of(1, 0));
        Assert.Throws<DivideByZeroException>(() => Ratio.One / Ratio.Zero);
    }

    [Fact]
    public void A_ratio_is_exact_where_a_decimal_is_not()
    {
        var third = Ratio.Of(1, 3);

        Assert.Equal(Ratio.One, third + third + third);
        Assert.Equal(Ratio.Of(1, 9), third * third);
        Assert.Equal(Ratio.One, third / third);
        Assert.True(Ratio.FromDecimal(0.3333333333333333333333333333m) < third);
        Assert.Equal(0.3333333333m, third.ToDecimal());
        Assert.Equal(156.25m, Ratio.Of(1, 6400).PartsPerMillion);
        Assert.Equal("33.3 %", third.PrintPercent());
        Assert.Equal("0.1 %", Ratio.Of(1, 2000).PrintPercent());
    }

    [Theory]
    [InlineData(1, 2, 3, 2, 1)]
    [InlineData(-1, 2, 3, -2, -2)]
    [InlineData(1, 3, 10, 3, 3)]
    [InlineData(2, 3, 10, 7, 6)]
    [InlineData(1, 2, 0, 0, 0)]
    public void A_part_of_a_weight_is_rounded_once(int numerator, int denominator, long milligrams, long nearest, long down)
    {
        var ratio = Ratio.Of(numerator, denominator);

        Assert.Equal(nearest, ratio.Times(Weight.FromMilligrams(milligrams)).Milligrams);
        Assert.Equal(down, ratio.TimesDown(Weight.FromMilligrams(milligrams)).Milligrams);
        Assert.Equal(nearest, ratio.Times(Money.FromCents(milligrams)).Cents);
    }

    [Property]
    public void A_decimal_is_taken_exactly(Keyed keyed, Proportion percent)
    {
        Assert.Equal(keyed.Figure, decimal.Round(Ratio.FromDecimal(keyed.Figure).ToDecimal(), 10));
        Assert.Equal(percent.ToRatio(), Ratio.FromDecimal(percent.Percent) / Ratio.Of(100, 1));
        Assert.Equal(percent.Percent.CompareTo(1m), percent.ToRatio().CompareTo(Ratio.Of(1, 100)));
    }

    [Property]
    public void Arithmetic_undoes_itself(Keyed one, Keyed two)
    {
        var (left, right) = (Ratio.Of(one.Count, 7), Ratio.Of(two.Count + 1, 1000));

        Assert.Equal(left, left + right - right);
        Assert.Equal(left, left * right / right);
        Assert.Equal(left < right, (left - right).Sign < 0);
        Assert.Equal(left >= right, right <= left);
    }
}
