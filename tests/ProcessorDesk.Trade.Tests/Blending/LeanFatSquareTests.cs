using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using ProcessorDesk.Trade.Blending;
using Xunit;

namespace ProcessorDesk.Trade.Tests.Blending;

public sealed class LeanFatSquareTests
{
    private static LeanFatSquare Square(decimal lean, decimal added, decimal target) =>
        new(Proportion.FromPercent(lean), Proportion.FromPercent(added), Proportion.FromPercent(target));

    public static Arbitrary<(LeanFatSquare Square, Weight Block)> Squares() => Arb.From(
        from lean in Fat
        from added in Fat
        from target in Gen.OneOf(Fat, Gen.Elements(lean, added), Gen.Choose(Math.Min(lean, added), Math.Max(lean, added)))
        from block in Gen.OneOf(Gen.Elements(0, 1, 10_000_000), Gen.Choose(0, 10_000_000))
        from beside in Gen.Choose(0, 2)
        select (
            new LeanFatSquare(Proportion.FromPartsPerMillion(lean), Proportion.FromPartsPerMillion(added), Proportion.FromPartsPerMillion(target)),
            Weight.FromPounds(block / 100m) + Weight.FromMilligrams(beside)));

    private static readonly Gen<int> Fat = Gen.OneOf(Gen.Elements(0, 1, 1_000_000), Gen.Choose(0, 1_000_000));

    [Theory]
    [InlineData(2, 60, 2, 0)]
    [InlineData(2, 60, 60, 1)]
    [InlineData(20, 20, 20, 0)]
    [InlineData(60, 2, 31, 0.5)] // the added material may be the leaner one
    public void The_ends_and_a_turned_square_have_answers(int lean, int added, int target, decimal share)
    {
        Assert.Empty(Square(lean, added, target).Findings());
        Assert.Equal(Ratio.FromDecimal(share), Square(lean, added, target).AddedShare);
    }

    [Fact]
    public void A_target_above_both_says_so() =>
        Assert.Equal(
            "No mix comes up to 30 % fat: the fatter of the two has only 21.19 %. Add a fatter trim.",
            Assert.Single(Square(2.42m, 21.19m, 30m).Findings()).Text);

    [Fact]
    public void Two_meats_of_the_same_fat_make_only_that()
    {
        Assert.Single(Square(20m, 20m, 19.9999m).Findings());
        Assert.Single(Square(20m, 20m, 20.0001m).Findings());
    }

    [Fact]
    public void Fat_over_the_whole_is_found_beside_its_field() =>
        Assert.Equal(["LeanFat", "AddedFat"], Square(100.01m, 101m, 28m).Findings().Select(finding => finding.Field));

    [Fact]
    public void The_fat_of_a_mix_is_worked_from_what_was_weighed()
    {
        // (60 × 2 % + 40 × 50 %) / 100 = 21.2 %
        Assert.Equal(Ratio.FromDecimal(0.212m), Square(2m, 50m, 20m).FatIn(Weight.FromGrams(60m), Weight.FromGrams(40m)));
        Assert.Throws<DivideByZeroException>(() => Square(2m, 50m, 20m).FatIn(Weight.Zero, Weight.Zero));
    }

    [Fact]
    public void The_fat_of_several_measured_meats_is_worked_from_what_was_weighed()
    {
        // (30 × 2.42 + 10 × 53.01 + 2 × 88.69) / 42 = (72.6 + 530.1 + 177.38) / 42 = 780.08 / 42 %
        WeighedMeat[] meats =
        [
            new(Weight.FromGrams(30m), Proportion.FromPercent(2.42m)),
            new(Weight.FromGrams(10m), Proportion.FromPercent(53.01m)),
            new(Weight.FromGrams(2m), Proportion.FromPercent(88.69m)),
        ];

        Assert.Equal(Ratio.FromDecimal(7.8008m) / Ratio.Of(42, 1), WeighedMeat.FatIn(meats));
        Assert.Throws<DivideByZeroException>(() => WeighedMeat.FatIn([]));
    }

    [Property(MaxTest = 2000, Arbitrary = [typeof(LeanFatSquareTests)])]
    public void There_is_an_answer_exactly_between_the_two_and_it_sums_and_hits_the_target((LeanFatSquare Square, Weight Block) blend)
    {
        var (square, block) = blend;
        var between = square.Target >= Lower(square) && square.Target <= Upper(square);
        Assert.Equal(between, square.Findings().Count == 0);
        if (!between)
            return;

        Assert.Equal(square.Target.ToRatio(), square.LeanShare * square.LeanFat.ToRatio() + square.AddedShare * square.AddedFat.ToRatio());
        var parts = square.PartsOf(block, ScaleDivision.HundredthPound);
        Assert.Equal(block, parts.Lean + parts.Added);
        Assert.False(parts.Lean.IsNegative || parts.Added.IsNegative);
        Assert.True(square.AddedShare >= Ratio.Zero && square.AddedShare <= Ratio.One);
    }

    private static Proportion Lower(LeanFatSquare square) => square.LeanFat < square.AddedFat ? square.LeanFat : square.AddedFat;

    private static Proportion Upper(LeanFatSquare square) => square.LeanFat < square.AddedFat ? square.AddedFat : square.LeanFat;
}
