using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Grinding;
using ProcessorDesk.Trade.Kitchen.Planning;
using Xunit;

namespace ProcessorDesk.Records.Tests.Kitchen;

/// <summary>Finished weight back to the owners by the green weight they put in, adding up exactly.</summary>
public sealed class SharesTests(KitchenShop shop) : IClassFixture<KitchenShop>
{
    private static readonly ScaleDivision s_bench = ScaleDivision.HundredthPound;

    [Fact]
    public void Three_owners_get_60_lb_back_by_green_weight()
    {
        // Lean 15.00, 20.00, 12.34; fat a third of it: 5.00, 6.67, 4.11; block × 1.02: 20.40, 27.20, 16.78 green, together 64.38 in three loads of 21.46.
        var jobs = Pooled("Ray", 15.00m, 20.00m, 12.34m);
        var batch = shop.Plan([.. jobs.Select(job => job.Allotments[KitchenShop.Hot])]);
        MakeAsPlanned(batch, jobs);

        KitchenSteps.Expect(shop.Weigh(batch, null, 60.00m));
        KitchenSteps.Expect(shop.Release(batch));

        // 6,000 divisions by 2,040 : 2,720 : 1,678 are 1,901.21, 2,534.95 and 1,563.84; the two left over go to .95 and .84.
        Assert.Equal([19.01m, 25.35m, 15.64m], Shares(batch, jobs));
        Assert.Equal(Weight.FromPounds(60.00m), shop.Read(records => records.FinishedShares.Where(share => share.Entry.BatchId == batch).AsEnumerable().Aggregate(Weight.Zero, (sum, share) => sum + share.Weight)));
        Assert.All(jobs, job => Assert.NotNull(shop.Read(records => records.Jobs.Single(one => one.Id == job.Id).MadeAt)));
    }

    [Fact]
    public void Loads_weighed_alone_go_back_to_those_in_them()
    {
        // 16.32 and 24.48 lb green in two loads of 20.40, cut by hand: the first owner 16.32 in load 1, the second 4.08 and 20.40.
        var jobs = Pooled("Sal", 12m, 18m);
        var (first, second) = (jobs[0].Allotments[KitchenShop.Hot], jobs[1].Allotments[KitchenShop.Hot]);
        var batch = shop.Must((records, act) => records.PlanBatch(
            BatchOrder.Of(
            [
                new HandLoad(1, [new HandPiece(first, Weight.FromPounds(16.32m)), new HandPiece(second, Weight.FromPounds(4.08m))]),
                new HandLoad(2, [new HandPiece(second, Weight.FromPounds(20.40m))]),
            ]),
            act));
        MakeAsPlanned(batch, jobs);
        var loads = shop.LoadsOf(batch);

        KitchenSteps.Expect(shop.Weigh(batch, loads[0], 19.00m));
        Assert.Contains("begun the other way", shop.Weigh(batch, null, 40m).Text(), StringComparison.Ordinal);
        Assert.Equal("The finished weight of load 2 is not there. Weigh it.", shop.Release(batch).Text());
        KitchenSteps.Expect(shop.Weigh(batch, loads[1], 12.00m)); // on two racks
        KitchenSteps.Expect(shop.Weigh(batch, loads[1], 7.99m));
        KitchenSteps.Expect(shop.Release(batch));

        // Load 1: 1,900 by 1,632 : 408 = 1,520 : 380. Load 2 is the second owner's alone.
        Assert.Equal([15.20m, 3.80m + 19.99m], Shares(batch, jobs));
    }

    [Fact]
    public void Whoever_gave_less_than_planned_gets_less_back()
    {
        // 6 lb lean each: 2 lb fat, 8 lb block, 8.16 lb green. Of the second owner only 3 lb were found: 4.08 lb green.
        var jobs = Pooled("Tam", 6m, 6m);
        var batch = shop.Plan([.. jobs.Select(job => job.Allotments[KitchenShop.Hot])]);
        var load = shop.LoadsOf(batch).Single();
        KitchenSteps.Expect(shop.Draw(load, jobs[0].Lugs[0], 6m));
        KitchenSteps.Expect(shop.Draw(load, jobs[1].Lugs[0], 3m));
        KitchenSteps.Expect(shop.Mix(load, 3m));
        KitchenSteps.Expect(shop.Weigh(batch, null, 12.00m));
        KitchenSteps.Expect(shop.Release(batch));

        Assert.Equal([8.00m, 4.00m], Shares(batch, jobs)); // 1,200 by 816 : 408
    }

    [Fact]
    public void A_finished_weight_struck_out_leaves_the_sum_and_the_right_one_is_weighed_anew()
    {
        var jobs = Pooled("Una", 6m);
        var batch = shop.Plan(jobs[0].Allotments[KitchenShop.Hot]);
        MakeAsPlanned(batch, jobs);
        Assert.Contains("more than its tare", shop.Weigh(batch, null, 1m, tare: 1m).Text(), StringComparison.Ordinal);
        KitchenSteps.Expect(shop.Weigh(batch, null, 81.60m));
        var wrong = shop.Read(records => records.WeighIns.Single(one => one.BatchId == batch).Id);
        Outcome Strike(string because) => shop.Try((records, act) => records.StrikeFinished(wrong, because, act));

        Assert.Equal("Say why the weight is wrong.", Strike("").Text());
        KitchenSteps.Expect(Strike("the point slipped"));
        KitchenSteps.Expect(shop.Weigh(batch, null, 8.16m));
        KitchenSteps.Expect(shop.Release(batch));

        Assert.Equal([8.16m], Shares(batch, jobs));
        Assert.Contains("its record is closed", Strike("again").Text(), StringComparison.Ordinal);
    }

    [Fact]
    public void Product_that_holds_none_of_the_meat_planned_is_not_released_to_those_it_was_planned_for()
    {
        var jobs = Pooled("Vic", 6m);
        var stranger = shop.Job("Vic the other", Pooling.Own, [6m], (KitchenShop.Hot, AskKind.Rest, 0m));
        var batch = shop.Plan(jobs[0].Allotments[KitchenShop.Hot]);
        var load = shop.LoadsOf(batch).Single();
        KitchenSteps.Expect(shop.Draw(load, stranger.Lugs[0], 6m, alreadyIn: "the lugs were mixed up"));
        KitchenSteps.Expect(shop.Mix(load, 2m, alreadyIn: "ground before anybody saw"));
        foreach (var hold in shop.Read(records => records.Holds.Standing().Where(one => one.BatchId == batch).Select(one => one.Id).ToList()))
            shop.Must((records, act) => records.ReleaseBatchHold(hold, "both owners were told", act), shop.File.Manager);
        KitchenSteps.Expect(shop.Weigh(batch, null, 8m));

        Assert.Contains("goes back to nobody", shop.Release(batch).Text(), StringComparison.Ordinal);
    }

    private List<MadeJob> Pooled(string family, params decimal[] pounds) =>
        [.. pounds.Select((lean, i) => shop.Job($"{family} {i}", Pooling.Pooled, [lean], (KitchenShop.Hot, AskKind.Rest, 0m)))];

    /// <summary>Draws each part into its load and mixes it with the fat planned.</summary>
    private void MakeAsPlanned(int batch, IReadOnlyList<MadeJob> jobs)
    {
        foreach (var load in shop.Read(records => records.Loads.Where(load => load.BatchId == batch).OrderBy(load => load.Number).Select(load => new { load.Id, load.AddedFat }).ToList()))
        {
            foreach (var part in shop.Read(records => records.LoadParts.Where(part => part.LoadId == load.Id).Select(part => new { part.Entry.JobId, part.Lean }).ToList()))
                shop.Must((records, act) => records.DrawMeat(new DrawOrder(load.Id, jobs.Single(job => job.Id == part.JobId).Lugs[0], part.Lean, false), act));
            KitchenSteps.Expect(shop.Mix(load.Id, load.AddedFat.Pounds));
        }
    }

    private List<decimal> Shares(int batch, IReadOnlyList<MadeJob> jobs) =>
        [.. jobs.Select(job => s_bench.Figure(s_bench.Sum(shop.Read(records => records.FinishedShares.Where(share => share.Entry.BatchId == batch && share.Entry.JobId == job.Id).Select(share => share.Weight).ToList()))))];
}
