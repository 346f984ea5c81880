using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Trade;
using Xunit;

namespace ProcessorDesk.Records.Tests.Kitchen;

/// <summary>
/// The cure is checked on what was weighed: at most 1/4 oz nitrite to 100 lb of meat block, 156.25 ppm (9 CFR 424.21(c)); at least 120 ppm in
/// product kept cold (USDA FSIS Directive 7620.3). Parts per million are worked here in decimals, from grams: 1 lb is 453.59237 g.
/// </summary>
public sealed class MixingTests(KitchenShop shop) : IClassFixture<KitchenShop>
{
    private const decimal GramsPerPound = 453.59237m;

    [Fact]
    public void Each_load_gets_cure_for_its_own_meat_rounded_down_to_a_tenth_of_a_gram()
    {
        var (batch, _) = shop.MixedRing("Amy Rusk");

        var cures = Cures(batch);

        // 4 oz to 100 lb is 1/400: 17.86 lb ÷ 400 = 20.253 g, 17.85 lb ÷ 400 = 20.242 g; both down to 20.2 g.
        Assert.Equal(
            [decimal.Floor(17.86m / 400m * GramsPerPound * 10m) / 10m, decimal.Floor(17.85m / 400m * GramsPerPound * 10m) / 10m],
            cures.Select(line => line.Planned.Grams));
        Assert.Equal([20.2m, 20.2m], cures.Select(line => line.Weighed.Grams));
        foreach (var block in (decimal[])[17.86m, 17.85m])
            Assert.InRange(20.2m * 0.0625m / (block * GramsPerPound) * 1_000_000m, 120m, 156.25m);
        Assert.Equal([5.36m, 5.35m], shop.Read(records => records.Loads.Where(load => load.BatchId == batch).OrderBy(load => load.Number).AsEnumerable().Select(load => load.FatWeighed!.Value.Pounds).ToList()).Select(fat => decimal.Round(fat, 2)));
    }

    [Fact]
    public void The_last_load_mixed_puts_the_batch_to_rest()
    {
        var (batch, _) = shop.MixedRing("Ben Tull");

        Assert.Equal(shop.File.Now, shop.Read(records => records.Batches.Single(one => one.Id == batch).MixedAt));
        Assert.Equal([BatchStepKind.RestStarted], shop.Read(records => records.BatchSteps.Where(step => step.BatchId == batch).Select(step => step.Kind).ToList()));
    }

    [Fact]
    public void A_load_drawn_lighter_than_planned_is_asked_for_less_cure()
    {
        var (load, job) = Drawn("Cora May", 12.00m);

        KitchenSteps.Expect(shop.Mix(load, 5.36m));

        // 12.00 + 5.36 = 17.36 lb; ÷ 400 = 19.686 g.
        var cure = shop.Read(records => records.LoadIngredients.Single(line => line.LoadId == load && line.Position == 1));
        Assert.Equal(decimal.Floor(17.36m / 400m * GramsPerPound * 10m) / 10m, cure.Planned.Grams);
        Assert.Equal(19.6m, cure.Weighed.Grams);
        Assert.Equal(19.52m, decimal.Round(shop.Read(records => records.LeftIn(job.Lugs[0], ScaleDivision.HundredthPound)).Pounds, 2)); // 31.52 − 12.00
    }

    [Fact]
    public void Cure_over_the_limit_does_not_start_whoever_asks()
    {
        var (load, _) = Drawn("Dee Polk", 12.50m);

        // 20.3 g × 6.25 % ÷ 17.86 lb = 156.61 ppm
        var ppm = 20.3m * 0.0625m / (17.86m * GramsPerPound) * 1_000_000m;
        foreach (var hand in (Hand[])[shop.Hand, shop.File.Manager])
        {
            var refused = shop.Mix(load, 5.36m, cureGrams: 20.3m, lowBecause: "we always do", hand: hand);
            Assert.Contains($"Too much nitrite: {ppm:0.00} ppm, and the most is 156.25 ppm (1/4 oz per 100 lb)", refused.Text(), StringComparison.Ordinal);
            Assert.Equal("9 CFR 424.21(c), 2015 edition", refused.Findings.Single().Source);
        }

        Assert.Null(shop.Read(records => records.Loads.Single(one => one.Id == load).MixedAt));
    }

    [Fact]
    public void No_cure_in_a_cured_product_never_starts()
    {
        var (load, _) = Drawn("Ed Voss", 12.50m);

        Assert.Contains("There is no cure in this mix.", shop.Mix(load, 5.36m, cureGrams: 0m, lowBecause: "ran out", hand: shop.File.Manager).Text(), StringComparison.Ordinal);
    }

    [Fact]
    public void Less_cure_than_the_minimum_needs_a_reason_from_the_manager()
    {
        var (load, _) = Drawn("Fern Oats", 12.50m);

        // 15.0 g × 6.25 % ÷ 17.86 lb = 115.7 ppm, under 120.
        Assert.InRange(15.0m * 0.0625m / (17.86m * GramsPerPound) * 1_000_000m, 115m, 119.9m);
        Assert.Contains("let the manager give a reason", shop.Mix(load, 5.36m, cureGrams: 15.0m).Text(), StringComparison.Ordinal);
        Assert.Contains("Only the manager accepts less cure", shop.Mix(load, 5.36m, cureGrams: 15.0m, lowBecause: "low salt").Text(), StringComparison.Ordinal);
        KitchenSteps.Expect(shop.Mix(load, 5.36m, cureGrams: 15.0m, lowBecause: "eaten within the week", hand: shop.File.Manager));

        Assert.Equal("eaten within the week", shop.Read(records => records.Loads.Single(one => one.Id == load).LowCureBecause));
    }

    [Fact]
    public void A_mix_that_is_over_the_limit_and_done_can_be_booked_but_never_released()
    {
        var (load, job) = Drawn("Gwen Ives", 12.50m);
        var batch = shop.Read(records => records.Loads.Single(one => one.Id == load).BatchId);

        Assert.Equal("Say how it came to be mixed.", shop.Mix(load, 5.36m, cureGrams: 40m, alreadyIn: " ").Text());
        KitchenSteps.Expect(shop.Mix(load, 5.36m, cureGrams: 40m, alreadyIn: "weighed for both loads at once"));

        var hold = shop.Read(records => records.Holds.Standing().Single(one => one.BatchId == batch));
        Assert.Equal(HoldReason.WrongMeatIn, hold.Reason);
        shop.Must((records, act) => records.ReleaseBatchHold(hold.Id, "tried it all the same", act), shop.File.Manager);
        KitchenSteps.Expect(shop.Draw(shop.LoadsOf(batch)[1], job.Lugs[0], 12.50m));
        KitchenSteps.Expect(shop.Mix(shop.LoadsOf(batch)[1], 5.35m));
        shop.CookAndChill(batch);
        KitchenSteps.Expect(shop.Weigh(batch, null, 33m));
        Assert.Contains("Load 1: Too much nitrite", shop.Release(batch, hand: shop.File.Manager).Text(), StringComparison.Ordinal);
    }

    [Fact]
    public void Added_fat_that_is_planned_is_weighed_and_a_load_without_meat_is_not_mixed()
    {
        var job = shop.TwoDeer("Hugh Ames");
        var load = shop.LoadsOf(shop.Plan(job.Allotments[KitchenShop.Ring]))[0];
        Assert.Contains("No meat is drawn into this load yet", shop.Mix(load, 5.36m).Text(), StringComparison.Ordinal);

        KitchenSteps.Expect(shop.Draw(load, job.Lugs[0], 12.50m));
        Assert.Contains("Type what was weighed in of Pork trim.", shop.Mix(load, 0m).Text(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_job_held_after_its_meat_was_drawn_stops_the_mixing()
    {
        var (load, job) = Drawn("Isa Moon", 12.50m);
        shop.File.Do((records, act) => records.Holds.Add(Hold.OnJob(records.Jobs.Single(one => one.Id == job.Id), HoldReason.Dispute, null, act.Now, act.Hand.Id)));

        Assert.Contains("On hold: in dispute", shop.Mix(load, 5.36m).Text(), StringComparison.Ordinal);
    }

    [Fact]
    public void All_the_meat_in_one_load_finishes_the_mixing_without_the_other()
    {
        var (load, job) = Drawn("Jud Kerr", 25.00m);
        var batch = shop.Read(records => records.Loads.Single(one => one.Id == load).BatchId);
        var other = shop.LoadsOf(batch)[1];
        Outcome Finish() => shop.Try((records, act) => records.FinishMixing(batch, act));
        Assert.Contains("No load is mixed yet", Finish().Text(), StringComparison.Ordinal);
        KitchenSteps.Expect(shop.Mix(load, 10.71m));
        KitchenSteps.Expect(shop.Draw(other, job.Lugs[1], 1m));
        Assert.Contains("Meat is drawn into load 2", Finish().Text(), StringComparison.Ordinal);
        shop.Must((records, act) => records.StrikeDraw(records.Draws.Single(draw => draw.LoadId == other).Id, "it all fitted into one", act));

        KitchenSteps.Expect(Finish());

        Assert.Contains("finished without load 2", shop.Draw(other, job.Lugs[1], 1m).Text(), StringComparison.Ordinal);
        shop.CookAndChill(batch);
        KitchenSteps.Expect(shop.Weigh(batch, null, 33.50m));
        KitchenSteps.Expect(shop.Release(batch));
        Assert.Equal(Weight.FromPounds(33.50m), shop.Read(records => records.FinishedShares.Single(share => share.Entry.BatchId == batch).Weight));
    }

    [Fact]
    public void A_fresh_product_needs_no_cure_and_has_no_rest()
    {
        var job = shop.TwoDeer("Kay Nye");
        var batch = shop.Plan(job.Allotments[KitchenShop.Hot]);
        var load = shop.LoadsOf(batch).Single();
        KitchenSteps.Expect(shop.Draw(load, job.Lugs[0], 11.03m));

        KitchenSteps.Expect(shop.Mix(load, 3.68m));

        Assert.Empty(shop.Read(records => records.BatchSteps.Where(step => step.BatchId == batch).ToList()));
        Assert.NotNull(shop.Read(records => records.Batches.Single(one => one.Id == batch).MixedAt));
    }

    private (int Load, MadeJob Job) Drawn(string owner, decimal pounds)
    {
        var job = shop.TwoDeer(owner);
        var load = shop.LoadsOf(shop.Plan(job.Allotments[KitchenShop.Ring]))[0];
        KitchenSteps.Expect(shop.Draw(load, job.Lugs[0], pounds));
        return (load, job);
    }

    private List<LoadIngredient> Cures(int batch) => shop.Read(records => records.Loads.AsNoTracking().Include(load => load.Ingredients).Where(load => load.BatchId == batch)
        .OrderBy(load => load.Number).AsEnumerable().Select(load => load.Ingredients.Single(line => line.HoldsCure)).ToList());
}
