using FsCheck.Xunit;
using Xunit;

namespace ProcessorDesk.Trade.Tests.Measures;

[Properties(MaxTest = 1000, Arbitrary = [typeof(Sizes)])]
public sealed class WeightTests
{
    /// <summary>Source: NIST Handbook 44, Appendix C: 1 lb = 453.592 37 g exactly, 1 oz = 1/16 lb.</summary>
    [Theory]
    [InlineData(WeightUnit.Pound, "0", 0)]
    [InlineData(WeightUnit.Pound, "1", 453_592)] // 453,592.37
    [InlineData(WeightUnit.Pound, "100", 45_359_237)]
    [InlineData(WeightUnit.Pound, "0.0001", 45)]
    [InlineData(WeightUnit.Pound, "-1", -453_592)]
    [InlineData(WeightUnit.Ounce, "1", 28_350)] // 28,349.523125
    [InlineData(WeightUnit.Ounce, "16000000", 453_592_370_000)]
    [InlineData(WeightUnit.Kilogram, "5.6", 5_600_000)]
    [InlineData(WeightUnit.Gram, "0.0005", 1)]
    [InlineData(WeightUnit.Gram, "-0.0005", -1)]
    [InlineData(WeightUnit.Gram, "0.00049", 0)]
    [InlineData(WeightUnit.Gram, "9223372036854775.807", long.MaxValue)]
    public void A_figure_in_a_unit_is_kept_to_the_nearest_milligram(WeightUnit unit, string amount, long milligrams)
    {
        var figure = decimal.Parse(amount, System.Globalization.CultureInfo.InvariantCulture);

        Assert.Equal(milligrams, Weight.From(figure, unit).Milligrams);
    }

    [Fact]
    public void Sixteen_ounces_are_a_pound_and_a_thousand_grams_a_kilogram()
    {
        Assert.Equal(UnitFactors.MilligramsPerPound, UnitFactors.MilligramsPerOunce * UnitFactors.OuncesPerPound);
        Assert.Equal(Weight.FromPounds(1m), Weight.FromOunces(16m));
        Assert.Equal(Weight.From(1m, WeightUnit.Kilogram), Weight.FromGrams(1000m));
    }

    [Fact]
    public void Leaving_the_range_throws()
    {
        var most = Weight.FromMilligrams(long.MaxValue);
        var least = Weight.FromMilligrams(long.MinValue);
        var one = Weight.FromMilligrams(1);

        Assert.Throws<OverflowException>(() => most + one);
        Assert.Throws<OverflowException>(() => least - one);
        Assert.Throws<OverflowException>(() => -least);
        Assert.Throws<OverflowException>(() => Weight.FromPounds(30_000_000_000_000m));
    }

    [Fact]
    public void The_default_is_zero_and_signs_are_told_apart()
    {
        Assert.Equal(Weight.Zero, default);
        Assert.True(Weight.Zero is { IsZero: true, IsNegative: false, IsPositive: false });
        Assert.True(Weight.FromMilligrams(-1) is { IsZero: false, IsNegative: true, IsPositive: false });
        Assert.True(Weight.FromMilligrams(1) is { IsZero: false, IsNegative: false, IsPositive: true });
    }

    [Property]
    public void Sums_differences_and_order_are_those_of_the_milligrams(Weight left, Weight right)
    {
        Assert.Equal(left.Milligrams + right.Milligrams, (left + right).Milligrams);
        Assert.Equal(left, left + right - right);
        Assert.Equal(Weight.Zero, left + -left);
        Assert.Equal(left.Milligrams < right.Milligrams, left < right);
        Assert.Equal(left.Milligrams <= right.Milligrams, left <= right);
        Assert.Equal(left > right, right < left);
        Assert.Equal(left >= right, right <= left);
        Assert.Equal((left, right), left <= right
            ? (Weight.Min(left, right), Weight.Max(left, right))
            : (Weight.Max(left, right), Weight.Min(left, right)));
    }

    [Property]
    public void Every_unit_reads_the_same_weight(Weight weight)
    {
        foreach (var unit in Enum.GetValues<WeightUnit>())
            Assert.Equal(weight, Weight.From(weight.In(unit), unit));
        Assert.Equal((weight.In(WeightUnit.Pound), weight.In(WeightUnit.Ounce), weight.In(WeightUnit.Gram)), (weight.Pounds, weight.Ounces, weight.Grams));
    }
}
