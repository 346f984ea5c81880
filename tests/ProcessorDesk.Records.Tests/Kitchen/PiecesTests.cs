using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Grinding;
using Xunit;

namespace ProcessorDesk.Records.Tests.Kitchen;

/// <summary>Whole pieces go back by green weight, and what stays in the machines goes to nobody. Expected figures are worked here.</summary>
public sealed class PiecesTests(KitchenShop shop) : IClassFixture<KitchenShop>
{
    /// <summary>
    /// 6, 3 and 1 lb of lean make green weight as 6 to 3 to 1. Of 17 pieces that is 10.2, 5.1 and 1.7: rounded down 10, 5 and 1, and the piece left
    /// goes to the largest remainder, the third.
    /// </summary>
    [Fact]
    public void Pieces_go_back_whole_by_green_weight_and_sum_to_what_was_counted()
    {
        var batch = Pooled("Ann", 6m, 3m, 1m);

        KitchenSteps.Expect(Weigh(batch, 12.50m, 17));
        KitchenSteps.Expect(shop.Release(batch));

        Assert.Equal([10, 5, 2], shop.Read(records => records.FinishedShares.Where(share => share.Entry.BatchId == batch).OrderBy(share => share.EntryId).Select(share => share.Pieces!.Value).ToList()));
        Assert.Equal(Weight.FromPounds(12.50m), shop.Read(records => records.FinishedShares.Where(share => share.Entry.BatchId == batch).Select(share => share.Weight).ToList()).Aggregate((one, two) => one + two));
    }

    [Fact]
    public void A_batch_is_counted_as_a_whole_or_not_at_all()
    {
        var batch = Pooled("Bud", 5m, 4m);
        Assert.Contains("at least one piece", Weigh(batch, 6m, 0).Text(), StringComparison.Ordinal);
        KitchenSteps.Expect(Weigh(batch, 6m, 9));

        Assert.Contains("Count the pieces of this too", Weigh(batch, 5m, null).Text(), StringComparison.Ordinal);
        KitchenSteps.Expect(Weigh(batch, 5m, 8));
        KitchenSteps.Expect(shop.Release(batch));

        Assert.Equal(17, shop.Read(records => records.FinishedShares.Where(share => share.Entry.BatchId == batch).Sum(share => share.Pieces)));
    }

    [Fact]
    public void Pieces_stuffed_are_counted_by_load_and_fall_with_the_step()
    {
        var (batch, _) = shop.MixedRing("Cam Dray");
        var loads = shop.LoadsOf(batch);
        shop.Must((records, act) => records.TakeStep(batch, BatchStepKind.Stuffed, act, new Dictionary<int, int> { [loads[0]] = 21 }));

        var lines = shop.Read(records => records.LinesOf(batch));
        Assert.Equal((21, (int?)null), (lines.StuffedOf(loads[0])!.Value, lines.StuffedOf(loads[1])));

        shop.Must((records, act) => records.UndoStep(records.BatchSteps.Single(step => step.BatchId == batch && step.Kind == BatchStepKind.Stuffed).Id, "miscounted", act));
        Assert.Null(shop.Read(records => records.LinesOf(batch)).StuffedOf(loads[0]));
    }

    /// <summary>
    /// The lug was weighed in at 9.00 lb; 8.90 came out of it to the last drop, so 0.10 lb thawed and dripped off. With 3.00 lb of fat and 108.0 g of
    /// seasoning (108.0 / 453.59237 = 0.2381 lb, 0.24 at the bench scale's division) the mix is 8.90 + 3.00 + 0.24 = 12.14 lb; 1.30 stays in the machines,
    /// 10.50 is finished, 0.34 is lost on the way.
    /// </summary>
    [Fact]
    public void Thaw_drip_and_what_stays_in_the_machines_are_lines_of_their_own_in_the_batchs_balance()
    {
        var job = shop.Job("Dot Eames", Pooling.Own, [9m], (KitchenShop.Hot, AskKind.Rest, 0m));
        var batch = shop.Plan(job.Allotments[KitchenShop.Hot]);
        var load = shop.LoadsOf(batch).Single();
        KitchenSteps.Expect(shop.Draw(load, job.Lugs[0], 8.90m, empties: true));
        shop.Must((records, act) => records.MixLoad(new MixOrder(load, Weight.FromPounds(3m), new Dictionary<int, (Weight, WeightUnit)> { [0] = (Weight.FromGrams(108m), WeightUnit.Gram) }), false, act));
        KitchenSteps.Expect(shop.Weigh(batch, null, 10.50m));
        Assert.Contains("more than nothing", shop.Try((records, act) => records.WeighLeft(batch, Weight.Zero, act)).Text(), StringComparison.Ordinal);
        shop.Must((records, act) => records.WeighLeft(batch, Weight.FromPounds(1.30m), act));

        var balance = shop.Read(records => BatchBalance.Of(records.ReadBatch(batch)!, records.LinesOf(batch), ScaleDivision.HundredthPound));

        Weight?[] lines = [balance.ThawAndDrip, balance.Drawn, balance.Fat, balance.Ingredients, balance.LeftInMachines, balance.Finished, balance.Loss];
        Assert.Equal(new Weight?[] { Pounds(0.10m), Pounds(8.90m), Pounds(3m), Pounds(0.24m), Pounds(1.30m), Pounds(10.50m), Pounds(0.34m) }, lines);
        Assert.Equal(balance.Drawn + balance.Fat + balance.Ingredients, balance.Finished!.Value + balance.Loss!.Value + balance.LeftInMachines!.Value);
        KitchenSteps.Expect(shop.Release(batch));
        Assert.Equal(Pounds(10.50m), shop.Read(records => records.FinishedShares.Single(share => share.Entry.BatchId == batch).Weight));
    }

    private static Weight Pounds(decimal pounds) => Weight.FromPounds(pounds);

    private Outcome Weigh(int batch, decimal pounds, int? pieces) =>
        shop.Try((records, act) => records.WeighFinished(batch, null, Weight.FromPounds(pounds), Weight.Zero, act, pieces));

    /// <summary>Hot sausage of several owners in one load, all of each owner's lean.</summary>
    private int Pooled(string name, params decimal[] lean)
    {
        var jobs = lean.Select((pounds, i) => shop.Job($"{name} {i}", Pooling.Pooled, [pounds], (KitchenShop.Hot, AskKind.Rest, 0m))).ToList();
        var batch = shop.Plan([.. jobs.Select(job => job.Allotments[KitchenShop.Hot])]);
        var load = shop.LoadsOf(batch).Single();
        foreach (var (job, pounds) in jobs.Zip(lean))
            KitchenSteps.Expect(shop.Draw(load, job.Lugs[0], pounds));
        KitchenSteps.Expect(shop.Mix(load, 3m));
        return batch;
    }
}
