using System.Numerics;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Xunit;

namespace ProcessorDesk.Trade.Tests.Measures;

/// <summary>Ratio's arithmetic against the schoolbook's, over figures that fit into 64 bits, just do, just do not, and far from it.</summary>
[Properties(MaxTest = 5000, Arbitrary = [typeof(RatioArithmeticTests)])]
public sealed class RatioArithmeticTests
{
    private static readonly BigInteger[] s_edges =
    [
        0, 1, 2, 1_000_000, 45_359_237, int.MaxValue, (BigInteger)int.MaxValue + 1, uint.MaxValue,
        long.MaxValue - 1, long.MaxValue, (BigInteger)long.MaxValue + 1, ulong.MaxValue, (BigInteger)ulong.MaxValue + 1,
        BigInteger.Pow(10, 30), BigInteger.Pow(2, 127) - 1, BigInteger.Pow(2, 127),
    ];

    private static readonly Gen<BigInteger> s_wholes =
        from whole in Gen.OneOf(
            Gen.Elements(s_edges),
            Gen.Choose(0, 1_000).Select(small => (BigInteger)small),
            Sizes.Between(0, long.MaxValue).Select(large => (BigInteger)large),
            from one in Sizes.Between(0, long.MaxValue) from other in Sizes.Between(0, long.MaxValue) select (BigInteger)one * other)
        select whole;

    public static Arbitrary<Ratio> Ratios() => Arb.From(
        from above in s_wholes
        from below in s_wholes
        from sign in Gen.Elements(-1, 1)
        select Ratio.Of(above * sign, below.IsZero ? BigInteger.One : below));

    [Property]
    public void The_four_operations_agree(Ratio left, Ratio right)
    {
        var (one, other) = (Fraction.Of(left), Fraction.Of(right));

        Assert.True((one + other).Is(left + right), $"{left} + {right} = {left + right}");
        Assert.True((one - other).Is(left - right), $"{left} - {right} = {left - right}");
        Assert.True((one * other).Is(left * right), $"{left} * {right} = {left * right}");
        if (!right.IsZero)
            Assert.True((one / other).Is(left / right), $"{left} / {right} = {left / right}");
    }

    [Property]
    public void Order_sign_and_equality_agree(Ratio left, Ratio right)
    {
        var order = Fraction.Of(left).CompareTo(Fraction.Of(right));

        Assert.Equal(Math.Sign(order), Math.Sign(left.CompareTo(right)));
        Assert.Equal(order == 0, left == right);
        Assert.Equal(left.Numerator.Sign, left.Sign);
        Assert.Equal(order < 0 ? left : right, Ratio.Min(left, right));
    }

    /// <summary>However a figure was come by, it is one and the same: through wide steps and back.</summary>
    [Property]
    public void Equal_figures_are_equal_whichever_way_they_were_come_by(Ratio left, Ratio right)
    {
        Assert.Equal(left, left + right - right);
        Assert.Equal(left.GetHashCode(), (left + right - right).GetHashCode());
        Assert.Equal(left, Ratio.Of(left.Numerator, left.Denominator));
        Assert.Equal(left, -(-left));
        if (!right.IsZero)
            Assert.Equal(left, left * right / right);
    }

    [Property]
    public void A_part_of_a_weight_agrees_or_overflows(Ratio ratio, Weight weight)
    {
        var exact = Fraction.Of(ratio) * new Fraction(weight.Milligrams, 1);

        AgreesOrOverflows(exact.Nearest(), () => ratio.Times(weight).Milligrams);
        AgreesOrOverflows(exact.Down(), () => ratio.TimesDown(weight).Milligrams);
        AgreesOrOverflows(exact.Nearest(), () => ratio.Times(Money.FromCents(weight.Milligrams)).Cents);
    }

    public static Arbitrary<Weight> Weights() => Sizes.Weights();

    [Fact]
    public void The_ends_of_64_bits_are_as_good_as_any()
    {
        Assert.Equal("-9223372036854775808", Ratio.Of(long.MinValue, 1).ToString());
        Assert.Equal("1", Ratio.Of(long.MinValue, long.MinValue).ToString());
        Assert.Equal("-1/9223372036854775808", Ratio.Of(1, long.MinValue).ToString());
        Assert.Equal("9223372036854775808", (-Ratio.Of(long.MinValue, 1)).ToString());
        Assert.Equal("1/9223372036854775808", (Ratio.One / -Ratio.Of(long.MinValue, 1)).ToString());
        Assert.Equal(Ratio.Of(long.MaxValue, 1), Ratio.Of(long.MaxValue, 1) + Ratio.One - Ratio.One);
        Assert.Throws<DivideByZeroException>(() => Ratio.Of(BigInteger.Pow(10, 30), 1) / Ratio.Zero);
        Assert.Throws<OverflowException>(() => Ratio.Of(BigInteger.Pow(10, 30), 1).ToDecimal());
        Assert.Equal(0.3333333333m, Ratio.Of(BigInteger.Pow(10, 30), BigInteger.Pow(10, 30) * 3 + 1).ToDecimal());
        Assert.Equal("33.3 %", Ratio.Of(BigInteger.Pow(10, 30), BigInteger.Pow(10, 30) * 3 + 1).PrintPercent());
    }

    [Theory]
    [InlineData("0", "0")]
    [InlineData("79228162514264337593543950335", "79228162514264337593543950335")]
    [InlineData("-0.0000000000000000000000000001", "-1/10000000000000000000000000000")]
    [InlineData("12.340", "617/50")]
    public void A_decimal_of_any_size_is_taken_exactly(string value, string ratio) =>
        Assert.Equal(ratio, Ratio.FromDecimal(decimal.Parse(value, System.Globalization.CultureInfo.InvariantCulture)).ToString());

    private static void AgreesOrOverflows(BigInteger expected, Func<long> found)
    {
        if (expected >= long.MinValue && expected <= long.MaxValue)
            Assert.Equal((long)expected, found());
        else
            Assert.Throws<OverflowException>(() => found());
    }
}
