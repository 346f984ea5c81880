using FsCheck.Xunit;
using Xunit;

namespace ProcessorDesk.Trade.Tests.Measures;

[Properties(MaxTest = 1000, Arbitrary = [typeof(Sizes)])]
public sealed class ScaleDivisionTests
{
    [Theory]
    [InlineData("0.01", "0", 0, "0.00 lb")]
    [InlineData("0.01", "0.004", 0, "0.00 lb")]
    [InlineData("0.01", "0.005", 1, "0.01 lb")]
    [InlineData("0.01", "0.01", 1, "0.01 lb")]
    [InlineData("0.01", "12.4", 1240, "12.40 lb")]
    [InlineData("0.01", "-0.005", -1, "-0.01 lb")]
    [InlineData("0.01", "-0.004", 0, "0.00 lb")]
    [InlineData("0.01", "1234.565", 123457, "1,234.57 lb")]
    [InlineData("0.5", "0.24", 0, "0.0 lb")]
    [InlineData("0.5", "0.25", 1, "0.5 lb")]
    [InlineData("0.5", "128.5", 257, "128.5 lb")]
    [InlineData("0.05", "1.075", 22, "1.10 lb")]
    [InlineData("1", "99.5", 100, "100 lb")]
    [InlineData("20", "1010", 51, "1,020 lb")]
    [InlineData("0.0001", "0.0001", 1, "0.0001 lb")]
    [InlineData("0.01", "100000", 10000000, "100,000.00 lb")]
    public void Weights_round_to_the_nearest_division_halves_away_from_zero(string step, string pounds, long count, string printed)
    {
        var division = ScaleDivision.Of(WeightUnit.Pound, Dec(step));
        var weight = Weight.FromPounds(Dec(pounds));

        Assert.Equal(count, division.CountOf(weight));
        Assert.Equal(printed, division.Print(weight));
        Assert.Equal(count * Dec(step), division.Figure(weight));
    }

    [Theory]
    [InlineData(WeightUnit.Ounce, "0.1", "3.45", "3.5 oz")]
    [InlineData(WeightUnit.Kilogram, "0.005", "5.6", "5.600 kg")]
    [InlineData(WeightUnit.Gram, "0.1", "40.45", "40.5 g")]
    [InlineData(WeightUnit.Gram, "1", "350", "350 g")]
    [InlineData(WeightUnit.Gram, "0.001", "0.001", "0.001 g")]
    public void Every_unit_prints_with_the_decimals_of_its_division(WeightUnit unit, string step, string amount, string printed) =>
        Assert.Equal(printed, ScaleDivision.Of(unit, Dec(step)).Print(Weight.From(Dec(amount), unit)));

    [Theory]
    [InlineData(WeightUnit.Pound, "0")]
    [InlineData(WeightUnit.Pound, "-0.01")]
    [InlineData(WeightUnit.Pound, "0.00009")]
    [InlineData(WeightUnit.Pound, "1000.1")]
    [InlineData(WeightUnit.Pound, "0.0100001")]
    [InlineData(WeightUnit.Gram, "0.0001")]
    [InlineData(WeightUnit.Gram, "0.0015")]
    public void A_step_that_cannot_be_held_is_no_division(WeightUnit unit, string step) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => ScaleDivision.Of(unit, Dec(step)));

    [Fact]
    public void A_division_never_set_says_so_when_used()
    {
        Assert.Throws<InvalidOperationException>(() => default(ScaleDivision).CountOf(Weight.Zero));
        Assert.Throws<InvalidOperationException>(() => default(ScaleDivision).Print(Weight.Zero));
        Assert.Equal("no division", default(ScaleDivision).ToString());
    }

    [Fact]
    public void The_ends_of_the_range_are_counted_and_past_them_throws()
    {
        var milligram = ScaleDivision.Of(WeightUnit.Gram, 0.001m);

        Assert.Equal(long.MaxValue, milligram.CountOf(Weight.FromMilligrams(long.MaxValue)));
        Assert.Equal(long.MinValue, milligram.CountOf(Weight.FromMilligrams(long.MinValue)));
        Assert.Throws<OverflowException>(() => ScaleDivision.Of(WeightUnit.Pound, 1m).FromCount(long.MaxValue));
    }

    [Property]
    public void A_keyed_figure_reads_back_unchanged(Keyed keyed)
    {
        Assert.Equal(keyed.Count, keyed.Division.CountOf(keyed.Weight));
        Assert.Equal(keyed.Figure, keyed.Division.Figure(keyed.Weight));
        Assert.Equal(keyed.Weight, keyed.Division.Round(keyed.Weight));
        Assert.Equal(keyed.Weight, keyed.Division.RoundDown(keyed.Weight));
    }

    [Property]
    public void Rounding_down_is_never_above_the_weight(ToSplit split)
    {
        var down = split.Division.RoundDown(split.Total);

        Assert.True(down <= split.Total);
        Assert.True(split.Total.Milligrams - down.Milligrams <= split.Division.Step * UnitFactors.MilligramsPer(split.Division.Unit) + 1);
    }

    [Property]
    public void Parts_of_a_split_add_up_in_milligrams_and_as_printed_and_none_is_below_zero(ToSplit split)
    {
        var parts = split.Division.Split(split.Total, split.Shares);

        Assert.Equal(split.Shares.Length, parts.Count);
        Assert.Equal(split.Total.Milligrams, parts.Sum(part => part.Milligrams));
        Assert.Equal(split.Division.Figure(split.Total), parts.Sum(split.Division.Figure));
        Assert.Equal(split.Division.Round(split.Total), split.Division.Sum(parts));
        Assert.All(parts, part => Assert.False(part.IsNegative));
    }

    [Property]
    public void Every_part_prints_as_its_own_count(ToSplit split)
    {
        var counts = LargestRemainder.Split(split.Division.CountOf(split.Total), split.Shares);

        Assert.Equal(counts, split.Division.Parts(split.Total, counts).Select(split.Division.CountOf));
    }

    [Fact]
    public void Every_small_weight_splits_cleanly_in_two_at_every_division()
    {
        foreach (var division in Sizes.Divisions)
            for (var milligrams = 0L; milligrams < 400; milligrams++)
            {
                var total = Weight.FromMilligrams(milligrams * Math.Max(1, division.FromCount(1).Milligrams / 100));
                var count = division.CountOf(total);
                for (var first = 0L; first <= count; first += Math.Max(1, count / 5))
                {
                    var parts = division.Parts(total, [first, count - first]);
                    Assert.Equal(total, parts[0] + parts[1]);
                    Assert.Equal((first, count - first), (division.CountOf(parts[0]), division.CountOf(parts[1])));
                }
            }
    }

    [Fact]
    public void What_is_over_whole_divisions_never_goes_to_a_share_of_nothing()
    {
        var total = Weight.FromPounds(0.006m);

        var parts = ScaleDivision.HundredthPound.Split(total, [1, 0]);

        Assert.Equal([total, Weight.Zero], parts);
    }

    [Fact]
    public void Counts_that_do_not_sum_to_the_weight_are_refused()
    {
        var division = ScaleDivision.HundredthPound;

        Assert.Throws<ArgumentException>(() => division.Parts(Weight.FromPounds(1m), [50, 49]));
        Assert.Throws<ArgumentException>(() => division.Parts(Weight.FromPounds(1m), [150, -50]));
        Assert.Throws<ArgumentOutOfRangeException>(() => division.Parts(Weight.FromPounds(-1m), [-100]));
    }

    [Fact]
    public void A_sum_is_what_an_owner_adds_up_from_the_printed_figures()
    {
        var third = Weight.FromPounds(0.333m);

        Assert.Equal(0.99m, ScaleDivision.HundredthPound.Figure(ScaleDivision.HundredthPound.Sum([third, third, third])));
        Assert.Equal(Weight.Zero, ScaleDivision.HundredthPound.Sum([]));
    }

    private static decimal Dec(string text) => decimal.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
}
