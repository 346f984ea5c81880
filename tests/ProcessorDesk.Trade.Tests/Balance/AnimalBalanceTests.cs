using FsCheck.Xunit;
using ProcessorDesk.Trade.Balance;
using ProcessorDesk.Trade.Yields;
using Xunit;

namespace ProcessorDesk.Trade.Tests.Balance;

[Properties(MaxTest = 1000, Arbitrary = [typeof(Sizes), typeof(OwnersSharesTests)])]
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

    [Fact]
    public void What_was_thrown_away_is_added_by_its_reason()
    {
        var balance = AnimalBalance.Measured(
            Pounds("75"),
            [
                new(BalancePart.Lean, Pounds("66")), new(BalancePart.Discard, Pounds("2.4"), DiscardReason.ShotDamage),
                new(BalancePart.Discard, Pounds("0.35"), DiscardReason.Glands), new(BalancePart.Discard, Pounds("1.1"), DiscardReason.ShotDamage),
                new(BalancePart.Discard, Pounds("0.2")), new(BalancePart.Bone, Pounds("4")),
            ],
            s_two, s_hundredth);

        Assert.Equal(
            [(DiscardReason.ShotDamage, 3.5m), (DiscardReason.Glands, 0.35m), ((DiscardReason?)null, 0.2m)],
            balance.Discards.Select(line => (line.Reason, s_hundredth.Figure(line.Weight))));
        Assert.Equal(75m - 66m - 3.5m - 0.35m - 0.2m - 4m, s_hundredth.Figure(balance.Rest));
    }

    [Fact]
    public void Only_what_is_thrown_away_has_a_reason() =>
        Assert.Throws<ArgumentException>(() =>
            AnimalBalance.Measured(Pounds("75"), [new(BalancePart.Bone, Pounds("4"), DiscardReason.Spoilage)], s_two, s_hundredth));

    /// <summary>Meat that came in iced: it weighs more than it did, drips away again, and a pound and a half stays in the machines.</summary>
    [Fact]
    public void From_lug_to_mixer_drip_and_what_stays_in_the_machines_are_lines_of_their_own()
    {
        var balance = AnimalBalance.Measured(
            Pounds("46.06"),
            [new(BalancePart.ThawAndDrip, Pounds("0.62")), new(BalancePart.IntoMix, Pounds("43.9")), new(BalancePart.LeftInMachines, Pounds("1.5"))],
            s_two, s_hundredth);

        Assert.Equal(46.06m - 0.62m - 43.9m - 1.5m, s_hundredth.Figure(balance.Rest));
        Assert.False(balance.IsFlagged);
    }

    /// <summary>A carcass washed late weighs 0.4 lb more chilled than hot; that is a shrink below zero and no fault.</summary>
    [Fact]
    public void Wash_water_is_a_shrink_below_zero()
    {
        var balance = AnimalBalance.Measured(
            Pounds("75"), [new(BalancePart.Shrink, -Pounds("0.4")), new(BalancePart.Cuts, Pounds("40")), new(BalancePart.Bone, Pounds("35"))], s_two, s_hundredth);

        Assert.Equal(75m + 0.4m - 40m - 35m, s_hundredth.Figure(balance.Rest));
        Assert.False(balance.IsFlagged);
    }

    [Fact]
    public void A_carcass_is_its_sides_and_each_side_goes_on_from_its_own_weight()
    {
        var whole = AnimalBalance.Measured(
            Pounds("612"), [new(BalancePart.SideOrQuarter, Pounds("307.5")), new(BalancePart.SideOrQuarter, Pounds("303"))], s_two, s_hundredth);
        var left = AnimalBalance.Measured(
            whole.Lines[0].Weight, [new(BalancePart.Cuts, Pounds("150")), new(BalancePart.Lean, Pounds("60")), new(BalancePart.Bone, Pounds("90"))], s_two, s_hundredth);

        Assert.Equal(612m - 307.5m - 303m, s_hundredth.Figure(whole.Rest));
        Assert.Equal(307.5m - 150m - 60m - 90m, s_hundredth.Figure(left.Rest));
        Assert.False(whole.IsFlagged);
        Assert.True(left.IsFlagged); // 7.5 of 307.5 lb is 2.4 %
    }

    [Fact]
    public void A_species_has_a_tolerance_of_its_own_where_the_shop_set_one()
    {
        var shop = new BalanceTolerances(s_two, new Dictionary<Species, Proportion> { [Species.WhiteTailDeer] = Proportion.FromPercent(5m) });

        Assert.Equal(Proportion.FromPercent(5m), shop.For(Species.WhiteTailDeer));
        Assert.Equal(s_two, shop.For(Species.Beef));
        Assert.Equal(Proportion.FromPercent(5m), shop.For([Species.Beef, Species.WhiteTailDeer]));
        Assert.Equal(s_two, BalanceTolerances.Same(s_two).For(Species.WhiteTailDeer));
    }

    [Fact]
    public void Game_is_usually_weighed_for_its_meat_alone() =>
        Assert.Equal(
            [Species.WhiteTailDeer, Species.MuleDeer, Species.Elk, Species.Moose, Species.Pronghorn, Species.Bear, Species.WildBoar],
            Enum.GetValues<Species>().Where(AnimalBalance.IsUsuallyByDifference));

    /// <summary>Just the tolerance is never past it, whatever keeping pounds in whole milligrams does to the last digit.</summary>
    [Property]
    public void Just_the_tolerance_passes_and_a_division_more_does_not(short count)
    {
        var start = 50L * (Math.Abs((int)count) + 1); // 2 % of it is a whole count
        var balance = (long rest) => AnimalBalance.Measured(
            s_hundredth.FromCount(start), [new(BalancePart.Lean, s_hundredth.FromCount(start - rest))], s_two, s_hundredth);

        Assert.False(balance(start / 50).IsFlagged);
        Assert.True(balance(start / 50 + 1).IsFlagged);
        Assert.False(balance(-start / 50).IsFlagged);
        Assert.True(balance(-start / 50 - 1).IsFlagged);
    }

    [Property]
    public void Owners_balances_sum_to_the_animals_line_by_line(OwnersShares shares, ToSplit split, Weight[] weights)
    {
        if (!shares.Unshared.IsZero)
            return;
        var whole = AnimalBalance.Measured(
            split.Total, [.. weights.Select((weight, i) => new BalanceLine(BalancePart.Lean, i == 0 ? -weight : weight))], s_two, split.Division);

        var parts = whole.Divide(shares);

        Assert.Equal(split.Division.Figure(whole.Start), parts.Sum(part => split.Division.Figure(part.Start)));
        Assert.Equal(split.Division.Figure(whole.Rest), parts.Sum(part => split.Division.Figure(part.Rest)));
        for (var i = 0; i < whole.Lines.Count; i++)
            Assert.Equal(split.Division.Figure(whole.Lines[i].Weight), parts.Sum(part => split.Division.Figure(part.Lines[i].Weight)));
        Assert.All(parts, part => Assert.Equal(
            split.Division.Figure(part.Start), part.Lines.Sum(line => split.Division.Figure(line.Weight)) + split.Division.Figure(part.Rest)));
    }

    [Property]
    public void Start_is_lines_and_rest_as_printed(ToSplit split, Weight[] weights)
    {
        var lines = weights.Select(weight => new BalanceLine(BalancePart.Lean, weight)).ToList();

        var balance = AnimalBalance.Measured(split.Total, lines, s_two, split.Division);

        Assert.Equal(split.Division.Figure(split.Total), balance.Lines.Sum(line => split.Division.Figure(line.Weight)) + split.Division.Figure(balance.Rest));
        Assert.Equal(Math.Abs(split.Division.CountOf(balance.Rest)) > 0.02m * split.Division.CountOf(split.Total), balance.IsFlagged);
    }

    private static Weight Pounds(string text) => WeightText.Parse(text, WeightUnit.Pound).Result;
}
