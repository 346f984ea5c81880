using ProcessorDesk.Trade.Yields;
using Xunit;

namespace ProcessorDesk.Trade.Tests.Published;

/// <summary>Source: a food-cost textbook's butcher's test of a lamb loin, as quoted (B): 12 lb at $6.65 a pound.</summary>
public sealed class FoodCostTextbook
{
    private static readonly YieldTest s_loin = new(
        Weight.FromPounds(12m),
        6.65m,
        [
            new("fat", Weight.FromPounds(3m), 0m),
            new("kidneys", Weight.FromPounds(1m), 6.10m),
            new("flanks", WeightText.Parse("1-8", WeightUnit.Pound).Result, 4.60m),
            new("loss in cutting", Weight.FromOunces(8m), 0m),
        ],
        Weight.FromPounds(6m));

    [Fact]
    public void The_loin_costs_what_the_book_says()
    {
        Assert.Empty(s_loin.Findings());
        Assert.Equal(79.80m, s_loin.PurchaseCost.ToDecimal());
        Assert.Equal(66.80m, s_loin.UsableValue.ToDecimal());
        Assert.Equal("11.13", s_loin.CostPerUsablePound.ToDecimal().ToString("0.00", System.Globalization.CultureInfo.InvariantCulture));
        Assert.Equal("1.67", s_loin.CostFactor.ToDecimal().ToString("0.00", System.Globalization.CultureInfo.InvariantCulture));
        Assert.Equal("3.48", s_loin.PortionCost(Weight.FromOunces(5m)).ToDecimal().ToString("0.00", System.Globalization.CultureInfo.InvariantCulture));
        Assert.Equal(Ratio.Of(1, 2), s_loin.Yield);
        Assert.Equal(Ratio.Zero, s_loin.Loss);
    }

    [Fact]
    public void Nothing_is_rounded_on_the_way()
    {
        Assert.Equal(Ratio.Of(6680, 600), s_loin.CostPerUsablePound);
        Assert.Equal(Ratio.Of(6680, 600 * 665) * Ratio.Of(100, 1), s_loin.CostFactor);
    }

    [Fact]
    public void The_working_reads_like_the_page_of_the_book() =>
        Assert.Equal(
            [
                "bought: 12 lb × $6.65 = $79.80",
                "less fat: 3 lb × $0.00 = $0.00",
                "less kidneys: 1 lb × $6.10 = $6.10",
                "less flanks: 1.5 lb × $4.60 = $6.90",
                "less loss in cutting: 0.5 lb × $0.00 = $0.00",
                "left for 6 lb usable: $66.80",
                "$66.80 ÷ 6 lb = $11.1333 a usable pound",
                "$11.1333 ÷ $6.65 = cost factor 1.6742",
                "6 lb ÷ 12 lb = yield 50.0 %",
            ],
            s_loin.Working());
}
