using ProcessorDesk.Trade.Yields;
using Xunit;

namespace ProcessorDesk.Trade.Tests.Published;

/// <summary>Source: Michigan State University, freezer beef: cuts of a carcass at 70 % take-home.</summary>
public sealed class MichiganStateFreezerBeef
{
    private static readonly ScaleDivision s_pound = ScaleDivision.Of(WeightUnit.Pound, 1m);

    [Theory]
    [InlineData(600, 420, new[] { 122, 38, 67, 92, 80, 21 })]
    [InlineData(700, 490, new[] { 142, 44, 78, 108, 93, 25 })]
    public void Each_group_is_its_share_of_the_take_home_rounded_half_up(int carcass, int home, int[] groups)
    {
        var takeHome = Proportion.FromPercent(70m).ToRatio().Times(Weight.FromPounds(carcass));
        var cutout = Cutout.All.Single(each => each.Id == "cutout-beef-groups");

        Assert.Equal(Weight.FromPounds(home), takeHome);
        Assert.Equal(groups, cutout.Groups.Select(group => (int)s_pound.Figure(cutout.ShareOf(group).Times(takeHome))));
    }

    [Fact]
    public void A_steer_of_1200_lb_at_63_percent_hangs_756() =>
        Assert.Equal("756 lb", s_pound.Print(Proportion.FromPercent(63m).ToRatio().Times(Weight.FromPounds(1200m))));

    [Fact]
    public void Half_a_beef_carcass_is_boneless_meat() =>
        Assert.Equal(Weight.FromPounds(300m),
            Forecasting.Forecast(Species.Beef, CarcassState.Hanging, CarcassState.Boneless, Weight.FromPounds(600m))!.Typical);
}
