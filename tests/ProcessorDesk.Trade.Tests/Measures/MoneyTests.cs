using FsCheck.Xunit;
using Xunit;

namespace ProcessorDesk.Trade.Tests.Measures;

[Properties(MaxTest = 1000, Arbitrary = [typeof(Sizes)])]
public sealed class MoneyTests
{
    [Theory]
    [InlineData("0", 0, "$0.00")]
    [InlineData("0.01", 1, "$0.01")]
    [InlineData("0.004", 0, "$0.00")]
    [InlineData("0.005", 1, "$0.01")]
    [InlineData("-0.005", -1, "-$0.01")]
    [InlineData("2.675", 268, "$2.68")]
    [InlineData("-3", -300, "-$3.00")]
    [InlineData("1234.5", 123450, "$1,234.50")]
    [InlineData("92233720368547758.07", long.MaxValue, "$92,233,720,368,547,758.07")]
    [InlineData("-92233720368547758.08", long.MinValue, "-$92,233,720,368,547,758.08")]
    public void Dollars_are_kept_to_the_nearest_cent_and_printed_with_their_sign(string dollars, long cents, string printed)
    {
        var money = Money.FromDollars(decimal.Parse(dollars, System.Globalization.CultureInfo.InvariantCulture));

        Assert.Equal(cents, money.Cents);
        Assert.Equal(printed, money.Print());
    }

    [Fact]
    public void Leaving_the_range_throws()
    {
        Assert.Throws<OverflowException>(() => Money.FromCents(long.MaxValue) + Money.FromCents(1));
        Assert.Throws<OverflowException>(() => Money.FromCents(long.MaxValue) * 2);
        Assert.Throws<OverflowException>(() => -Money.FromCents(long.MinValue));
    }

    [Property]
    public void Sums_and_order_are_those_of_the_cents(Money left, Money right)
    {
        Assert.Equal(left.Cents + right.Cents, (left + right).Cents);
        Assert.Equal(left, left + right - right);
        Assert.Equal(Money.Sum([left, right, -left]), right);
        Assert.Equal(left.Cents * 3, (left * 3).Cents);
        Assert.Equal(left.Cents < right.Cents, left < right);
        Assert.Equal(left >= right, right <= left);
        Assert.Equal(left > right, right < left);
    }

    [Theory]
    [InlineData(0, "0", 0)]
    [InlineData(1, "0.5", 1)] // half a cent
    [InlineData(1, "0.49", 0)]
    [InlineData(125, "92.75", 11594)] // 11,593.75
    [InlineData(2_147_483_647, "1", 2_147_483_647)]
    public void A_price_per_pound_times_a_weight_is_rounded_once(int cents, string pounds, long charge)
    {
        var weight = Weight.FromPounds(decimal.Parse(pounds, System.Globalization.CultureInfo.InvariantCulture));

        Assert.Equal(charge, PricePerPound.FromCents(cents).For(weight, ScaleDivision.HundredthPound).Cents);
    }

    [Fact]
    public void A_price_per_pound_is_zero_or_more_and_printed_with_its_unit()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => PricePerPound.FromCents(-1));
        Assert.Equal("$0.00 / lb", default(PricePerPound).Print());
        Assert.Equal("$21,474,836.47 / lb", PricePerPound.FromCents(int.MaxValue).Print());
        Assert.True(PricePerPound.FromCents(1) > default(PricePerPound) && default(PricePerPound) <= PricePerPound.FromCents(0));
    }
}
