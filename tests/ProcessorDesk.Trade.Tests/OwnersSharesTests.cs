using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Xunit;

namespace ProcessorDesk.Trade.Tests;

[Properties(MaxTest = 1000, Arbitrary = [typeof(Sizes), typeof(OwnersSharesTests)])]
public sealed class OwnersSharesTests
{
    private static readonly OwnersShares s_thirds = OwnersShares.Of([Ratio.Of(1, 3), Ratio.Of(1, 3), Ratio.Of(1, 3)]);

    /// <summary>One to six owners whose fractions come to one, or to less.</summary>
    public static Arbitrary<OwnersShares> Owners() =>
        (from parts in Gen.ArrayOf(Gen.Choose(0, 99), 6)
         from count in Gen.Choose(1, 6)
         from nobodys in Gen.Frequency((3, Gen.Constant(0)), (1, Gen.Choose(1, 99)))
         let owners = parts.Take(count).ToArray()
         let whole = owners.Sum() + nobodys
         select whole == 0 ? OwnersShares.Whole : OwnersShares.Of([.. owners.Select(part => Ratio.Of(part, whole))])).ToArbitrary();

    [Fact]
    public void A_hundred_dollars_in_thirds_is_a_cent_more_for_the_first() =>
        Assert.Equal([3334L, 3333L, 3333L], s_thirds.Divide(Money.FromDollars(100m)).Select(part => part.Cents));

    [Fact]
    public void A_credit_is_divided_as_the_charge_was() =>
        Assert.Equal([-3334L, -3333L, -3333L], s_thirds.Divide(Money.FromDollars(-100m)).Select(part => part.Cents));

    [Fact]
    public void A_beef_of_612_lb_in_a_half_and_two_quarters()
    {
        var shares = OwnersShares.Of([Ratio.Of(1, 2), Ratio.Of(1, 4), Ratio.Of(1, 4)]);

        Assert.Equal(["306.0", "153.0", "153.0"], Parts(shares, 612m));
        Assert.Equal(["306.5", "153.0", "153.0"], Parts(shares, 612.5m)); // 306.25, 153.125 and 153.125: the largest fraction rounds up
    }

    [Fact]
    public void What_is_nobodys_yet_stays_nobodys()
    {
        var half = OwnersShares.Of([Ratio.Of(1, 2)]);

        Assert.Equal(Ratio.Of(1, 2), half.Unshared);
        Assert.Equal(Money.FromCents(50), Assert.Single(half.Divide(Money.FromDollars(1m))));
        Assert.Equal(Ratio.Zero, s_thirds.Unshared);
    }

    [Fact]
    public void Fine_odd_fractions_need_no_common_denominator()
    {
        var odd = OwnersShares.Of([Ratio.Of(1, 9973), Ratio.Of(1, 9967), Ratio.Of(1, 9949), Ratio.Of(1, 9941), Ratio.Of(1, 9931), Ratio.Of(9000, 9929)]);

        Assert.Equal(9000m / 9929m, odd.Divide(Money.FromDollars(1_000_000m))[5].Dollars / 1_000_000m, 6);
    }

    [Fact]
    public void Fractions_come_to_one_at_most()
    {
        Assert.Throws<ArgumentException>(() => OwnersShares.Of([]));
        Assert.Throws<ArgumentException>(() => OwnersShares.Of([Ratio.Of(3, 4), Ratio.Of(1, 3)]));
        Assert.Throws<ArgumentException>(() => OwnersShares.Of([Ratio.Of(-1, 4), Ratio.One]));
    }

    [Property]
    public void Parts_of_a_weight_sum_to_it_to_the_milligram_and_as_printed(OwnersShares shares, ToSplit split)
    {
        if (!shares.Unshared.IsZero)
            return;
        var parts = shares.Divide(split.Total, split.Division);

        Assert.Equal(split.Total.Milligrams, parts.Sum(part => part.Milligrams));
        Assert.Equal(split.Division.Figure(split.Total), parts.Sum(split.Division.Figure));
    }

    [Property]
    public void Each_part_is_within_a_cent_of_its_fraction_and_together_they_are_the_amount(OwnersShares shares, Money whole)
    {
        var parts = shares.Divide(whole);

        Assert.All(parts.Zip(shares.Fractions), pair =>
            Assert.True((Ratio.Of(pair.First.Cents, 1) - pair.Second * Ratio.Of(whole.Cents, 1)) is var off && off < Ratio.One && off > Ratio.Of(-1, 1)));
        Assert.True(!shares.Unshared.IsZero || Money.Sum(parts) == whole);
        Assert.True(Money.Sum(parts) <= whole);
    }

    private static IEnumerable<string> Parts(OwnersShares shares, decimal pounds)
    {
        var half = ScaleDivision.Of(WeightUnit.Pound, 0.5m);
        return shares.Divide(Weight.FromPounds(pounds), half).Select(half.PrintFigure);
    }
}
