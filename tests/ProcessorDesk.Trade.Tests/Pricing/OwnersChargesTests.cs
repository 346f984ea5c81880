using FsCheck.Xunit;
using ProcessorDesk.Trade.Pricing;
using Xunit;

namespace ProcessorDesk.Trade.Tests.Pricing;

[Properties(MaxTest = 1000, Arbitrary = [typeof(Sizes), typeof(OwnersSharesTests)])]
public sealed class OwnersChargesTests
{
    private static readonly Proportion s_tax = Proportion.FromPercent(6.5m);
    private static readonly OwnersShares s_thirds = OwnersShares.Of([Ratio.Of(1, 3), Ratio.Of(1, 3), Ratio.Of(1, 3)]);

    [Fact]
    public void Thirds_of_a_hundred_dollars_come_to_a_hundred_and_tax_is_rounded_on_each_line()
    {
        var lines = Enumerable.Range(0, 3).Select(i => Charges.Part("Steer", new OwnersShare(s_thirds, i), Money.FromDollars(100m), s_tax)).ToList();

        Assert.Equal([3334L, 3333L, 3333L], lines.Select(line => line.Amount.Cents));
        Assert.Equal([217L, 217L, 217L], lines.Select(line => line.Tax.Cents)); // 216.71, 216.645 twice
        Assert.Equal(("1/3", "of", "$100.00"), (lines[0].Quantity, lines[0].Unit, lines[0].Rate));
    }

    [Fact]
    public void The_only_owner_pays_a_plain_charge() =>
        Assert.Equal(
            Charges.Flat("Deer", Money.FromDollars(110m), null),
            Charges.Part("Deer", OwnersShare.Whole, Money.FromDollars(110m), null));

    /// <summary>A quarter each of 612.5 lb at 0.01 lb is 153.125 lb, which no scale shows: two are printed 153.13 and two 153.12.</summary>
    [Fact]
    public void Owners_who_pay_by_the_pound_pay_for_the_animals_pounds_and_no_more()
    {
        var quarters = OwnersShares.Of([.. Enumerable.Repeat(Ratio.Of(1, 4), 4)]);

        var lines = quarters.Divide(Weight.FromPounds(612.5m), ScaleDivision.HundredthPound)
            .Select(part => Charges.PerPound("Cut and wrap", part, ScaleDivision.HundredthPound, PricePerPound.FromCents(100), null)).ToList();

        Assert.Equal(["153.13", "153.13", "153.12", "153.12"], lines.Select(line => line.Quantity));
        Assert.Equal(612.5m, lines.Sum(line => line.Amount.Dollars));
    }

    [Property]
    public void Owners_lines_sum_to_the_charge_and_none_pays_tax_on_more_than_its_own(OwnersShares shares, Money whole, Proportion tax)
    {
        var lines = shares.Fractions.Select((_, i) => Charges.Part("Animal", new OwnersShare(shares, i), whole, tax)).ToList();

        Assert.True(!shares.Unshared.IsZero || Money.Sum(lines.Select(line => line.Amount)) == whole);
        Assert.All(lines, line => Assert.Equal(
            decimal.Round(line.Amount.Cents * tax.PartsPerMillion / 1_000_000m, 0, MidpointRounding.AwayFromZero), line.Tax.Cents));
    }

    [Theory]
    [InlineData("2026-01-01", "2026-01-01", 14, 0)]
    [InlineData("2026-01-01", "2026-01-15", 14, 0)]
    [InlineData("2026-01-01", "2026-01-16", 14, 1)]
    [InlineData("2024-02-28", "2024-03-01", 0, 2)] // over a leap day
    [InlineData("2026-02-28", "2026-03-01", 0, 1)]
    [InlineData("2026-01-02", "2026-01-01", 0, 0)]
    public void Storage_is_charged_by_the_day_past_the_free_ones(string ready, string left, int free, int days) =>
        Assert.Equal(days, StorageDays.Charged(Day(ready), Day(left), free));

    [Fact]
    public void Free_days_are_not_below_zero() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => StorageDays.Charged(Day("2026-01-01"), Day("2026-01-02"), -1));

    private static DateOnly Day(string text) => DateOnly.ParseExact(text, "yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
}
