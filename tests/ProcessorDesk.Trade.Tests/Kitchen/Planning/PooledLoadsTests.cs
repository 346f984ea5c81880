using FsCheck.Xunit;
using ProcessorDesk.Trade.Kitchen;
using ProcessorDesk.Trade.Kitchen.Planning;
using Xunit;

namespace ProcessorDesk.Trade.Tests.Kitchen.Planning;

/// <summary>Pooled batches over a mixer of 25 lb (common practice, no source); each worked beside it.</summary>
[Properties(MaxTest = 1000, Arbitrary = [typeof(BatchCases)])]
public sealed class PooledLoadsTests
{
    private static readonly ScaleDivision s_bench = ScaleDivision.HundredthPound;

    [Theory]
    [InlineData("12 13 20 5", 0, "25.00 25.00", 0)]      // 12 + 13 and 20 + 5 fill two loads to the brim
    [InlineData("20 20 20", 0, "20.00 20.00 20.00", 0)]  // 60 lb take three loads, one for each
    [InlineData("15 15 15 15 15", 0, "25.00 25.00 25.00", 2)] // 75 lb fill three loads; only all five weigh a multiple of 25
    [InlineData("15 15 15 15", 0, "15.00 22.50 22.50", 1)]    // 60 lb in three leave 15 lb of room: 10 beside one alone, 5 in two loads of 45
    [InlineData("15 15 15 15", 15.00, "15.00 22.50 22.50", 1)]
    [InlineData("15 15 15 15", 15.01, "20.00 20.00 20.00", 2)] // one alone is under the fill, two alone leave 20 lb: all lined up
    [InlineData("30", 0, "15.00 15.00", 1)]
    [InlineData("37.14", 0, "18.57 18.57", 1)]
    [InlineData("25", 25, "25.00", 0)]
    [InlineData("25.01", 0, "12.51 12.50", 1)]
    [InlineData("24 12 9 3", 0, "24.00 24.00", 0)] // 24 and 12 + 9 + 3; 24 + … would leave one load over
    [InlineData("16 10 9 5 4", 0, "23.00 21.00", 0)] // 44 in two: 22 : 22 needs 22 of 16 10 9 5 4, which no sum is; 21 = 16 + 5 is the next
    public void Fewest_loads_then_fewest_cuts_then_balance(string pounds, double fill, string loads, int cuts)
    {
        var divided = Divide(pounds, fill);

        Assert.Equal(loads.Split(' ').Order(), divided.Loads.Select(load => s_bench.PrintFigure(load.Green)).Order());
        Assert.Equal(cuts, divided.Cuts);
        Assert.True(divided.IsProved);
        Assert.False(divided.FillGaveWay);
    }

    [Theory]
    [InlineData("6 3", 9.00, false, "9.00")]
    [InlineData("6 3", 9.01, true, "9.00")]
    [InlineData("20 6", 13, false, "13.00 13.00")]
    [InlineData("20 6", 20, true, "13.00 13.00")] // 26 lb are too little for two loads of 20: as full as the emptier can be
    [InlineData("20 6", 40, true, "13.00 13.00")] // a fill over the mixer's 25 lb counts as 25
    [InlineData("20 6", 0, false, "20.00 6.00")]
    public void The_smallest_fill_gives_way_only_where_the_total_is_too_small(string pounds, double fill, bool gaveWay, string loads)
    {
        var divided = Divide(pounds, fill);

        Assert.Equal(gaveWay, divided.FillGaveWay);
        Assert.Equal(loads.Split(' '), divided.Loads.Select(load => s_bench.PrintFigure(load.Green)));
    }

    [Fact]
    public void Loads_come_in_the_order_of_the_parts_in_them()
    {
        var divided = Divide("5 13 12 20", 0);

        Assert.Equal([[0, 3], [1, 2]], divided.Loads.Select(load => load.Pieces.Select(piece => piece.Part)));
    }

    [Fact]
    public void Steps_that_run_out_leave_bounds_that_hold()
    {
        // Sixteen of 15 lb are 240 lb: ten loads that leave 10 lb. Room for one of its own; else only 5 in 3, 10 in 6 leave nothing.
        var proved = Divide(string.Join(' ', Enumerable.Repeat("15", 16)), 0);
        var hurried = Divide(string.Join(' ', Enumerable.Repeat("15", 16)), 0, steps: 50);

        Assert.Equal((6, true), (proved.Cuts, proved.IsProved));
        Assert.False(hurried.IsProved);
        Assert.InRange(proved.Cuts, hurried.CutsAtLeast, hurried.Cuts);
    }

    [Fact]
    public void Many_contributions_are_divided_well_beyond_what_can_be_gone_through()
    {
        // Forty of 5 lb are 200 lb, eight loads of five each; twenty of 10 and of 15 make twenty of 25.
        Assert.Equal((8, 0L, 0L, true), Figures(Divide(string.Join(' ', Enumerable.Repeat("5", 40)), 10)));
        Assert.Equal((20, 0L, 0L, true), Figures(Divide(string.Join(' ', Enumerable.Repeat("10 15", 20)), 10)));

        static (int, long, long, bool) Figures(LoadDivision divided) => (divided.Loads.Count, divided.Cuts, divided.Spread, divided.IsProved);
    }

    [Fact]
    public void A_batch_of_nothing_and_a_mixer_that_holds_nothing_are_slips()
    {
        var part = new BatchPart(Weight.Zero, Weight.Zero, Weight.FromPounds(1));

        Assert.Throws<ArgumentException>(() => PooledLoads.Divide([], Weight.FromPounds(25), Weight.Zero, s_bench));
        Assert.Throws<ArgumentException>(() => PooledLoads.Divide([part, part with { Green = Weight.Zero }], Weight.FromPounds(25), Weight.Zero, s_bench));
        Assert.Throws<ArgumentException>(() => PooledLoads.Divide([part], Weight.FromPounds(0.004m), Weight.Zero, s_bench));
    }

    [Property]
    public void No_load_is_over_the_mixer_or_under_the_fill_it_can_reach(BatchCase batch)
    {
        var divided = Divide(batch);
        var loads = divided.Loads.Select(load => load.Pieces.Sum(piece => batch.Division.CountOf(piece.Green))).ToList();
        var fill = batch.Division.CountOf(Fill(batch));

        Assert.All(loads, load => Assert.InRange(load, 1, batch.Division.CountOf(batch.Capacity)));
        Assert.True(divided.FillGaveWay ? loads.Min() == loads.Sum() / loads.Count : loads.Min() >= fill, $"{loads.Min()} against {fill}");
        Assert.Equal(loads.Max() - loads.Min(), divided.Spread);
    }

    [Property]
    public void Many_parts_and_few_steps_break_no_promise(int seed)
    {
        var random = new Random(seed);
        var (fill, steps) = (random.Next(0, 2600), 1L << random.Next(0, 14));
        var greens = Enumerable.Range(0, random.Next(2, 26)).Select(_ => random.Next(2) == 0 ? random.Next(1, 4000) : 500 * random.Next(1, 8)).ToList();
        var divided = PooledLoads.Divide(
            [.. greens.Select(green => new BatchPart(Weight.Zero, Weight.Zero, s_bench.FromCount(green)))], Weight.FromPounds(25), s_bench.FromCount(fill), s_bench, steps);
        var loads = divided.Loads.Select(load => load.Pieces.Sum(piece => s_bench.CountOf(piece.Green))).ToList();

        Assert.Equal(((greens.Sum() + 2499) / 2500, (long)greens.Sum()), (loads.Count, loads.Sum()));
        Assert.All(loads, load => Assert.InRange(load, Math.Min(fill, greens.Sum() / loads.Count), 2500));
        Assert.Equal((divided.Loads.Sum(load => load.Pieces.Count) - greens.Count, loads.Max() - loads.Min()), (divided.Cuts, divided.Spread));
        Assert.True(divided.CutsAtLeast <= divided.Cuts && divided.SpreadAtLeast <= divided.Spread);
    }

    [Property]
    public void Every_part_sums_to_itself_and_the_cuts_are_counted(BatchCase batch)
    {
        var divided = Divide(batch);
        var pieces = divided.Loads.SelectMany(load => load.Pieces).ToList();

        Assert.Equal(pieces.Count - batch.Parts.Count, divided.Cuts);
        Assert.All(batch.Parts.Select((part, i) => (part, i)), one =>
        {
            var own = pieces.Where(piece => piece.Part == one.i).ToList();
            Assert.Equal(batch.Division.CountOf(one.part.Green), own.Sum(piece => batch.Division.CountOf(piece.Green)));
            Assert.Equal(
                (one.part.Lean.Milligrams, one.part.AddedFat.Milligrams, one.part.Green.Milligrams),
                (own.Sum(piece => piece.Lean.Milligrams), own.Sum(piece => piece.AddedFat.Milligrams), own.Sum(piece => piece.Green.Milligrams)));
        });
    }

    [Property]
    public void It_takes_as_few_loads_and_no_more_cuts_than_lining_all_up(BatchCase batch)
    {
        var (divided, linedUp) = (Divide(batch), batch.Plan());

        Assert.Equal(linedUp.Count, divided.Loads.Count);
        Assert.InRange(divided.Cuts, divided.CutsAtLeast, linedUp.Count - 1);
    }

    [Property]
    public void The_order_of_the_parts_changes_none_of_the_figures(BatchCase batch)
    {
        var (divided, turned) = (Divide(batch), Divide(batch with { Parts = [.. batch.Parts.Reverse()] }));

        Assert.Equal(Figures(divided), Figures(turned));

        static (long, long, long, long) Figures(LoadDivision divided) => (divided.Cuts, divided.CutsAtLeast, divided.Spread, divided.SpreadAtLeast);
    }

    private static Weight Fill(BatchCase batch) => batch.Division.FromCount(batch.Division.CountOf(batch.Capacity) * 2 / 5);

    private static LoadDivision Divide(BatchCase batch) => PooledLoads.Divide(batch.Parts, batch.Capacity, Fill(batch), batch.Division);

    private static LoadDivision Divide(string pounds, double fill, long steps = PooledLoads.UsualSteps) => PooledLoads.Divide(
        [.. pounds.Split(' ').Select(green => new BatchPart(Weight.Zero, Weight.Zero, Weight.FromPounds(decimal.Parse(green, System.Globalization.CultureInfo.InvariantCulture))))],
        Weight.FromPounds(25), Weight.FromPounds((decimal)fill), s_bench, steps);
}
