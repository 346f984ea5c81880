using FsCheck.Xunit;
using ProcessorDesk.Trade.Grinding;
using Xunit;

namespace ProcessorDesk.Trade.Tests.Grinding;

/// <summary>What the split promises, over thousands of made-up grinds.</summary>
[Properties(MaxTest = 2000, Arbitrary = [typeof(SplitCases)])]
public sealed class SplitPromises
{
    [Property]
    public void The_leans_sum_in_milligrams_and_as_printed(SplitCase grind) =>
        Grind.AddsUp(grind.Split(), grind.Division);

    [Property]
    public void Every_figure_is_that_of_the_split_by_the_book(SplitCase grind)
    {
        var counts = grind.Split().Allotments.Select(made =>
            new[] { made.Lean, made.AddedFat, made.MeatBlock, made.Green, made.Finished }.Select(grind.Division.CountOf));

        Assert.Equal(SplitByTheBook.Split(grind), counts);
    }

    [Property]
    public void Nothing_is_ever_negative(SplitCase grind) =>
        Assert.All(grind.Split().Allotments, allotment => Assert.All(
            new[]
            {
                allotment.Lean, allotment.AddedFat, allotment.MeatBlock, allotment.Green, allotment.FinishedLow,
                allotment.Finished, allotment.FinishedHigh,
            },
            weight => Assert.False(weight.IsNegative)));

    [Property]
    public void The_asks_come_back_in_their_order_with_at_most_the_plain_ground_behind(SplitCase grind)
    {
        var asks = grind.Split().Allotments.Select(allotment => allotment.Ask).ToList();

        Assert.Equal(grind.Asks, asks.Take(grind.Asks.Count));
        Assert.InRange(asks.Count - grind.Asks.Count, 0, 1);
        if (grind.Asks.All(ask => ask.Kind != AskKind.Rest))
            Assert.Same(Grind.PlainGround, asks[^1]);
    }

    [Property]
    public void The_same_grind_is_split_the_same_way_again(SplitCase grind) =>
        Assert.Equal(Figures(grind.Split()), Figures(grind.Split()));

    [Property]
    public void An_ask_never_feels_the_asks_after_it(SplitCase grind)
    {
        var whole = grind.Split();
        for (var count = 0; count < grind.Asks.Count; count++)
        {
            if (grind.Asks[count].Kind == AskKind.Rest)
                continue;
            var shortened = (grind with { Asks = [.. grind.Asks.Take(count + 1)] }).Split();
            Assert.Equal(Printed(whole, count), Printed(shortened, count));
        }

        decimal Printed(GrindSplit split, int ask) => grind.Division.Figure(split.Allotments[ask].Lean);
    }

    [Property]
    public void Nobody_gets_more_than_was_asked_beyond_half_a_division(SplitCase grind)
    {
        var split = grind.Split();
        foreach (var allotment in split.Allotments)
        {
            var lean = grind.Division.Figure(allotment.Lean);
            var ask = allotment.Ask;
            var half = grind.Division.Step / 2m;
            var most = ask.Kind switch
            {
                AskKind.OwnLean => Figure(ask.Amount),
                AskKind.Finished => LeanBehind(Figure(ask.Amount), ask.Blend),
                AskKind.Percent => Figure(split.Lean) * ask.Percent.Percent / 100m,
                AskKind.Rest => Figure(split.Lean),
            };
            Assert.True(lean <= most + half, $"{lean} of {most}");
        }

        decimal Figure(Weight weight) => grind.Division.Figure(weight);
    }

    [Property]
    public void What_is_made_is_no_less_than_the_smallest_run_and_a_whole_number_of_steps_within_rounding(SplitCase grind)
    {
        foreach (var allotment in grind.Split().Allotments.Where(made => Figure(made.Lean) > 0m && made.Ask != Grind.PlainGround))
        {
            var blend = allotment.Ask.Blend;
            var green = Figure(allotment.Green);
            var rounding = grind.Division.Step * (1m + Additions(blend) / 2m + (1m + Additions(blend)) / blend.LeanShare.Percent * 50m);
            Assert.True(green >= Figure(blend.SmallestRun) - rounding);
            if (blend.Step.IsZero)
                continue;
            var beside = green % Figure(blend.Step);
            Assert.True(Math.Min(beside, Figure(blend.Step) - beside) <= rounding, $"{green} in steps of {Figure(blend.Step)}");
        }

        decimal Figure(Weight weight) => grind.Division.Figure(weight);
    }

    [Property]
    public void Each_printed_figure_follows_from_the_printed_figure_before_it(SplitCase grind)
    {
        foreach (var made in grind.Split().Allotments)
        {
            var blend = made.Ask.Blend;
            var share = blend.LeanShare.Percent / 100m;
            var lean = Figure(made.Lean);

            Assert.Equal(Nearest(lean * (1m - share) / share), Figure(made.AddedFat));
            Assert.Equal(lean + Figure(made.AddedFat), Figure(made.MeatBlock));
            Assert.Equal(grind.Division.Round(made.MeatBlock), made.MeatBlock);
            Assert.Equal(Nearest(Figure(made.MeatBlock) * (1m + Additions(blend))), Figure(made.Green));
            Assert.Equal(Nearest(Figure(made.Green) * (1m - blend.Loss.Percent / 100m)), Figure(made.Finished));
            Assert.True(made.FinishedLow <= made.Finished && made.Finished <= made.FinishedHigh);
        }

        decimal Figure(Weight weight) => grind.Division.Figure(weight);

        decimal Nearest(decimal figure) =>
            decimal.Round(figure / grind.Division.Step, 0, MidpointRounding.AwayFromZero) * grind.Division.Step;
    }

    [Property]
    public void Whoever_gets_nothing_is_told_why(SplitCase grind) =>
        Assert.All(grind.Split().Allotments.Take(grind.Asks.Count).Where(made => made.Lean.IsZero), made => Assert.NotEmpty(made.Reasons));

    [Property]
    public void Whoever_gets_less_than_asked_is_told_why(SplitCase grind)
    {
        foreach (var allotment in grind.Split().Allotments.Where(made => made.Ask.Kind == AskKind.OwnLean && made.Reasons.Count == 0))
            Assert.Equal(grind.Division.Figure(allotment.Ask.Amount), grind.Division.Figure(allotment.Lean));
    }

    private static decimal LeanBehind(decimal finished, GrindBlend blend) =>
        finished * blend.LeanShare.Percent / 100m / ((1m - blend.Loss.Percent / 100m) * (1m + Additions(blend)));

    private static decimal Additions(GrindBlend blend) => blend.Additions.ToDecimal();

    private static IEnumerable<object> Figures(GrindSplit split) => split.Allotments.SelectMany(made => new object[]
    {
        made.Lean, made.AddedFat, made.MeatBlock, made.Green, made.Finished, string.Join('|', made.Reasons),
    });
}
