using ProcessorDesk.Trade.Blending;
using Xunit;
using static ProcessorDesk.Trade.Tests.Blending.Mixer;

namespace ProcessorDesk.Trade.Tests.Blending;

public sealed class BlendClashTests
{
    /// <summary>The first is an exercise of trade.md's source for the square: 31 and 60 % to 28 have no answer.</summary>
    [Fact]
    public void A_target_below_the_leanest_names_it()
    {
        var finding = Assert.Single(Findings(Block(100m, 28m, 28m, Meat("Lean", 31m, 178), Meat("Fat", 60m, 156))));

        Assert.Equal("No mix keeps fat at most 28 %: the leanest comes to 31 % fat. Allow more fat or add a leaner meat.", finding.Text);
        Assert.Equal(("Fat.Most", "28 %", "31 % or more"), (finding.Field, finding.Found, finding.Allowed));
    }

    [Fact]
    public void A_target_above_the_fattest_names_it()
    {
        var finding = Assert.Single(Findings(Block(100m, 61m, 65m, Meat("Lean", 31m, 178), Meat("Fat", 60m, 156))));

        Assert.Equal("No mix keeps fat at least 61 %: the fattest comes to 60 % fat. Allow less fat or add a fatter one.", finding.Text);
        Assert.Equal(("Fat.Least", "60 % or less"), (finding.Field, finding.Allowed));
    }

    [Fact]
    public void Only_the_bounds_that_clash_are_named()
    {
        // 30 lb of 100 at 5 %, the rest at 30 % or more: 1.5 + 21 = 22.5 %.
        var findings = Findings(Block(
            100m, 10m, 20m, Meat("Lean", 5m, 400, onHand: 30m), Meat("Trim", 30m, 200, most: 80m), Meat("Fat", 60m, 100, most: 10m, onHand: 5m)));

        Assert.Equal(["Fat.Most", "Materials[0].OnHand"], findings.Select(finding => finding.Field));
        Assert.Equal(
            "No mix keeps fat at most 20 %; Lean 30.00 lb on hand, 30 % of the block: the leanest comes to 22.5 % fat. "
                + "Allow more fat, add a leaner meat, or ease one of the other bounds.",
            findings[0].Text);
        Assert.Equal("Part of the same clash: Lean 30.00 lb on hand, 30 % of the block.", findings[1].Text);
    }

    [Fact]
    public void A_fat_material_that_must_go_in_clashes_with_a_lean_target()
    {
        // 0.40 × 60 + 0.60 × 5 = 27 %
        var findings = Findings(Block(100m, 0m, 20m, Meat("Lean", 5m, 400), Meat("Fat", 60m, 100, least: 40m)));

        Assert.Equal(
            "No mix keeps fat at most 20 %; Fat at least 40 % of the block: the leanest comes to 27 % fat. "
                + "Allow more fat, add a leaner meat, or ease one of the other bounds.",
            findings[0].Text);
    }

    [Fact]
    public void Of_several_fat_materials_only_those_that_carry_it_over_are_named()
    {
        // 0.20 × 60 + 0.30 × 50 + 0.50 × 5 = 29.5 %; without either of the two it is 18.75 % at most.
        var findings = Findings(Block(
            100m, 0m, 22m, Meat("Lean", 5m, 400), Meat("Fat", 60m, 100, least: 20m), Meat("Belly", 50m, 200, least: 30m), Meat("Trim", 30m, 200, least: 1m)));

        Assert.Equal(["Fat.Most", "Materials[1].LeastShare", "Materials[2].LeastShare"], findings.Select(finding => finding.Field));
        Assert.Equal(
            "No mix keeps fat at most 22 %; Fat at least 20 % of the block; Belly at least 30 % of the block: the leanest comes to 29.5 % fat. "
                + "Allow more fat, add a leaner meat, or ease one of the other bounds.",
            findings[0].Text);
    }

    [Fact]
    public void A_reach_that_falls_between_two_figures_is_printed_on_the_far_side()
    {
        // (2.333 × 10 + 4.667 × 25) / 7 = 20.00071… %
        var findings = Findings(Block(7m, 0m, 20m, Meat("Lean", 10m, 400, onHand: 2.333m), Meat("Trim", 25m, 100)));

        Assert.Contains("the leanest comes to 20.0008 % fat", findings[0].Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Least_shares_over_the_whole_are_summed()
    {
        var findings = Findings(Block(
            100m, 0m, 30m, Meat("A", 5m, 400, least: 60m), Meat("B", 30m, 200, least: 50m), Meat("C", 30m, 200, least: 5m)));

        Assert.Equal(["Materials[0].LeastShare", "Materials[1].LeastShare"], findings.Select(finding => finding.Field));
        Assert.Equal(
            "No mix keeps A at least 60 % of the block; B at least 50 % of the block. "
                + "That is 110 % of the block, more than all of it: lower one of them.",
            findings[0].Text);
    }

    [Fact]
    public void Too_little_of_everything_is_summed()
    {
        var findings = Findings(Block(100m, 0m, 100m, Meat("A", 5m, 400, most: 30m), Meat("B", 30m, 200, onHand: 20m)));

        Assert.Equal(["Materials[0].MostShare", "Materials[1].OnHand"], findings.Select(finding => finding.Field));
        Assert.Equal(
            "No mix keeps A at most 30 % of the block; B 20.00 lb on hand, 20 % of the block. "
                + "That is only 50 % of the block: raise one of them, add a material, or make a smaller block.",
            findings[0].Text);
    }

    [Theory]
    [InlineData(30, null, "at most 30 % of the block", "MostShare")]
    [InlineData(100, 35, "35.00 lb on hand, 35 % of the block", "OnHand")]
    [InlineData(38, 35, "35.00 lb on hand, 35 % of the block", "OnHand")]
    public void A_least_over_the_most_of_one_material_is_named(int most, int? onHand, string words, string field)
    {
        var findings = Findings(Block(100m, 0m, 100m, Meat("A", 5m, 400, least: 40m, most: most, onHand: onHand), Meat("B", 30m, 200)));

        Assert.Equal(["Materials[0].LeastShare", "Materials[0]." + field], findings.Select(finding => finding.Field));
        Assert.Equal(
            $"No mix keeps A at least 40 % of the block; A {words}. The least is more than the most: lower the one or raise the other.",
            findings[0].Text);
    }

    private static IReadOnlyList<Finding> Findings(BlendWanted wanted)
    {
        var answer = LeastCost.Find(wanted);
        Assert.Null(answer.Blend);
        return answer.Findings;
    }
}
