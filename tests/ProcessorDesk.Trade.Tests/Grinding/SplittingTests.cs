using ProcessorDesk.Trade.Grinding;
using Xunit;
using static ProcessorDesk.Trade.Tests.Grinding.Grind;

namespace ProcessorDesk.Trade.Tests.Grinding;

public sealed class SplittingTests
{
    [Fact]
    public void Without_a_rest_ask_the_plain_ground_takes_what_is_left()
    {
        var split = Split(30m, GrindAsk.OfLean("Ring", Lb(12m), Blend()));

        Assert.Equal([12m, 18m], split.Leans());
        Assert.Equal("Plain ground", split.Allotments[1].Ask.Name);
        Assert.True(split.IsAsAsked);
    }

    [Fact]
    public void Without_any_ask_everything_is_plain_ground()
    {
        Assert.Equal([30m], Split(30m).Leans());
    }

    [Fact]
    public void The_rest_is_served_last_wherever_it_stands()
    {
        var split = Split(30m, GrindAsk.OfRest("Sticks", Blend()), GrindAsk.OfLean("Ring", Lb(12m), Blend()));

        Assert.Equal([18m, 12m], split.Leans());
        Assert.Equal(2, split.Allotments.Count);
    }

    [Fact]
    public void Percent_is_of_all_the_lean_not_of_what_is_left()
    {
        var split = Split(
            40m,
            GrindAsk.OfPercent("Ring", Proportion.FromPercent(50m), Blend()),
            GrindAsk.OfPercent("Sticks", Proportion.FromPercent(25m), Blend()));

        Assert.Equal([20m, 10m, 10m], split.Leans());
    }

    [Fact]
    public void The_ask_before_is_served_first_and_the_one_cut_says_so()
    {
        var split = Split(30m, GrindAsk.OfLean("Ring", Lb(17.5m), Blend()), GrindAsk.OfLean("Sticks", Lb(20m), Blend()));

        Assert.Equal([17.5m, 12.5m, 0m], split.Leans());
        Assert.Equal(["Asked for 20.00 lb; 12.50 lb of lean was left."], split.Allotments[1].Reasons);
    }

    [Fact]
    public void A_finished_weight_that_cannot_be_met_names_the_lean_it_takes()
    {
        var split = Split(10m, GrindAsk.OfFinished("Summer", Lb(20m), Blend(lean: 80m, additions: 3.5m, loss: 15m)));

        Assert.Equal([10m, 0m], split.Leans());
        Assert.Equal(
            ["Asked for 20.00 lb finished, which takes 18.19 lb of lean; 10.00 lb of lean was left."],
            split.Allotments[0].Reasons);
    }

    [Fact]
    public void Nothing_left_is_said_in_words()
    {
        var split = Split(
            10m,
            GrindAsk.OfLean("Ring", Lb(10m), Blend()),
            GrindAsk.OfPercent("Sticks", Proportion.FromPercent(30m), Blend()),
            GrindAsk.OfRest("Patties", Blend()));

        Assert.Equal(["Asked for 30 %, which is 3.00 lb of lean; no lean was left."], split.Allotments[1].Reasons);
        Assert.Equal(["No lean was left."], split.Allotments[2].Reasons);
        Assert.Equal(3, split.Allotments.Count);
    }

    [Fact]
    public void Below_the_smallest_run_an_ask_is_dropped_and_its_lean_goes_on()
    {
        var split = Split(
            30m,
            GrindAsk.OfLean("Sticks", Lb(7m), Blend(lean: 70m, smallest: 10.01m)),
            GrindAsk.OfLean("Ring", Lb(28m), Blend()),
            GrindAsk.OfRest("Patties", Blend()));

        Assert.Equal([0m, 28m, 2m], split.Leans());
        Assert.Equal(["Dropped: 10.00 lb of mix is under the smallest run of 10.01 lb."], split.Allotments[0].Reasons);
        Assert.Equal(Weight.Zero, split.Allotments[0].Green);
    }

    [Fact]
    public void A_mix_that_prints_like_the_smallest_run_but_is_short_of_it_is_dropped()
    {
        var split = Split(30m, GrindAsk.OfFinished("Sticks", Lb(6.999m), Blend(loss: 30m, smallest: 10m)));

        Assert.Equal(["Dropped: the mix comes just short of the smallest run of 10.00 lb."], split.Allotments[0].Reasons);
    }

    [Theory]
    [InlineData("24.99", "20.00")]
    [InlineData("25.00", "25.00")] // five steps of 5 lb, although 5 lb in milligrams is a shade over 5 lb
    [InlineData("29.99", "25.00")]
    public void A_step_rounds_the_green_weight_down(string asked, string served)
    {
        var split = Split(40m, GrindAsk.OfLean("Sticks", Lb(Of(asked)), Blend(step: 5m)));

        Assert.Equal(Of(served), split.Leans()[0]);
        if (asked == served)
            Assert.Empty(split.Allotments[0].Reasons);
        else
            Assert.Equal([$"Mix rounded down from {asked} lb to {served} lb: it is made in steps of 5.00 lb."], split.Allotments[0].Reasons);
    }

    [Fact]
    public void The_smallest_run_is_tested_on_the_stepped_green_before_it_is_rounded_again()
    {
        var blend = Blend(lean: 70m, additions: 3m, smallest: 25m, step: 12.5m);
        var split = Split(60m, GrindAsk.OfLean("Sticks", Lb(17.10m), blend));

        // 17.10 / 0.70 × 1.03 = 25.16 → 25.00 green → 25.00 / 1.03 × 0.70 = 16.990 lean
        Assert.Equal(16.99m, split.Leans()[0]);
        Assert.Equal(25.00m, Hundredth.Figure(split.Allotments[0].Green));
    }

    [Fact]
    public void Less_than_one_step_is_dropped()
    {
        var split = Split(40m, GrindAsk.OfLean("Sticks", Lb(12m), Blend(step: 12.5m)));

        Assert.Equal([0m, 40m], split.Leans());
        Assert.Equal(["Dropped: 12.00 lb of mix is less than one step of 12.50 lb."], split.Allotments[0].Reasons);
    }

    [Fact]
    public void A_lean_under_half_a_division_is_dropped_and_says_so()
    {
        var split = Split(40m, GrindAsk.OfLean("Ring", Lb(0.004m), Blend()), GrindAsk.OfPercent("Sticks", Proportion.FromPercent(0.0125m), Blend()));

        Assert.Equal([0m, 0.01m, 39.99m], split.Leans()); // 0.0125 % of 40 lb is half a division and rounds up
        Assert.Equal(["Dropped: its lean is less than a scale of 0.01 lb shows."], split.Allotments[0].Reasons);
        Assert.Empty(split.Allotments[1].Reasons);
    }

    [Fact]
    public void Cut_to_what_is_left_the_step_and_the_smallest_run_are_tested_again()
    {
        var split = Split(
            40m,
            GrindAsk.OfLean("Ring", Lb(28m), Blend()),
            GrindAsk.OfLean("Sticks", Lb(25m), Blend(smallest: 12m, step: 6m)),
            GrindAsk.OfLean("Patties", Lb(20m), Blend(smallest: 6m, step: 6m)));
        Assert.Equal([28m, 12m, 0m, 0m], split.Leans());

        split = Split(
            39m, GrindAsk.OfLean("Ring", Lb(28m), Blend()), GrindAsk.OfLean("Sticks", Lb(25m), Blend(smallest: 12m, step: 6m)));
        Assert.Equal([28m, 0m, 11m], split.Leans());
        Assert.Equal(
            ["Asked for 25.00 lb; 11.00 lb of lean was left.", "Dropped: 6.00 lb of mix is under the smallest run of 12.00 lb."],
            split.Allotments[1].Reasons);
    }

    [Fact]
    public void What_a_stepped_rest_leaves_goes_to_the_plain_ground()
    {
        var split = Split(40m, GrindAsk.OfRest("Sticks", Blend(step: 12.5m)));

        Assert.Equal([37.5m, 2.5m], split.Leans());
        Assert.Equal(["Takes the lean that is left over."], split.Allotments[1].Reasons);
    }

    [Fact]
    public void What_a_rest_below_its_smallest_run_leaves_goes_to_the_plain_ground()
    {
        Assert.Equal([0m, 4m], Split(4m, GrindAsk.OfRest("Sticks", Blend(smallest: 10m))).Leans());
    }

    [Fact]
    public void The_plain_ground_takes_less_than_its_own_smallest_run()
    {
        var plain = GrindAsk.OfRest("Plain ground", Blend(smallest: 10m, step: 5m));

        var split = Splitting.Split(Lb(3.21m), [], plain, Hundredth);

        Assert.Equal([3.21m], split.Leans());
    }

    [Fact]
    public void No_lean_gives_nothing_to_anybody()
    {
        var split = Split(0m, GrindAsk.OfLean("Ring", Lb(10m), Blend()), GrindAsk.OfPercent("Sticks", Proportion.Whole, Blend()));

        Assert.Equal([0m, 0m, 0m], split.Leans());
    }

    [Fact]
    public void A_half_division_as_keyed_rounds_up_although_its_milligrams_fall_short()
    {
        // 12.315 lb is 5,585,990.04 mg and kept as 5,585,990: as a count 1231.49999.
        Assert.Equal(12.32m, Split(40m, GrindAsk.OfLean("Ring", Lb(12.315m), Blend())).Leans()[0]);

        // 15.02 × 0.75 = 11.265
        Assert.Equal(11.27m, Split(40m, GrindAsk.OfFinished("Hot", Lb(15.02m), Blend(lean: 75m))).Leans()[0]);
    }

    [Fact]
    public void Odd_milligrams_of_the_measured_lean_never_go_to_one_that_was_dropped()
    {
        var lean = Weight.FromMilligrams(Lb(20m).Milligrams - 1);

        var split = Splitting.Split(lean, [GrindAsk.OfLean("Ring", Lb(20m), Blend())], PlainGround, Hundredth);

        Assert.Equal([lean, Weight.Zero], split.Allotments.Select(allotment => allotment.Lean));
    }

    [Fact]
    public void A_kilogram_shop_asked_in_pounds_is_served_all_the_same()
    {
        var division = ScaleDivision.Of(WeightUnit.Kilogram, 0.005m);

        var split = Splitting.Split(
            Weight.From(40m, WeightUnit.Kilogram), [GrindAsk.OfLean("Ring", Lb(25m), Blend(step: 5m))], PlainGround, division);

        Assert.Equal(11.340m, division.Figure(split.Allotments[0].Lean)); // 25 lb = 11.33980925 kg
        AddsUp(split, division);
    }

    [Fact]
    public void The_range_of_the_finished_weight_runs_from_the_most_lost_to_the_least()
    {
        var sticks = Blend() with
        {
            Loss = Proportion.FromPercent(30m),
            LossLow = Proportion.FromPercent(25m),
            LossHigh = Proportion.FromPercent(40m),
        };

        var allotment = Split(20m, GrindAsk.OfRest("Sticks", sticks)).Allotments[0];

        Assert.Equal(
            [12m, 14m, 15m],
            new[] { allotment.FinishedLow, allotment.Finished, allotment.FinishedHigh }.Select(Hundredth.Figure));
    }

    private static decimal Of(string figure) => decimal.Parse(figure, System.Globalization.CultureInfo.InvariantCulture);
}
