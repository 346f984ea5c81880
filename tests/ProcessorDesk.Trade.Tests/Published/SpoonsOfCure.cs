using ProcessorDesk.Trade.Curing;
using Xunit;
using static ProcessorDesk.Trade.Tests.Curing.Cure;

namespace ProcessorDesk.Trade.Tests.Published;

/// <summary>
/// Source: published tables give an ounce of cure as 4, 5 or 6 teaspoons, so that "1 teaspoon to 5 lb" of a 6.25 % cure is any of
/// 195, 156 or 130 ppm: why spoons are never used.
/// </summary>
public sealed class SpoonsOfCure
{
    [Theory]
    [InlineData(4, 195, false)]
    [InlineData(5, 156, true)]
    [InlineData(6, 130, true)]
    public void A_teaspoon_to_5_lb_is_three_different_doses(int spoonsToTheOunce, int partsPerMillion, bool meets)
    {
        var ounces = 1m / spoonsToTheOunce;
        Assert.Equal(partsPerMillion, decimal.Truncate(ounces * 0.0625m / 80m * 1_000_000m));

        var check = Check(Weight.FromPounds(5m), CureAmount.Of("Cure", ounces, WeightUnit.Ounce, Pink, Proportion.Zero));

        Assert.Equal(partsPerMillion, decimal.Truncate(check.NitritePpm));
        Assert.Equal(meets, check.Meets);
    }

    [Fact]
    public void The_caution_says_so() => Assert.Contains(CuringCautions.All, caution => caution.Text.Contains("Never use a spoon", StringComparison.Ordinal));
}
