using System.Globalization;
using FsCheck.Xunit;
using ProcessorDesk.Trade.Kitchen;
using Xunit;

namespace ProcessorDesk.Trade.Tests.Kitchen;

/// <summary>A batch over the fillings of a mixer. Small mixers hold about 25 lb (common practice, no source).</summary>
[Properties(MaxTest = 1000, Arbitrary = [typeof(BatchCases)])]
public sealed class MixerLoadsTests
{
    private static readonly ScaleDivision s_bench = ScaleDivision.HundredthPound;

    [Fact]
    public void The_ring_sausage_of_two_deer_makes_two_even_loads()
    {
        // 25.00 lb lean at 70 : 30 takes 25 × 3 / 7 = 10.71 lb of fat; 35.71 × 1.04 = 37.14 lb green; over 25, so two loads of 37.14 / 2 = 18.57.
        var loads = MixerLoads.Plan([new BatchPart(Pounds(25.00m), Pounds(10.71m), Pounds(37.14m))], Pounds(25m), s_bench);

        Assert.Equal([18.57m, 18.57m], loads.Select(load => s_bench.Figure(load.Green)));
        Assert.Equal([12.50m, 12.50m], loads.Select(load => s_bench.Figure(load.Lean)));
        // 10.71 lb is 1,071 divisions: the odd one goes to the first load.
        Assert.Equal([5.36m, 5.35m], loads.Select(load => s_bench.Figure(load.AddedFat)));
        Assert.Equal([17.86m, 17.85m], loads.Select(load => s_bench.Figure(load.MeatBlock)));
    }

    [Theory]
    [InlineData("25.00", 1)]
    [InlineData("25.01", 2)]
    [InlineData("50.00", 2)]
    [InlineData("50.01", 3)]
    [InlineData("0.01", 1)]
    public void A_load_more_is_made_only_where_the_mixer_is_full(string green, int loads) =>
        Assert.Equal(loads, MixerLoads.Plan([new BatchPart(Weight.Zero, Weight.Zero, Pounds(decimal.Parse(green, CultureInfo.InvariantCulture)))], Pounds(25m), s_bench).Count);

    [Fact]
    public void Owners_are_taken_in_their_order_and_cut_where_a_load_is_full()
    {
        // 12 + 20 + 8 = 40 lb in two loads of 20: the second owner's 20 lb are cut 8 : 12.
        var loads = MixerLoads.Plan(
            [new BatchPart(Pounds(9m), Pounds(3m), Pounds(12m)), new BatchPart(Pounds(15m), Pounds(5m), Pounds(20m)), new BatchPart(Pounds(6m), Pounds(2m), Pounds(8m))],
            Pounds(25m), s_bench);

        Assert.Equal([(0, 12m), (1, 8m)], loads[0].Pieces.Select(piece => (piece.Part, s_bench.Figure(piece.Green))));
        Assert.Equal([(1, 12m), (2, 8m)], loads[1].Pieces.Select(piece => (piece.Part, s_bench.Figure(piece.Green))));
        Assert.Equal([6m, 9m], new[] { loads[0].Pieces[1], loads[1].Pieces[0] }.Select(piece => s_bench.Figure(piece.Lean)));
    }

    [Fact]
    public void A_batch_of_nothing_and_a_mixer_that_holds_nothing_are_slips()
    {
        var part = new BatchPart(Pounds(1m), Weight.Zero, Pounds(1m));

        Assert.Throws<ArgumentException>(() => MixerLoads.Plan([], Pounds(25m), s_bench));
        Assert.Throws<ArgumentException>(() => MixerLoads.Plan([part, part with { Green = Weight.Zero }], Pounds(25m), s_bench));
        Assert.Throws<ArgumentException>(() => MixerLoads.Plan([part], Pounds(0.004m), s_bench));
    }

    [Property]
    public void No_load_is_over_what_the_mixer_holds_and_none_is_empty(BatchCase batch) =>
        Assert.All(batch.Plan(), load => Assert.InRange(Printed(batch, load.Pieces, piece => piece.Green), 1, batch.Division.CountOf(batch.Capacity)));

    [Property]
    public void There_are_the_fewest_loads(BatchCase batch)
    {
        var total = batch.Parts.Sum(part => batch.Division.CountOf(part.Green));

        Assert.Equal((long)decimal.Ceiling(total / (decimal)batch.Division.CountOf(batch.Capacity)), batch.Plan().Count);
    }

    [Property]
    public void Loads_are_even_within_one_division_the_fuller_ones_first(BatchCase batch)
    {
        var greens = batch.Plan().Select(load => Printed(batch, load.Pieces, piece => piece.Green)).ToList();

        Assert.InRange(greens.Max() - greens.Min(), 0, 1);
        Assert.Equal(greens.OrderDescending(), greens);
    }

    [Property]
    public void Every_part_sums_to_itself_to_the_milligram_and_as_printed(BatchCase batch)
    {
        var pieces = batch.Plan().SelectMany(load => load.Pieces).ToList();
        foreach (var (part, i) in batch.Parts.Select((part, i) => (part, i)))
        {
            var own = pieces.Where(piece => piece.Part == i).ToList();
            foreach (var (whole, of) in ((Weight, Func<LoadPiece, Weight>)[])[(part.Lean, piece => piece.Lean), (part.AddedFat, piece => piece.AddedFat), (part.Green, piece => piece.Green)])
            {
                Assert.Equal(whole.Milligrams, own.Sum(piece => of(piece).Milligrams));
                Assert.Equal(batch.Division.CountOf(whole), Printed(batch, own, of));
                Assert.All(own, piece => Assert.False(of(piece).IsNegative));
            }
        }
    }

    [Property]
    public void A_part_lies_in_loads_that_follow_each_other(BatchCase batch)
    {
        var order = batch.Plan().SelectMany(load => load.Pieces.Select(piece => piece.Part)).ToList();

        Assert.Equal(order.Order(), order);
    }

    private static long Printed(BatchCase batch, IEnumerable<LoadPiece> pieces, Func<LoadPiece, Weight> of) => pieces.Sum(piece => batch.Division.CountOf(of(piece)));

    private static Weight Pounds(decimal pounds) => Weight.FromPounds(pounds);
}
