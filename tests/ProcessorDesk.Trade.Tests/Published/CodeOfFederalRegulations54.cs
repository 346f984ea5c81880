using ProcessorDesk.Trade.Yields;
using Xunit;

namespace ProcessorDesk.Trade.Tests.Published;

/// <summary>Source: 7 CFR 54.105, the yield grade of a beef carcass, with its two worked examples.</summary>
public sealed class CodeOfFederalRegulations54
{
    [Theory]
    [InlineData(500, "0.3", "2.5", "11.5", "1.97", 1)]
    [InlineData(800, "0.4", "2.5", "16.0", "1.92", 1)]
    public void The_two_carcasses_of_the_rule(int pounds, string fat, string inside, string ribeye, string calculated, int grade)
    {
        var found = YieldGrade.Of(Figure(fat), Proportion.FromPercent(Figure(inside)), Weight.FromPounds(pounds), Figure(ribeye));

        Assert.Equal(Ratio.FromDecimal(Figure(calculated)), found.Calculated);
        Assert.Equal(grade, found.Grade);
        Assert.Equal(
            Figure(calculated),
            2.50m + 2.50m * Figure(fat) + 0.20m * Figure(inside) + 0.0038m * pounds - 0.32m * Figure(ribeye));
    }

    [Fact]
    public void The_working_is_the_rule_line_by_line() =>
        Assert.Equal(
            [
                "2.50 to start from",
                "+ 2.50 × 0.3 in of fat over the ribeye = 0.75",
                "+ 0.20 × 2.5 % kidney, pelvic and heart fat = 0.5",
                "+ 0.0038 × 500 lb hot carcass = 1.9",
                "− 0.32 × 11.5 in² of ribeye = 3.68",
                "together 1.97; the fraction is dropped: yield grade 1",
            ],
            YieldGrade.Of(0.3m, Proportion.FromPercent(2.5m), Weight.FromPounds(500m), 11.5m).Working);

    private static decimal Figure(string text) => decimal.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
}
