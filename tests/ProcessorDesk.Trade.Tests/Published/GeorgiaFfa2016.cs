using ProcessorDesk.Trade.Blending;
using Xunit;

namespace ProcessorDesk.Trade.Tests.Published;

/// <summary>Source: Georgia FFA state meat problem 2016, and exercises of the same kind, worked by arithmetic.</summary>
public sealed class GeorgiaFfa2016
{
    private static readonly ScaleDivision TenThousandth = ScaleDivision.Of(WeightUnit.Pound, 0.0001m);

    private static Proportion Percent(decimal percent) => Proportion.FromPercent(percent);

    [Fact]
    public void Fats_of_23_and_70_percent_to_28_in_500_lb()
    {
        var square = new LeanFatSquare(Percent(23m), Percent(70m), Percent(28m));
        var parts = square.PartsOf(Weight.FromPounds(500m), TenThousandth);

        Assert.Equal(53.1915m, decimal.Round(500m * (28m - 23m) / (70m - 23m), 4));
        Assert.Equal((446.8085m, 53.1915m), (TenThousandth.Figure(parts.Lean), TenThousandth.Figure(parts.Added)));
        Assert.Equal(Ratio.Of(5, 47), square.AddedShare);
    }

    /// <summary>At $1.78 and $1.56 a pound: (446.8085 × 1.78 + 53.1915 × 1.56) / 500 = 1.7566.</summary>
    [Fact]
    public void The_parts_cost_1_7566_a_pound()
    {
        Assert.Equal(1.7566m, decimal.Round((446.8085m * 1.78m + 53.1915m * 1.56m) / 500m, 4));

        var cost = new LeanFatSquare(Percent(23m), Percent(70m), Percent(28m)).DollarsPerPound(PricePerPound.FromCents(178), PricePerPound.FromCents(156));

        Assert.Equal(1.7566m, decimal.Round(cost.ToDecimal(), 4));
    }

    [Fact]
    public void Fats_of_10_and_25_percent_to_20_in_1_000_lb()
    {
        var parts = new LeanFatSquare(Percent(10m), Percent(25m), Percent(20m)).PartsOf(Weight.FromPounds(1000m), TenThousandth);

        Assert.Equal((333.3333m, 666.6667m), (TenThousandth.Figure(parts.Lean), TenThousandth.Figure(parts.Added)));
    }

    [Fact]
    public void Trims_of_90_and_50_lean_to_80_lean_are_three_to_one()
    {
        var square = LeanFatSquare.OfLeanPoints(Percent(90m), Percent(50m), Percent(80m));

        Assert.Equal((Ratio.Of(3, 4), Ratio.Of(1, 4)), (square.LeanShare, square.AddedShare)); // (20 − 10) / (50 − 10)
        Assert.Equal(Percent(75m), square.LeanShareToPpm);
    }

    [Fact]
    public void Fats_of_31_and_60_percent_to_28_have_no_answer()
    {
        var square = new LeanFatSquare(Percent(31m), Percent(60m), Percent(28m));

        var finding = Assert.Single(square.Findings());
        Assert.Equal(
            "No mix comes down to 28 % fat: the leaner of the two has 31 % already. Trim it closer or add a leaner meat.",
            finding.Text);
        Assert.Equal(("Target", "28 %", "31 % to 60 %"), (finding.Field, finding.Found, finding.Allowed));
        Assert.Throws<InvalidOperationException>(() => square.AddedShare);
    }
}
