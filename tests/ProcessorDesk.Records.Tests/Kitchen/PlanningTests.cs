using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Grinding;
using Xunit;

namespace ProcessorDesk.Records.Tests.Kitchen;

/// <summary>Allotments into batches, batches into loads.</summary>
public sealed class PlanningTests(KitchenShop shop) : IClassFixture<KitchenShop>
{
    private static readonly ScaleDivision s_bench = ScaleDivision.HundredthPound;

    [Fact]
    public void Ring_sausage_of_two_deer_is_planned_into_two_loads_of_18_57_lb()
    {
        var job = shop.TwoDeer("Ada Fenn");

        var id = shop.Plan(job.Allotments[KitchenShop.Ring]);

        // 25.00 lb lean at 70 : 30 takes 10.71 lb of fat; 35.71 × 1.04 = 37.14 lb; over the mixer's 25, so 37.14 / 2.
        var loads = shop.Read(records => records.Loads.Where(load => load.BatchId == id).OrderBy(load => load.Number).ToList());
        Assert.Equal([18.57m, 18.57m], loads.Select(load => s_bench.Figure(load.Green)));
        Assert.Equal([12.50m, 12.50m], loads.Select(load => s_bench.Figure(load.Lean)));
        Assert.Equal([5.36m, 5.35m], loads.Select(load => s_bench.Figure(load.AddedFat)));
        var parts = shop.Read(records => records.LoadParts.Where(part => part.Entry.BatchId == id).ToList());
        Assert.Equal(Weight.FromPounds(25.00m), parts.Aggregate(Weight.Zero, (sum, part) => sum + part.Lean));
        Assert.Equal((Pooling.Own, BatchStage.Planned), shop.Read(records => records.Batches.Where(batch => batch.Id == id).AsEnumerable().Select(batch => (batch.Pooling, batch.Stage)).Single()));
        Assert.True(shop.Read(records => records.Tickets.Any(ticket => ticket.Kind == TicketKind.Batch && ticket.TargetId == id)));
    }

    [Fact]
    public void Batches_are_numbered_without_gaps_and_a_refusal_takes_no_number()
    {
        var job = shop.TwoDeer("Bo Vance");
        var first = NumberOf(shop.Plan(job.Allotments[KitchenShop.Ring]));

        Assert.False(Plan(job.Allotments[KitchenShop.Ring]).IsDone);
        Assert.False(Plan(job.Allotments[KitchenShop.Summer], job.Allotments[KitchenShop.Hot]).IsDone);

        Assert.Equal(first + 1, NumberOf(shop.Plan(job.Allotments[KitchenShop.Summer])));
    }

    [Fact]
    public void Meat_of_an_owner_who_wants_his_own_back_is_not_planned_with_anothers()
    {
        var own = shop.TwoDeer("Cy Adair");
        var pooled = shop.TwoDeer("Di Marsh", Pooling.Pooled);

        var refused = Plan(own.Allotments[KitchenShop.Hot], pooled.Allotments[KitchenShop.Hot]);

        Assert.Equal($"The owner of job {own.Number} did not agree to pooling. Make a batch of that job alone.", refused.Text());
        Assert.True(Plan(own.Allotments[KitchenShop.Hot]).IsDone);
        Assert.True(Plan(pooled.Allotments[KitchenShop.Hot]).IsDone);
    }

    [Fact]
    public void Owners_who_agreed_are_pooled()
    {
        var one = shop.TwoDeer("Em Rowan", Pooling.Pooled);
        var two = shop.TwoDeer("Fay Cole", Pooling.Pooled);

        var id = shop.Plan(one.Allotments[KitchenShop.Hot], two.Allotments[KitchenShop.Hot]);

        Assert.Equal(Pooling.Pooled, shop.Read(records => records.Batches.Single(batch => batch.Id == id).Pooling));
        // 15.00 lb green each, 30.00 lb in two loads of 15.00.
        Assert.Equal([15.00m, 15.00m], shop.Read(records => records.Loads.Where(load => load.BatchId == id).AsEnumerable().Select(load => s_bench.Figure(load.Green)).ToList()));
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Held_meat_is_not_planned_whether_the_animal_or_the_job_is_held(bool wholeJob)
    {
        var job = shop.TwoDeer($"Gil Frost {wholeJob}");
        Hold(job, wholeJob);

        var refused = Plan(job.Allotments[KitchenShop.Ring]);

        Assert.Contains($"Job {job.Number}:", refused.Text(), StringComparison.Ordinal);
        Assert.Contains("on hold: in dispute", refused.Text(), StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void What_is_planned_is_not_planned_again_until_its_batch_is_taken_off()
    {
        var job = shop.TwoDeer("Hal Stone");
        var allotment = job.Allotments[KitchenShop.Ring];
        var batch = shop.Plan(allotment);
        Assert.Equal("Somebody planned one of these meanwhile. Look at the list again.", Plan(allotment).Text());

        Assert.Equal("Say why the batch is taken off the plan.", TakeOff(batch, " ").Text());
        Assert.True(TakeOff(batch, "the mixer is broken").IsDone);

        Assert.Equal("the mixer is broken", shop.Read(records => records.Batches.Single(one => one.Id == batch).EndedBecause));
        Assert.True(Plan(allotment).IsDone);
        Assert.Contains("is over", TakeOff(batch, "again").Text(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_batch_with_meat_in_it_stays_on_the_plan_until_the_meat_is_struck_out()
    {
        var job = shop.TwoDeer("Ida Pike");
        var batch = shop.Plan(job.Allotments[KitchenShop.Ring]);
        var load = shop.LoadsOf(batch)[0];
        KitchenSteps.Expect(shop.Draw(load, job.Lugs[0], 12.50m));

        Assert.Contains("Meat is in it already", TakeOff(batch, "changed our mind").Text(), StringComparison.Ordinal);
        shop.Must((records, act) => records.StrikeDraw(records.Draws.Single(draw => draw.LoadId == load).Id, "nothing went in", act));

        Assert.True(TakeOff(batch, "changed our mind").IsDone);
    }

    [Fact]
    public void A_split_that_was_taken_back_is_not_planned_and_one_that_is_planned_is_not_taken_back()
    {
        var job = shop.TwoDeer("Jo Reyes");
        var batch = shop.Plan(job.Allotments[KitchenShop.Ring]);
        Outcome Withdraw() => shop.Try((records, act) => records.WithdrawSplit(job.Id, "the owner phoned", act));
        Assert.Contains("Take that batch off the plan first", Withdraw().Text(), StringComparison.Ordinal);

        KitchenSteps.Expect(TakeOff(batch, "the owner phoned"));
        KitchenSteps.Expect(Withdraw());

        Assert.Equal("A split was withdrawn meanwhile. Look at the list again.", Plan(job.Allotments[KitchenShop.Summer]).Text());
    }

    [Fact]
    public void Nothing_and_what_is_not_there_are_no_batch()
    {
        Assert.Equal("Tick what goes into the batch.", Plan().Text());
        var job = shop.TwoDeer("Kai Brook");
        Assert.Equal("One of these is not there any more. Look at the list again.", Plan(job.Allotments[KitchenShop.Ring], 987_654).Text());
    }

    [Fact]
    public void Different_products_are_different_batches_and_so_are_different_formulas()
    {
        var job = shop.TwoDeer("Lee Hart");
        Assert.Equal("A batch is of one product. Take these in several batches.", Plan(job.Allotments[KitchenShop.Ring], job.Allotments[KitchenShop.Summer]).Text());

        var before = shop.Job("Max Dunn", Pooling.Pooled, [20m], (KitchenShop.Jerky, AskKind.Rest, 0m));
        shop.File.Do((records, act) => records.Products.Single(product => product.Name == KitchenShop.Jerky) is { } jerky && records.Entry(jerky).Collection(one => one.Formulas) is { } formulas
            ? Reformulate(jerky, formulas, act) : 0);
        var after = shop.Job("Nell Page", Pooling.Pooled, [20m], (KitchenShop.Jerky, AskKind.Rest, 0m));

        Assert.Equal("These were agreed at different versions of the formula. Make a batch of each version.", Plan(before.Allotments[KitchenShop.Jerky], after.Allotments[KitchenShop.Jerky]).Text());
    }

    private static int Reformulate(Product product, Microsoft.EntityFrameworkCore.ChangeTracking.CollectionEntry formulas, Act act)
    {
        formulas.Load();
        product.Reformulate(new FormulaVersion(
            act.Now, Proportion.Whole, null, false, (Proportion.Zero, Proportion.Zero, Proportion.Zero), Weight.Zero, Weight.Zero, []));
        return product.Id;
    }

    private void Hold(MadeJob job, bool wholeJob) => shop.File.Do((records, act) =>
    {
        if (wholeJob)
            records.Holds.Add(Records.Hold.OnJob(records.Jobs.Single(one => one.Id == job.Id), HoldReason.Dispute, null, act.Now, act.Hand.Id));
        else
            records.Animals.Single(one => one.Id == job.AnimalId).PutOnHold(HoldReason.Dispute, null, act.Now, act.Hand.Id);
        return 0;
    });

    private Outcome Plan(params int[] allotments) => shop.Try((records, act) => records.PlanBatch(allotments, act));

    private Outcome TakeOff(int batch, string because) => shop.Try((records, act) => records.TakeOffPlan(batch, because, act));

    private int NumberOf(int batch) => shop.Read(records => records.Batches.Single(one => one.Id == batch).Number);
}
