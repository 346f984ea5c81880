using FsCheck.Xunit;
using ProcessorDesk.Trade.Process;
using Xunit;

namespace ProcessorDesk.Trade.Tests.Process;

/// <summary>Common practice, no source: the target is the shop's own.</summary>
[Properties(MaxTest = 1000, Arbitrary = [typeof(Sizes)])]
public sealed class DryingTests
{
    private static readonly Proportion s_third = Proportion.FromPercent(33m);

    /// <summary>Of 10 lb, 33 % is 3.3 lb: at 6.70 lb it is gone, at 6.71 it is 32.9 %.</summary>
    [Theory]
    [InlineData("6.70", ProcessVerdict.Meets, "33.0 %")]
    [InlineData("6.71", ProcessVerdict.DoesNotMeet, "32.9 %")]
    [InlineData("6.7001", ProcessVerdict.DoesNotMeet, "32.9 %")]
    [InlineData("10", ProcessVerdict.DoesNotMeet, "0.0 %")]
    [InlineData("10.1", ProcessVerdict.DoesNotMeet, "-1.0 %")]
    [InlineData("0", ProcessVerdict.Meets, "100.0 %")]
    public void Loss_is_held_against_the_target(string dried, ProcessVerdict verdict, string found)
    {
        var check = Drying.Check(Weight.FromPounds(10m), Weight.FromPounds(decimal.Parse(dried, System.Globalization.CultureInfo.InvariantCulture)), s_third);

        Assert.Equal(verdict, check.Verdict);
        if (verdict == ProcessVerdict.DoesNotMeet)
            Assert.Equal((found, "at least 33 %"), (Assert.Single(check.Findings).Found, check.Findings[0].Allowed));
        else
            Assert.Equal((found, "meets the target"), (check.Loss!.Value.PrintPercent(), check.Words));
    }

    [Fact]
    public void A_missing_weight_shows_nothing()
    {
        Assert.Equal(ProcessVerdict.NotShown, Drying.Check(null, Weight.FromPounds(1m), s_third).Verdict);
        Assert.Equal(ProcessVerdict.NotShown, Drying.Check(Weight.FromPounds(1m), null, s_third).Verdict);
        Assert.Null(Drying.Check(null, null, s_third).Loss);
    }

    [Fact]
    public void Impossible_arguments_are_slips()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Drying.Check(Weight.Zero, Weight.Zero, s_third));
        Assert.Throws<ArgumentOutOfRangeException>(() => Drying.Check(Weight.FromPounds(1m), Weight.FromMilligrams(-1), s_third));
        Assert.Throws<ArgumentOutOfRangeException>(() => Drying.Check(Weight.FromPounds(1m), Weight.FromPounds(1m), Proportion.Whole));
    }

    [Property]
    public void What_it_may_weigh_meets_and_a_milligram_more_does_not(Weight green, Proportion target)
    {
        if (green.IsZero || target >= Proportion.Whole)
            return;
        var most = Drying.DownTo(green, target);

        Assert.Equal(ProcessVerdict.Meets, Drying.Check(green, most, target).Verdict);
        Assert.Equal(ProcessVerdict.DoesNotMeet, Drying.Check(green, most + Weight.FromMilligrams(1), target).Verdict);
    }
}
