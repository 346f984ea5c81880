using ProcessorDesk.Trade.Formulas;
using Xunit;
using static ProcessorDesk.Trade.Tests.Formulas.Mixture;

namespace ProcessorDesk.Trade.Tests.Published;

/// <summary>Source: as quoted in several texts: semi-dry sausage 3.1 : 1 of moisture to protein, dry sausage 1.9 : 1.</summary>
public sealed class MoistureToProteinAsQuoted
{
    [Theory]
    [InlineData("38", "20", Dryness.Dry)] // 1.9
    [InlineData("38.0001", "20", Dryness.SemiDry)]
    [InlineData("46.5", "15", Dryness.SemiDry)] // 3.1
    [InlineData("46.5001", "15", Dryness.Moist)]
    public void A_sausage_is_as_dry_as_its_moisture_to_protein(string moisture, string protein, Dryness dryness) =>
        Assert.Equal(dryness, MoistureToProtein.Of(Proportion.FromPercent(Figure(moisture)), Proportion.FromPercent(Figure(protein))));

    [Fact]
    public void Without_protein_there_is_no_ratio() =>
        Assert.Throws<DivideByZeroException>(() => MoistureToProtein.Of(Proportion.FromPercent(50m), Proportion.Zero));
}
