using FsCheck.Xunit;
using ProcessorDesk.Trade.Kitchen;
using ProcessorDesk.Trade.Kitchen.Planning;
using Xunit;

namespace ProcessorDesk.Trade.Tests.Kitchen.Planning;

/// <summary>The kitchen's day, by hand and by what always holds.</summary>
[Properties(MaxTest = 1000, Arbitrary = [typeof(DayCases)])]
public sealed class DayPlanningTests
{
    private static readonly KitchenProduct s_ring = new(1, "Ring sausage", ["milk"], IsCured: true, IsSmoked: true);
    private static readonly KitchenProduct s_brats = new(2, "Fresh brats", [], IsCured: false, IsSmoked: false);
    private static readonly DaySettings s_shop = new(
        Weight.FromPounds(25), Weight.FromPounds(10), null, null, ScaleDivision.HundredthPound, CleaningMinutes.Usual);

    [Fact]
    public void An_own_ask_larger_than_the_mixer_is_cut_into_equal_loads()
    {
        // 25.00 lb lean and 10.71 of fat make 37.14 lb green: over 25, so two loads of 18.57.
        var plan = DayPlanning.Plan([Meat(1, s_ring, 1, false, 37.14m)], s_shop);

        Assert.Equal([18.57m, 18.57m], Loads(plan.Batches[0]));
        Assert.Empty(plan.Batches[0].Warnings);
        Assert.True(plan.IsProved);
    }

    [Fact]
    public void Owners_stay_apart_even_under_the_smallest_fill_and_the_pooled_go_together()
    {
        var plan = DayPlanning.Plan(
            [Meat(1, s_ring, 1, false, 6), Meat(2, s_ring, 2, true, 6), Meat(3, s_ring, 3, true, 14), Meat(4, s_ring, 3, false, 12)], s_shop);

        Assert.Equal([[1], [2, 3], [4]], plan.Batches.Select(batch => batch.Parts.Select(part => part.Id)));
        Assert.Equal([1, null, 3], plan.Batches.Select(batch => batch.OwnOf));
        Assert.Contains("Owners stay apart", Assert.Single(plan.Batches[0].Warnings), StringComparison.Ordinal);
        Assert.All(plan.Batches.Skip(1), batch => Assert.Empty(batch.Warnings));
    }

    [Theory]
    [InlineData(9.99, 1)]
    [InlineData(10.00, 0)]
    public void A_pooled_batch_under_the_smallest_fill_says_so(double pounds, int warnings) =>
        Assert.Equal(warnings, DayPlanning.Plan([Meat(1, s_ring, 1, true, (decimal)pounds)], s_shop).Batches[0].Warnings.Count);

    [Fact]
    public void Species_and_pork_free_meat_of_one_product_are_batches_of_their_own()
    {
        var deer = Meat(1, s_ring, 1, true, 12);
        var plan = DayPlanning.Plan([deer, deer with { Id = 2, Species = Species.Elk }, deer with { Id = 3, HoldsPork = false }], s_shop);

        Assert.Equal(3, plan.Batches.Count);
        Assert.Equal(3, plan.Batches[0].Parts[0].Id);
    }

    [Fact]
    public void Uncured_and_without_allergens_comes_first_and_nothing_is_cleaned()
    {
        var plan = DayPlanning.Plan([Meat(1, s_ring, 1, false, 12), Meat(2, s_brats, 1, false, 12), Meat(3, s_ring, 2, false, 12), Meat(4, s_brats, 2, false, 12)], s_shop);

        Assert.Equal([2, 4, 1, 3], plan.Batches.Select(batch => batch.Parts[0].Id));
        Assert.All(plan.Batches, batch => Assert.Empty(batch.CleanedBefore));
        Assert.Equal(0, plan.CleaningMinutes);
    }

    [Fact]
    public void The_earliest_promise_goes_first_and_a_later_smaller_one_may_still_go()
    {
        // 40 lb a day: the 30 promised for the 20th go, the 15 for the 21st wait, the 10 for the 22nd fit exactly.
        var plan = DayPlanning.Plan(
            [Meat(1, s_brats, 1, false, 10, 22), Meat(2, s_brats, 2, false, 15, 21), Meat(3, s_brats, 3, false, 30, 20), Meat(4, s_brats, 4, false, 0.01m)],
            s_shop with { Day = Weight.FromPounds(40) });

        Assert.Equal([3, 1], plan.Batches.Select(batch => batch.Parts[0].Id));
        Assert.Equal(
            [(2, "The day has room for 10.00 lb more; this is 15.00 lb."), (4, "The day has room for 0.00 lb more; this is 0.01 lb.")],
            plan.Waiting.Select(left => (left.Meat.Id, left.Why)));
    }

    [Fact]
    public void The_smokehouse_holds_back_only_what_is_smoked()
    {
        var plan = DayPlanning.Plan(
            [Meat(1, s_ring, 1, true, 20, 20), Meat(2, s_ring, 2, true, 11, 21), Meat(3, s_ring, 3, true, 10, 22), Meat(4, s_brats, 4, false, 30, 23)],
            s_shop with { Smokehouse = Weight.FromPounds(30) });

        Assert.Equal([[4], [1, 3]], plan.Batches.Select(batch => batch.Parts.Select(part => part.Id)));
        Assert.Equal("The smokehouse has room for 10.00 lb more; this is 11.00 lb.", Assert.Single(plan.Waiting).Why);
    }

    [Fact]
    public void An_allotment_larger_than_the_whole_day_is_told_apart() =>
        Assert.StartsWith("The day holds 40.00 lb in all", Assert.Single(DayPlanning.Plan([Meat(1, s_brats, 1, false, 41)], s_shop with { Day = Weight.FromPounds(40) }).Waiting).Why, StringComparison.Ordinal);

    [Fact]
    public void A_number_twice_is_a_slip_and_nothing_waiting_an_empty_day()
    {
        Assert.Throws<ArgumentException>(() => DayPlanning.Plan([Meat(1, s_brats, 1, false, 1), Meat(1, s_brats, 2, false, 1)], s_shop));
        Assert.Empty(DayPlanning.Plan([], s_shop).Batches);
    }

    [Property]
    public void What_waits_is_planned_once_whole_or_left_with_a_reason(DayCase day)
    {
        var plan = day.Plan();
        var pieces = plan.Batches.SelectMany(batch => batch.Division.Loads.SelectMany(load => load.Pieces.Select(piece => (Meat: batch.Parts[piece.Part], piece.Green)))).ToLookup(one => one.Meat.Id, one => day.Count(one.Green));

        Assert.Equal(day.Waiting.Select(one => one.Id).Order(), plan.Batches.SelectMany(batch => batch.Parts).Concat(plan.Waiting.Select(left => left.Meat)).Select(one => one.Id).Order());
        Assert.All(plan.Batches.SelectMany(batch => batch.Parts), one => Assert.Equal(day.Count(one.Part.Green), pieces[one.Id].Sum()));
    }

    [Property]
    public void No_own_load_is_shared_and_every_load_is_of_one_kind(DayCase day) =>
        Assert.All(day.Plan().Batches.SelectMany(batch => batch.Division.Loads.Select(load => load.Pieces.Select(piece => batch.Parts[piece.Part]).ToList())), load =>
        {
            Assert.True(load.TrueForAll(one => one.IsPooled) || load.DistinctBy(one => one.Owner).Count() == 1);
            Assert.Single(load.Select(one => (one.Product.Key, one.Species, one.HoldsPork)).Distinct());
        });

    [Property]
    public void Neither_the_mixer_nor_the_smokehouse_nor_the_day_is_overfilled(DayCase day)
    {
        var batches = day.Plan().Batches;
        var loads = batches.SelectMany(batch => batch.Division.Loads.Select(load => (batch.Product.IsSmoked, Count: load.Pieces.Sum(piece => day.Count(piece.Green))))).ToList();

        Assert.All(loads, load => Assert.InRange(load.Count, 1, 2500));
        Assert.True(day.Settings.Day is not { } most || loads.Sum(load => load.Count) <= day.Count(most));
        Assert.True(day.Settings.Smokehouse is not { } smoked || loads.Where(load => load.IsSmoked).Sum(load => load.Count) <= day.Count(smoked));
    }

    [Property]
    public void The_same_meat_in_another_order_gives_the_same_plan(DayCase day)
    {
        var shuffled = day.Waiting.ToArray();
        new Random(day.Seed).Shuffle(shuffled);

        Assert.Equal(Told(day.Plan()), Told(DayPlanning.Plan(shuffled, day.Settings)));

        static string Told(DayPlan plan) => System.Text.Json.JsonSerializer.Serialize(plan);
    }

    [Property]
    public void The_hand_that_changes_nothing_is_found_nothing_against(DayCase day)
    {
        var judged = HandPlan.Judge(day.Waiting, day.Settings, HandLoad.Of(day.Plan()));

        Assert.Empty(judged.Refusals);
        Assert.Empty(judged.Costs);
    }

    private static WaitingMeat Meat(int id, KitchenProduct product, int owner, bool pooled, decimal pounds, int? november = null) => new(
        id, $"owner {owner}", product, owner, pooled, new BatchPart(Weight.Zero, Weight.Zero, Weight.FromPounds(pounds)), Species.WhiteTailDeer, true,
        november is { } day ? new DateOnly(2025, 11, day) : null);

    private static IEnumerable<decimal> Loads(PlannedBatch batch) => batch.Division.Loads.Select(load => ScaleDivision.HundredthPound.Figure(load.Green));
}
