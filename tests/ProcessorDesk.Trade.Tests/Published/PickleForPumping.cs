using ProcessorDesk.Trade.Curing;
using Xunit;
using static ProcessorDesk.Trade.Tests.Curing.Cure;

namespace ProcessorDesk.Trade.Tests.Published;

/// <summary>
/// Source: an independent worked example, read at second hand: a pickle of water 1,000 g, salt 110 g, sugar 124 g and 32 g of a
/// cure at 5.88 %, pumped 10 %, has 148.63 ppm nitrite; salt in the pickle 11.07 %.
/// </summary>
public sealed class PickleForPumping
{
    private const decimal Pickle = 1000m + 110m + 124m + 32m;

    private static CureAmount Dose => CureAmount.Of("Cure", 32m, WeightUnit.Gram, Proportion.FromPercent(5.88m), Proportion.Zero);

    [Fact]
    public void The_nitrite_is_148_63_ppm_on_the_whole_pickle()
    {
        Assert.Equal(1266m, Pickle);
        Assert.Equal(148.63m, decimal.Round(32m * 0.0588m * 0.10m / Pickle * 1_000_000m, 2));

        var check = IngoingCure.Check(new CureQuestion(CureMethod.Pumped, [Dose]) { Pickle = Grams(Pickle), Pump = Proportion.FromPercent(10m) });

        Assert.Equal(148.63m, decimal.Round(check.NitritePpm, 2));
        Assert.True(check.Meets);
        Assert.Equal(["Cure: 32.0 g × 5.88 % = 1.8816 g nitrite", "nitrite × 10 % pump ÷ 1,266.0 g of pickle = 149 ppm"], check.Working);
    }

    [Fact]
    public void The_salt_in_the_pickle_is_11_07_percent_with_that_of_the_cure()
    {
        var salt = Weight.FromGrams(110m) + Dose.RestAsSalt; // 110 + 32 × 0.9412

        Assert.Equal(11.07m, decimal.Round((110m + 32m * 0.9412m) / Pickle * 100m, 2));
        Assert.Equal(11.07m, decimal.Round(salt.Grams / Pickle * 100m, 2));
    }
}
