using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Grinding;
using Xunit;

namespace ProcessorDesk.Records.Tests.Kitchen;

/// <summary>Meat from lugs into the mixer: refused where it would be wrong, booked where it happened.</summary>
public sealed class DrawingTests(KitchenShop shop) : IClassFixture<KitchenShop>
{
    private static readonly ScaleDivision s_bench = ScaleDivision.HundredthPound;

    [Fact]
    public void A_draw_keeps_what_was_wanted_and_what_was_weighed()
    {
        var (job, batch, load) = Planned("Abe Lund");

        KitchenSteps.Expect(shop.Draw(load, job.Lugs[0], 8.00m));
        KitchenSteps.Expect(shop.Draw(load, job.Lugs[1], 4.52m));

        var draws = shop.Read(records => records.Draws.Where(draw => draw.LoadId == load).OrderBy(draw => draw.Id).ToList());
        Assert.Equal([12.50m, 4.50m], draws.Select(draw => s_bench.Figure(draw.Planned))); // 12.50, then 12.50 − 8.00
        Assert.Equal([8.00m, 4.52m], draws.Select(draw => s_bench.Figure(draw.Weighed)));
        Assert.Equal(23.52m, s_bench.Figure(LeftIn(job.Lugs[0]))); // 31.52 − 8.00
        Assert.Empty(Holds(batch));
    }

    [Fact]
    public void A_lug_of_another_owner_is_refused_then_booked_as_already_in_with_a_hold_and_both_owners_touched()
    {
        var (_, batch, load) = Planned("Bea Todd");
        var other = shop.TwoDeer("Cal Nash");

        var refused = shop.Draw(load, other.Lugs[0], 3.10m);
        Assert.Contains($"is another owner's: nothing of job {other.Number} is planned for this batch. Set it aside.", refused.Text(), StringComparison.Ordinal);
        Assert.Equal("Say how it came to be in.", shop.Draw(load, other.Lugs[0], 3.10m, alreadyIn: " ").Text());
        Assert.Empty(Holds(batch));

        KitchenSteps.Expect(shop.Draw(load, other.Lugs[0], 3.10m, alreadyIn: "two lugs stood side by side"));

        var draw = shop.Read(records => records.Draws.Single(one => one.LoadId == load));
        Assert.Equal((null, Weight.Zero, Weight.FromPounds(3.10m), "two lugs stood side by side"), (draw.EntryId, draw.Planned, draw.Weighed, draw.AlreadyInBecause));
        var hold = Assert.Single(Holds(batch));
        Assert.Equal(HoldReason.WrongMeatIn, hold.Reason);
        Assert.EndsWith("two lugs stood side by side", hold.Note, StringComparison.Ordinal);
        Assert.Equal(["Bea Todd", "Cal Nash"], shop.Read(records => records.TouchedBy(batch).Select(job => job.Owner.Name).Order().ToList()));
        Assert.Equal(28.42m, s_bench.Figure(LeftIn(other.Lugs[0]))); // 31.52 − 3.10: it is gone from the other owner's lug
    }

    [Fact]
    public void A_held_batch_takes_no_more_meat_until_the_manager_releases_it()
    {
        var (job, batch, load) = Planned("Dan Frye");
        shop.Must((records, act) => records.HoldBatch(batch, HoldReason.Other, "smells odd", act));

        Assert.Contains("is on hold: other reason", shop.Draw(load, job.Lugs[0], 12.50m).Text(), StringComparison.Ordinal);
        Outcome Release(string because, Hand hand) => shop.Try((records, act) => records.ReleaseBatchHold(Holds(batch).Single().Id, because, act), hand);
        Assert.Equal("Only the manager releases a batch from hold.", Release("smelt again", shop.Hand).Text());
        Assert.Equal("Say why the hold is released.", Release("", shop.File.Manager).Text());

        KitchenSteps.Expect(Release("it was the garlic", shop.File.Manager));
        KitchenSteps.Expect(shop.Draw(load, job.Lugs[0], 12.50m));
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Meat_held_after_it_was_planned_is_not_drawn(bool wholeJob)
    {
        var (job, batch, load) = Planned($"Eve Holt {wholeJob}");
        shop.File.Do((records, act) =>
        {
            if (wholeJob)
                records.Holds.Add(Hold.OnJob(records.Jobs.Single(one => one.Id == job.Id), HoldReason.Dispute, null, act.Now, act.Hand.Id));
            else
                records.Animals.Single(one => one.Id == job.AnimalId).PutOnHold(HoldReason.DiseaseTest, null, act.Now, act.Hand.Id);
            return 0;
        });

        Assert.Contains("on hold", shop.Draw(load, job.Lugs[0], 12.50m).Text(), StringComparison.OrdinalIgnoreCase);

        KitchenSteps.Expect(shop.Draw(load, job.Lugs[0], 12.50m, alreadyIn: "the call came while we ground"));
        Assert.Single(Holds(batch));
    }

    [Fact]
    public void A_lug_gives_little_more_than_was_weighed_into_it()
    {
        var (job, _, load) = Planned("Flo Gray");

        // 15.65 lb were weighed in; 5 % of it, the shop's tolerance between two scales, is 0.78 lb.
        Assert.Contains("holds 15.65 lb by its weigh-in, and 16.44 lb is more", shop.Draw(load, job.Lugs[3], 16.44m).Text(), StringComparison.Ordinal);
        KitchenSteps.Expect(shop.Draw(load, job.Lugs[3], 16.43m, empties: true));
        Assert.Contains("was emptied before", shop.Draw(load, job.Lugs[3], 0.10m).Text(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_struck_draw_leaves_the_load_and_its_lug_can_be_drawn_anew_though_it_was_said_to_be_empty()
    {
        var (job, batch, load) = Planned("Gus Bell");
        shop.Must((records, act) => records.DrawMeat(new DrawOrder(load, job.Lugs[3], Weight.FromPounds(1.25m), true), act));
        var draw = shop.Read(records => records.Draws.Single(one => one.LoadId == load).Id);

        Assert.Equal("Say why it is struck out.", Strike(draw, "").Text());
        KitchenSteps.Expect(Strike(draw, "typed 1.25 for 12.50"));
        Assert.Equal("This was struck out before.", Strike(draw, "again").Text());

        KitchenSteps.Expect(shop.Draw(load, job.Lugs[3], 12.50m));
        Assert.Equal(12.50m, s_bench.Figure(shop.Read(records => records.Loads.Where(one => one.Id == load).Select(one => one.Draws.Where(d => d.StruckAt == null).ToList()).Single()).Single().Weighed));
        Assert.Empty(Holds(batch));
    }

    [Fact]
    public void Of_two_places_of_one_job_the_one_that_wants_most_is_filled()
    {
        var job = shop.Job("Hope Vail", Pooling.Own, [20m], (KitchenShop.Hot, AskKind.OwnLean, 3m), (KitchenShop.Hot, AskKind.OwnLean, 9m));
        var allotments = shop.Read(records => records.GrindAllotments
            .Where(one => one.Product.Name == KitchenShop.Hot && records.AgreedSplits.Any(split => split.Id == one.AgreedSplitId && split.JobId == job.Id)).Select(one => one.Id).ToList());
        var batch = shop.Plan([.. allotments]);
        var load = shop.LoadsOf(batch).Single(); // 12.00 lb lean, 16.00 lb block, 16.32 lb green

        KitchenSteps.Expect(shop.Draw(load, job.Lugs[0], 9.00m));
        KitchenSteps.Expect(shop.Draw(load, job.Lugs[0], 3.00m));

        Assert.Equal([9.00m, 3.00m], shop.Read(records => records.Draws.Where(one => one.LoadId == load).OrderBy(one => one.Id).AsEnumerable().Select(one => s_bench.Figure(one.Planned)).ToList()));
        Assert.Equal(2, shop.Read(records => records.Draws.Where(one => one.LoadId == load).Select(one => one.EntryId).Distinct().Count()));
    }

    [Fact]
    public void Meat_goes_into_a_load_that_has_a_part_of_its_owner()
    {
        // 12 and 18 lb lean: 16.32 and 24.48 lb green, together 40.80 in two loads of 20.40. The first owner is in load 1 alone.
        var first = shop.Job("Ivy Sloan", Pooling.Pooled, [12m], (KitchenShop.Hot, AskKind.Rest, 0m));
        var second = shop.Job("Jeb Trent", Pooling.Pooled, [18m], (KitchenShop.Hot, AskKind.Rest, 0m));
        var batch = shop.Plan(first.Allotments[KitchenShop.Hot], second.Allotments[KitchenShop.Hot]);
        var loads = shop.LoadsOf(batch);

        Assert.Equal($"Nothing of job {first.Number} is planned for load 2; it belongs into load 1.", shop.Draw(loads[1], first.Lugs[0], 2m).Text());
        KitchenSteps.Expect(shop.Draw(loads[0], first.Lugs[0], 2m));
    }

    [Fact]
    public void What_went_in_after_a_load_was_mixed_can_be_booked_and_holds_the_batch()
    {
        var (job, _, load) = Planned("Kim Ash");
        var batch = shop.Read(records => records.Loads.Single(one => one.Id == load).BatchId);
        KitchenSteps.Expect(shop.Draw(load, job.Lugs[0], 12.50m));
        KitchenSteps.Expect(shop.Mix(load, 5.36m));

        Assert.Contains("is mixed already. Draw into another load.", shop.Draw(load, job.Lugs[1], 1m).Text(), StringComparison.Ordinal);
        Assert.Contains("can't be taken back", Strike(shop.Read(records => records.Draws.Single(one => one.LoadId == load).Id), "wrong").Text(), StringComparison.Ordinal);

        KitchenSteps.Expect(shop.Draw(load, job.Lugs[1], 1m, alreadyIn: "a lug was forgotten and thrown in after"));
        Assert.Single(Holds(batch));
    }

    [Fact]
    public void Nothing_is_no_draw_not_even_by_mistake()
    {
        var (job, _, load) = Planned("Lou Wynn");

        Assert.Equal("Type what the scale shows, more than zero.", shop.Draw(load, job.Lugs[0], 0m).Text());
        Assert.Equal("Type what the scale shows, more than zero.", shop.Draw(load, job.Lugs[0], 0m, alreadyIn: "slipped").Text());
    }

    private (MadeJob Job, int Batch, int Load) Planned(string owner)
    {
        var job = shop.TwoDeer(owner);
        var batch = shop.Plan(job.Allotments[KitchenShop.Ring]);
        return (job, batch, shop.LoadsOf(batch)[0]);
    }

    private Outcome Strike(int draw, string because) => shop.Try((records, act) => records.StrikeDraw(draw, because, act));

    private Weight LeftIn(int filling) => shop.Read(records => records.LeftIn(filling, s_bench));

    private List<Hold> Holds(int batch) => shop.Read(records => records.Holds.Standing().Where(hold => hold.BatchId == batch).ToList());
}
