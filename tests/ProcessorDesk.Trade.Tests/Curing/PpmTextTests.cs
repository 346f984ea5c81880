using ProcessorDesk.Trade.Curing;
using Xunit;
using static ProcessorDesk.Trade.Tests.Curing.Cure;

namespace ProcessorDesk.Trade.Tests.Curing;

public sealed class PpmTextTests
{
    [Theory]
    [InlineData("0", "0 ppm")]
    [InlineData("98.4", "98 ppm")]
    [InlineData("98.5", "99 ppm")]
    [InlineData("151.2499", "151 ppm")]
    [InlineData("151.25", "151.25 ppm")] // 5 ppm below the limit
    [InlineData("154.3", "154.30 ppm")]
    [InlineData("156.25", "156.25 ppm")]
    [InlineData("161.25", "161.25 ppm")] // 5 ppm above
    [InlineData("161.2501", "161 ppm")]
    [InlineData("12345.6", "12,346 ppm")]
    public void Figures_have_two_decimals_within_5_ppm_of_the_limit(string ppm, string text) =>
        Assert.Equal(text, PpmText.Print(Figure(ppm), CureLimits.ComminutedNitrite));

    [Fact]
    public void Each_limit_named_counts_and_without_one_figures_are_whole()
    {
        Assert.Equal("119.92 ppm", PpmText.Print(119.92m, CureLimits.ComminutedNitrite, CureLimits.KeepRefrigeratedLeast));
        Assert.Equal("156 ppm", PpmText.Print(156.25m));
    }

    [Theory]
    [InlineData("156.2504", "156.2504 ppm")]
    [InlineData("156.250001", "156.250001 ppm")]
    [InlineData("156.64", "156.64 ppm")]
    public void A_figure_past_the_limit_never_reads_like_the_limit(string ppm, string text) =>
        Assert.Equal(text, PpmText.PrintPast(Figure(ppm), CureLimits.ComminutedNitrite));

    [Theory]
    [InlineData("comminuted.nitrate", "1,718.75 ppm")]
    [InlineData("accelerator.salt", "546.875 ppm")]
    [InlineData("pickle.nitrite", "200 ppm")]
    public void A_limit_is_always_printed_exactly(string id, string text) => Assert.Equal(text, PpmText.Print(CureLimits.Find(id)));
}
