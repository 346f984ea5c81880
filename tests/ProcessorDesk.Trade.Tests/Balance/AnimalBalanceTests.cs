using FsCheck.Xunit;
using ProcessorDesk.Trade.Balance;
using ProcessorDesk.Trade.Yields;
using Xunit;

namespace ProcessorDesk.Trade.Tests.Balance;

[Properties(MaxTest = 1000, Arbitrary = [typeof(Sizes)])]
public sealed class AnimalBalanceTests
{
    private static readonly ScaleDivision s_hundredth = ScaleDivision.HundredthPound;
    private static readonly Proportion s_two = Proportion.FromPercent(2m);

    [Theory]
    [InlineData("73.50", "1.50", false)] // just the 2 % of 75 lb
    [InlineData("73.49", "1.51", true)]
    [InlineData("75.00", "0.00", false)]
    [InlineData("76.50", "-1.50", false)]
    [InlineData("76.51", "-1.51", true)]
    [InlineData("0.00", "75.00", true)]
    public void What_is_unaccounted_for_is_flagged_over_the_tolerance_either_way(string weighed, string rest, bool flagged)
    {
        var balance = AnimalBalance.Measured(Pounds("75"), [new(BalancePart.Lean, Pounds(weighed))], s_two, s_hundredth);

        Assert.Equal(rest, s_hundredth.PrintFigure(balance.Rest));
        Assert.Equal(flagged, balance.IsFlagged);
    }

    [Fact]
    public void A_flag_says_how_much_is_allowed_and_what_to_do()
    {
        var missing = AnimalBalance.Measured(Pounds("75"), [new(BalancePart.Lean, Pounds("70"))], s_two, s_hundredth).Findings.Single();
        var over = AnimalBalance.Measured(Pounds("75"), [new(BalancePart.Lean, Pounds("80"))], s_two, s_hundredth).Findings.Single();

        Assert.Equal("5.00 lb of 75.00 lb is not accounted for; 2 % is allowed. Look for a weight not booked while the animal is still on the table.", missing.Text);
        Assert.Equal(("5.00 lb", "1.50 lb"), (missing.Found, missing.Allowed));
        Assert.Equal("5.00 lb more came out than the 75.00 lb that went in; 2 % is allowed for wash water and scales. "
            + "Look for a weight booked twice or to the wrong animal.", over.Text);
    }

    [Fact]
    public void A_whole_animal_is_followed_from_the_door_to_the_table()
    {
        var door = AnimalBalance.Measured(Pounds("128.5"), [new(BalancePart.Hanging, Pounds("96.2")), new(BalancePart.HideHeadFeet, Pounds("31.1"))], s_two, s_hundredth);
        var table = AnimalBalance.Measured(
            Pounds("96.2"),
            [
                new(BalancePart.Shrink, Pounds("1.6")), new(BalancePart.Cuts, Pounds("11.84")), new(BalancePart.Lean, Pounds("46.06")),
                new(BalancePart.Fat, Pounds("4.2")), new(BalancePart.Bone, Pounds("27.5")), new(BalancePart.Discard, Pounds("4.1")),
                new(BalancePart.LeftInMachines, Pounds("0.3")),
            ],
            s_two, s_hundredth);

        Assert.Equal(128.5m - 96.2m - 31.1m, s_hundredth.Figure(door.Rest));
        Assert.Equal(96.2m - (1.6m + 11.84m + 46.06m + 4.2m + 27.5m + 4.1m + 0.3m), s_hundredth.Figure(table.Rest));
        Assert.False(door.IsFlagged || table.IsFlagged);
    }

    [Fact]
    public void Of_most_deer_bone_and_trim_are_the_difference()
    {
        var meat = Forecasting.Forecast(Species.WhiteTailDeer, CarcassState.Hanging, CarcassState.Boneless, Pounds("96.2"));

        var balance = AnimalBalance.ByDifference(
            Pounds("96.2"), [new(BalancePart.Cuts, Pounds("11.84")), new(BalancePart.Lean, Pounds("46.06"))], meat, s_two, s_hundredth);

        Assert.True(balance.IsByDifference);
        Assert.Equal(96.2m - 11.84m - 46.06m, s_hundredth.Figure(balance.Rest));
        Assert.False(balance.IsFlagged);
    }

    [Theory]
    [InlineData("45.20", true)] // 0.47 × 96.2 = 45.214, printed 45.21
    [InlineData("45.21", false)]
    [InlineData("64.45", false)] // 0.67 × 96.2 = 64.454
    [InlineData("64.46", true)]
    public void By_difference_only_meat_past_the_published_range_is_flagged(string lean, bool flagged)
    {
        var meat = Forecasting.Forecast(Species.WhiteTailDeer, CarcassState.Hanging, CarcassState.Boneless, Pounds("96.2"));

        var balance = AnimalBalance.ByDifference(Pounds("96.2"), [new(BalancePart.Lean, Pounds(lean))], meat, s_two, s_hundredth);

        Assert.Equal(flagged, balance.IsFlagged);
        Assert.All(balance.Findings, finding => Assert.Equal((meat!.Source, "45.21 to 64.45 lb"), (finding.Source, finding.Allowed)));
    }

    [Fact]
    public void Without_a_published_range_only_too_much_is_flagged()
    {
        Assert.False(AnimalBalance.ByDifference(Pounds("50"), [new(BalancePart.Lean, Pounds("50.9"))], null, s_two, s_hundredth).IsFlagged);
        Assert.True(AnimalBalance.ByDifference(Pounds("50"), [new(BalancePart.Lean, Pounds("51.01"))], null, s_two, s_hundredth).IsFlagged);
    }

    [Property]
    public void Start_is_lines_and_rest_as_printed(ToSplit split, Weight[] weights)
    {
        var lines = weights.Select(weight => new BalanceLine(BalancePart.Lean, weight)).ToList();

        var balance = AnimalBalance.Measured(split.Total, lines, s_two, split.Division);

        Assert.Equal(split.Division.Figure(split.Total), balance.Lines.Sum(line => split.Division.Figure(line.Weight)) + split.Division.Figure(balance.Rest));
        Assert.Equal(Math.Abs(balance.Rest.Milligrams) > s_two.ToRatio().Times(balance.Start).Milligrams, balance.IsFlagged);
    }

    private static Weight Pounds(string text) => WeightText.Parse(text, WeightUnit.Pound).Result;
}
