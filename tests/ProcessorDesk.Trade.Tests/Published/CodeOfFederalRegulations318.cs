using ProcessorDesk.Trade.Formulas;
using Xunit;
using static ProcessorDesk.Trade.Tests.Formulas.Mixture;

namespace ProcessorDesk.Trade.Tests.Published;

/// <summary>Source: 9 CFR 318.22, added water = TW − (TP − (P − 1)) × 4, in percent, with P − 1 not below zero.</summary>
public sealed class CodeOfFederalRegulations318
{
    [Theory]
    [InlineData("58", "12.5", "2", "12")] // 58 − (12.5 − 1) × 4
    [InlineData("58", "12.5", "1", "8")] // 58 − 12.5 × 4
    [InlineData("58", "12.5", "0", "8")] // P − 1 counts as zero
    [InlineData("58", "12.5", "0.5", "8")]
    [InlineData("60", "15", "1.25", "1")] // 60 − (15 − 0.25) × 4
    [InlineData("40", "12.5", "0", "-10")]
    public void Added_water_by_analysis(string water, string protein, string otherProtein, string percent)
    {
        Assert.Equal(Figure(percent), Figure(water) - (Figure(protein) - Math.Max(0m, Figure(otherProtein) - 1m)) * 4m);

        var added = SausageWater.ByAnalysis(Percent(water), Percent(protein), Percent(otherProtein));

        Assert.Equal(Ratio.FromDecimal(Figure(percent) / 100m), added);
    }

    private static Proportion Percent(string figure) => Proportion.FromPercent(Figure(figure));
}
