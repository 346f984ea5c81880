using ProcessorDesk.Trade;
using Xunit;

namespace ProcessorDesk.Records.Tests.Kitchen.Rules;

/// <summary>
/// One person in the kitchen: the second check of the cure may be the same hand weighing again after setting the scale to zero; both are
/// recorded. 17.86 lb of meat block take at most 20.25 g of a 6.25 % cure (9 CFR 424.21(c): 1/400 of it, 17.86 × 453.59237 ÷ 400).
/// </summary>
public sealed class SecondCheckOfTheCureTests(KitchenShop shop) : IClassFixture<KitchenShop>
{
    private const decimal Fat = 5.36m;

    [Fact]
    public void The_same_hand_may_weigh_the_cure_again_and_both_figures_are_kept()
    {
        var load = Drawn("Ada Birch");

        KitchenSteps.Expect(shop.Mix(load, Fat, cureGrams: 20.2m, againGrams: 20.1m));

        var cure = Cure(load);
        Assert.Equal((20.2m, 20.1m, (int?)shop.Hand.Id), (cure.Weighed.Grams, cure.WeighedAgain!.Value.Grams, cure.AgainById));
        Assert.Equal(shop.Hand.Id, shop.Read(records => records.Loads.Single(one => one.Id == load).MixedById));
    }

    [Fact]
    public void Another_hand_may_weigh_it_again_and_stands_beside_the_first_in_the_record()
    {
        var load = Drawn("Ben Crane");

        KitchenSteps.Expect(shop.Mix(load, Fat, cureGrams: 20.2m, againGrams: 20.2m, againBy: shop.File.Manager));

        Assert.Equal(shop.File.Manager.Id, Cure(load).AgainById);
        var batch = shop.Read(records => records.Loads.Single(one => one.Id == load).BatchId);
        var (lines, manager) = shop.Read(records => (records.LinesOf(batch), records.Staff.Single(staff => staff.Id == shop.File.Manager.Id).Initials));
        Assert.Equal(("KH", manager), (lines.Of(BatchLineKind.Mixed).Single().By, lines.Of(BatchLineKind.CureAgain).Single().By));
    }

    [Fact]
    public void A_cured_load_does_not_start_on_one_weighing()
    {
        var load = Drawn("Cal Dunn");

        Assert.Equal("Set the scale to zero, weigh the pink curing salt a second time, and type what it shows.", shop.Mix(load, Fat, isWeighedTwice: false).Text());

        Assert.Null(shop.Read(records => records.Loads.Single(one => one.Id == load).MixedAt));
    }

    [Theory]
    [InlineData(20.2, 19.6, true)] // 0.6 g apart: a division of 0.1 g and half a gram
    [InlineData(20.2, 19.5, false)]
    [InlineData(19.6, 20.2, true)]
    [InlineData(19.5, 20.2, false)]
    public void Two_weighings_further_apart_than_the_scale_explains_are_refused(double first, double again, bool isTaken)
    {
        var load = Drawn($"Dot {first} {again}");

        var outcome = shop.Mix(load, Fat, cureGrams: (decimal)first, againGrams: (decimal)again);

        Assert.Equal(isTaken, outcome.IsDone);
        if (!isTaken)
            Assert.Equal($"First {first:0.0} g, now {again:0.0} g: more than 0.6 g apart. Set the scale to zero and weigh it both times anew.", outcome.Text());
    }

    [Fact]
    public void A_second_weighing_over_the_limit_stops_the_load_though_the_first_was_within_it()
    {
        var load = Drawn("Eve Frost");

        var refused = shop.Mix(load, Fat, cureGrams: 20.2m, againGrams: 20.3m, hand: shop.File.Manager);

        // 20.3 × 6.25 % ÷ 17.86 lb = 156.61 ppm
        var ppm = 20.3m * 0.0625m / (17.86m * 453.59237m) * 1_000_000m;
        Assert.StartsWith($"By the second weighing: Too much nitrite: {ppm:0.00} ppm, and the most is 156.25 ppm", refused.Text(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_second_weighing_under_the_minimum_needs_the_managers_reason_too()
    {
        // 120 ppm of 17.86 lb are 15.55 g of the cure: 15.6 g is over it, 15.4 g under.
        var load = Drawn("Fay Gage");
        Assert.InRange(120m / 1_000_000m * 17.86m * 453.59237m / 0.0625m, 15.5m, 15.6m);

        Assert.Contains("let the manager give a reason", shop.Mix(load, Fat, cureGrams: 15.6m, againGrams: 15.4m).Text(), StringComparison.Ordinal);
        KitchenSteps.Expect(shop.Mix(load, Fat, cureGrams: 15.6m, againGrams: 15.4m, lowBecause: "eaten within the week", hand: shop.File.Manager));
    }

    [Fact]
    public void Mixed_already_without_a_second_weighing_it_is_recorded_and_the_batch_is_held()
    {
        var load = Drawn("Gil Hahn");

        KitchenSteps.Expect(shop.Mix(load, Fat, alreadyIn: "alone, and the door bell rang", isWeighedTwice: false));

        Assert.Null(Cure(load).WeighedAgain);
        var batch = shop.Read(records => records.Loads.Single(one => one.Id == load).BatchId);
        Assert.Equal([HoldReason.WrongMeatIn], shop.Read(records => records.Holds.Standing().Where(hold => hold.BatchId == batch).Select(hold => hold.Reason).ToList()));
        var mixed = shop.Read(records => records.ReadBatch(batch)!).Loads.Single(one => one.Id == load);
        Assert.True(mixed.LacksSecondWeighing(mixed.Ingredients));
    }

    [Fact]
    public void A_mix_without_cure_is_weighed_once()
    {
        var job = shop.TwoDeer("Hal Ivers");
        var batch = shop.Plan(job.Allotments[KitchenShop.Hot]);
        var load = shop.LoadsOf(batch).Single();
        KitchenSteps.Expect(shop.Draw(load, job.Lugs[0], 11.03m));

        KitchenSteps.Expect(shop.Mix(load, 3.68m, isWeighedTwice: false));

        var mixed = shop.Read(records => records.ReadBatch(batch)!).Loads.Single();
        Assert.False(mixed.LacksSecondWeighing(mixed.Ingredients));
    }

    [Fact]
    public void A_mix_over_the_limit_by_its_second_weighing_alone_is_never_released()
    {
        var job = shop.TwoDeer("Ida Joss");
        var batch = shop.Plan(job.Allotments[KitchenShop.Ring]);
        var loads = shop.LoadsOf(batch);
        KitchenSteps.Expect(shop.Draw(loads[0], job.Lugs[0], 12.50m));
        KitchenSteps.Expect(shop.Mix(loads[0], Fat, cureGrams: 20.2m, againGrams: 21.0m, alreadyIn: "mixed before the second weighing was looked at"));
        shop.Must((records, act) => records.ReleaseBatchHold(records.Holds.Standing().Single(hold => hold.BatchId == batch).Id, "it goes on", act), shop.File.Manager);
        KitchenSteps.Expect(shop.Draw(loads[1], job.Lugs[0], 12.50m));
        KitchenSteps.Expect(shop.Mix(loads[1], 5.35m));
        shop.CookAndChill(batch);
        KitchenSteps.Expect(shop.Weigh(batch, null, 33m));

        Assert.StartsWith("Load 1: Too much nitrite", shop.Release(batch, hand: shop.File.Manager).Text(), StringComparison.Ordinal);
    }

    private int Drawn(string owner)
    {
        var job = shop.TwoDeer(owner);
        var load = shop.LoadsOf(shop.Plan(job.Allotments[KitchenShop.Ring]))[0];
        KitchenSteps.Expect(shop.Draw(load, job.Lugs[0], 12.50m));
        return load;
    }

    private LoadIngredient Cure(int load) => shop.Read(records => records.LoadIngredients.Single(line => line.LoadId == load && line.Position == 1));
}
