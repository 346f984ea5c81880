using ProcessorDesk.Trade.Blending;
using Xunit;

namespace ProcessorDesk.Trade.Tests.Published;

/// <summary>
/// Source: an algebra textbook's exercise, as quoted: beef of 75 % and pork of 60 % lean to at least 70 % lean, 150 lb, at the
/// least cost: 100 and 50 lb. The prices were not quoted; whatever they are, where beef is the dearer it is so.
/// </summary>
public sealed class AlgebraTextbook
{
    [Theory]
    [InlineData(450, 250)]
    [InlineData(301, 300)]
    [InlineData(1, 0)]
    public void Beef_and_pork_to_70_percent_lean_are_100_and_50_lb(int beef, int pork)
    {
        Assert.Equal(0.70m, (100m * 0.75m + 50m * 0.60m) / 150m);

        var blend = LeastCost.Find(Wanted(beef, pork)).Blend!;

        Assert.Equal([Ratio.Of(100, 1), Ratio.Of(50, 1)], blend.Parts.Select(part => part.Pounds));
        Assert.Equal([Weight.FromPounds(100m), Weight.FromPounds(50m)], blend.Parts.Select(part => part.Weight));
        Assert.Equal((Ratio.Of(30, 100), Ratio.Of(30, 100)), (blend.Fat, blend.WeighedFat));
        Assert.Equal(Ratio.Of(100 * beef + 50 * pork, 150 * 100), blend.CostPerPound);
        Assert.Empty(blend.Notes);
    }

    [Fact]
    public void Where_pork_is_the_dearer_it_is_all_beef() =>
        Assert.Equal([Ratio.Of(150, 1), Ratio.Zero], LeastCost.Find(Wanted(beef: 250, pork: 450)).Blend!.Parts.Select(part => part.Pounds));

    private static BlendWanted Wanted(int beef, int pork) => new(
        Weight.FromPounds(150m),
        ScaleDivision.HundredthPound,
        FatBand.LeanAtLeast(Proportion.FromPercent(70m)),
        [
            BlendMaterial.Free("Beef", Proportion.FromPercent(25m), PricePerPound.FromCents(beef)),
            BlendMaterial.Free("Pork", Proportion.FromPercent(40m), PricePerPound.FromCents(pork)),
        ]);
}
