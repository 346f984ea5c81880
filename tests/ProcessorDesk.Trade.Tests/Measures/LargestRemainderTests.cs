using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Xunit;

namespace ProcessorDesk.Trade.Tests.Measures;

[Properties(MaxTest = 1000, Arbitrary = [typeof(Sizes)])]
public sealed class LargestRemainderTests
{
    [Fact]
    public void Remainders_go_to_the_largest_fractions_the_earlier_first_where_equal()
    {
        Assert.Equal([4, 3, 3], LargestRemainder.Split(10, [1, 1, 1]));
        Assert.Equal([3, 7], LargestRemainder.Split(10, [1, 2]));
        Assert.Equal([0, 1, 0], LargestRemainder.Split(1, [1, 3, 2]));
        Assert.Equal([0, 5], LargestRemainder.Split(5, [0, 9]));
        Assert.Equal([0, 0], LargestRemainder.Split(0, [1, 1]));
    }

    [Property]
    public void Parts_sum_to_the_total_and_each_is_within_one_of_its_exact_share(ToSplit split)
    {
        var total = split.Division.CountOf(split.Total);
        var whole = split.Shares.Aggregate(System.Numerics.BigInteger.Zero, (sum, share) => sum + share);

        var parts = LargestRemainder.Split(total, split.Shares);

        Assert.Equal(total, parts.Sum());
        for (var i = 0; i < parts.Length; i++)
            Assert.True(System.Numerics.BigInteger.Abs(parts[i] * whole - total * (System.Numerics.BigInteger)split.Shares[i]) < whole);
    }

    [Property]
    public Property The_greatest_total_splits_without_overflow() =>
        Prop.ForAll(Gen.ArrayOf(Sizes.Count(long.MaxValue), 5).ToArbitrary(), shares =>
            shares.Sum(share => (decimal)share) == 0 || LargestRemainder.Split(long.MaxValue, shares).Sum() == long.MaxValue);

    [Fact]
    public void Shares_that_share_nothing_are_refused()
    {
        Assert.Throws<ArgumentException>(() => LargestRemainder.Split(1, []));
        Assert.Throws<ArgumentException>(() => LargestRemainder.Split(1, [0, 0]));
        Assert.Throws<ArgumentException>(() => LargestRemainder.Split(1, [2, -1]));
        Assert.Throws<ArgumentOutOfRangeException>(() => LargestRemainder.Split(-1, [1]));
    }
}
