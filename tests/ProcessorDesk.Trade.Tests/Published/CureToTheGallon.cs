using ProcessorDesk.Trade.Curing;
using Xunit;
using static ProcessorDesk.Trade.Tests.Curing.Cure;

namespace ProcessorDesk.Trade.Tests.Published;

/// <summary>
/// Source: as quoted, 4.2 oz of a 6.25 % cure to a US gallon of water (8.345 lb), 10 % pick-up, "about 200 ppm". By the rule, which
/// divides by all that is in the pickle, it is 190.6; on the water alone it would be 196.6.
/// </summary>
public sealed class CureToTheGallon
{
    private const decimal Water = 8.345m;

    private static CureAmount Dose => CureAmount.Of("Cure", 4.2m, WeightUnit.Ounce, Pink, Proportion.Zero);

    [Fact]
    public void With_the_cure_in_the_pickle_it_is_190_6_ppm()
    {
        var pickle = Water + 4.2m / 16m;
        Assert.Equal(190.6m, decimal.Round(4.2m * 0.0625m * 0.10m / (pickle * 16m) * 1_000_000m, 1));

        var check = IngoingCure.Check(Pickled(CureMethod.ImmersionPickup, pickle, 10m, Dose));

        Assert.Equal(190.6m, decimal.Round(check.NitritePpm, 1));
        Assert.True(check.Meets);
    }

    [Fact]
    public void On_the_water_alone_it_would_be_196_6_ppm()
    {
        Assert.Equal(196.6m, decimal.Round(4.2m * 0.0625m * 0.10m / (Water * 16m) * 1_000_000m, 1));
        Assert.Equal(196.6m, decimal.Round(IngoingCure.Check(Pickled(CureMethod.ImmersionPickup, Water, 10m, Dose)).NitritePpm, 1));
    }
}
