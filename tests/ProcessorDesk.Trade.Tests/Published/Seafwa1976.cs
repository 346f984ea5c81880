using ProcessorDesk.Trade.Yields;
using Xunit;

namespace ProcessorDesk.Trade.Tests.Published;

/// <summary>Source: SEAFWA 1976, 545 white-tailed deer.</summary>
public sealed class Seafwa1976
{
    private static readonly ScaleDivision s_tenth = ScaleDivision.Of(WeightUnit.Pound, 0.1m);

    [Theory]
    [InlineData(36, false, "140.9 lb", "107.6 lb")]
    [InlineData(26, true, "63.7 lb", "47.1 lb")]
    public void Published_lines_give_live_and_dressed_weight(int inches, bool fawn, string live, string dressed)
    {
        var estimate = HeartGirth.Estimate(inches, fawn);

        Assert.Null(estimate.Refusal);
        Assert.Equal(live, s_tenth.Print(estimate.Live!.Value));
        Assert.Equal(dressed, s_tenth.Print(estimate.Dressed!.Value));
    }

    [Theory]
    [InlineData("20", true)]
    [InlineData("50", true)]
    [InlineData("19.99", false)]
    [InlineData("50.01", false)]
    [InlineData("0", false)]
    public void The_lines_hold_only_inside_their_span(string inches, bool held)
    {
        var girth = decimal.Parse(inches, System.Globalization.CultureInfo.InvariantCulture);
        foreach (var fawn in (bool[])[true, false])
        {
            var estimate = HeartGirth.Estimate(girth, fawn);
            Assert.Equal(held, estimate.Refusal is null);
            Assert.Equal(held, estimate.Live is { IsPositive: true } && estimate.Dressed is { IsPositive: true });
        }
    }

    [Fact]
    public void The_working_is_the_published_line()
    {
        Assert.Equal(
            ["live: 6.5520 × 36 in − 95.0128 = 140.8592 lb", "field-dressed: 5.6037 × 36 in − 94.0982 = 107.635 lb"],
            HeartGirth.Estimate(36m, fawn: false).Working);
        Assert.Empty(HeartGirth.Estimate(51m, fawn: false).Working);
    }

    [Fact]
    public void A_girth_outside_says_what_was_found_and_what_is_allowed()
    {
        var refusal = HeartGirth.Estimate(12.5m, fawn: true).Refusal!;

        Assert.Equal(("12.5 in", "20 to 50 in", HeartGirth.Source), (refusal.Found, refusal.Allowed, refusal.Source));
    }
}
