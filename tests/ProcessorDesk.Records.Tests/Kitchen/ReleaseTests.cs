using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Grinding;
using Xunit;

namespace ProcessorDesk.Records.Tests.Kitchen;

/// <summary>A batch goes to its owners only with its record, and its finished weight by green weight.</summary>
public sealed class ReleaseTests(KitchenShop shop) : IClassFixture<KitchenShop>
{
    [Fact]
    public void A_smoked_product_is_released_with_its_readings_and_its_weight_and_not_before()
    {
        var (batch, job) = shop.MixedRing("Al Crane");

        var bare = shop.Release(batch).Text();
        Assert.Contains("Cooking: There are no readings.", bare, StringComparison.Ordinal);
        Assert.Contains("Chilling: There are no readings.", bare, StringComparison.Ordinal);
        Assert.Contains("The finished weight is not there. Weigh it.", bare, StringComparison.Ordinal);
        Assert.All(shop.Release(batch).Findings.Where(finding => finding.Text.Contains("readings", StringComparison.Ordinal)), finding => Assert.NotEqual("", finding.Source));

        shop.CookAndChill(batch);
        Assert.Equal("The finished weight is not there. Weigh it.", shop.Release(batch).Text());
        KitchenSteps.Expect(shop.Weigh(batch, null, 33.42m));
        KitchenSteps.Expect(shop.Release(batch));

        Assert.Equal(BatchStage.Released, shop.Read(records => records.Batches.Single(one => one.Id == batch).Stage));
        Assert.Equal(Weight.FromPounds(33.42m), shop.Read(records => records.FinishedShares.Single(share => share.Entry.BatchId == batch).Weight));
        Assert.Null(shop.Read(records => records.Jobs.Single(one => one.Id == job.Id).MadeAt)); // three products are still to be made
        Assert.Contains("is released: its record is closed", shop.Weigh(batch, null, 1m).Text(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_record_that_leaves_the_heat_open_or_shows_too_little_of_it_is_refused()
    {
        var (open, _) = shop.MixedRing("Bo Dern");
        Read(open, ReadingStage.Cooking, (0, 45), (60, 150)); // an hour between readings is a gap: 15 minutes are the longest
        Assert.Contains("Cooking: The readings leave out too much to tell.", shop.Release(open).Text(), StringComparison.Ordinal);

        var (cold, _) = shop.MixedRing("Cia Dern");
        Read(cold, ReadingStage.Cooking, (0, 45), (15, 80), (30, 120), (45, 129), (60, 120)); // the table begins at 130 °F
        Assert.Contains("Cooking: Do not release it.", shop.Release(cold).Text(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_struck_reading_no_longer_counts()
    {
        var (batch, _) = shop.MixedRing("Cy Dole");
        shop.CookAndChill(batch);
        KitchenSteps.Expect(shop.Weigh(batch, null, 33m));
        var hottest = shop.Read(records => records.BatchReadings.Where(one => one.BatchId == batch && one.Stage == ReadingStage.Cooking).OrderByDescending(one => one.TakenAt).Select(one => one.Id).Take(2).ToList());
        Outcome Strike(int id, string because) => shop.Try((records, act) => records.StrikeReading(id, because, act));

        Assert.Equal("Say why it is wrong.", Strike(hottest[0], " ").Text());
        hottest.ForEach(id => KitchenSteps.Expect(Strike(id, "read off another house")));
        Assert.Equal("This reading was struck out before.", Strike(hottest[0], "again").Text());

        // 140 °F is the last that stands, and its row asks for 12 minutes (Table 2).
        Assert.Contains("Cooking:", shop.Release(batch).Text(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_batch_on_hold_is_not_released_and_the_record_can_be_the_reason()
    {
        var (batch, job) = shop.MixedRing("Deb Ford");
        shop.CookAndChill(batch);
        KitchenSteps.Expect(shop.Weigh(batch, null, 33m));
        shop.Must((records, act) => records.HoldBatch(batch, HoldReason.RecordIncomplete, "the chart is missing", act));
        Assert.Contains("on hold: record incomplete", shop.Release(batch).Text(), StringComparison.Ordinal);
        Assert.Contains("Held for this already", shop.Try((records, act) => records.HoldBatch(batch, HoldReason.RecordIncomplete, null, act)).Text(), StringComparison.Ordinal);
        shop.Must((records, act) => records.ReleaseBatchHold(records.Holds.Standing().Single(hold => hold.BatchId == batch).Id, "found behind the smoker", act), shop.File.Manager);

        shop.File.Do((records, act) => records.Animals.Single(one => one.Id == job.AnimalId).PutOnHold(HoldReason.DiseaseTest, null, act.Now, act.Hand.Id));
        Assert.Contains("waiting for the disease test", shop.Release(batch).Text(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_fresh_product_needs_its_weight_alone_and_the_last_product_makes_the_job()
    {
        var job = shop.Job("Eli Grove", Pooling.Own, [9m], (KitchenShop.Hot, AskKind.Rest, 0m));
        var batch = shop.Plan(job.Allotments[KitchenShop.Hot]);
        KitchenSteps.Expect(shop.Draw(shop.LoadsOf(batch).Single(), job.Lugs[0], 9m, empties: true));
        Assert.Contains("Not every load is mixed yet", shop.Weigh(batch, null, 12m).Text(), StringComparison.Ordinal);
        KitchenSteps.Expect(shop.Mix(shop.LoadsOf(batch).Single(), 3m));
        Assert.Equal("The finished weight is not there. Weigh it.", shop.Release(batch).Text());

        KitchenSteps.Expect(shop.Weigh(batch, null, 14.00m, tare: 1.80m));
        KitchenSteps.Expect(shop.Release(batch));

        Assert.Equal(Weight.FromPounds(14.00m) - Weight.FromPounds(1.80m), shop.Read(records => records.FinishedShares.Single(share => share.Entry.BatchId == batch).Weight));
        Assert.Equal(shop.File.Now, shop.Read(records => records.Jobs.Single(one => one.Id == job.Id).MadeAt));
    }

    [Fact]
    public void Dried_product_is_outside_the_tables_and_needs_the_manager_to_name_the_shops_own_process()
    {
        var job = shop.Job("Fritz Hale", Pooling.Own, [10m], (KitchenShop.Jerky, AskKind.Rest, 0m));
        var batch = shop.Plan(job.Allotments[KitchenShop.Jerky]);
        var load = shop.LoadsOf(batch).Single();
        KitchenSteps.Expect(shop.Draw(load, job.Lugs[0], 10m));
        KitchenSteps.Expect(shop.Mix(load, 0m));
        KitchenSteps.Expect(shop.Weigh(batch, null, 4.5m));

        Assert.Contains("outside the published tables", shop.Release(batch).Text(), StringComparison.Ordinal);
        Assert.Contains("Only the manager names the written process", shop.Release(batch, support: "Jerky, process 3").Text(), StringComparison.Ordinal);
        KitchenSteps.Expect(shop.Release(batch, support: " Jerky, process 3 ", hand: shop.File.Manager));

        Assert.Equal("Jerky, process 3", shop.Read(records => records.Batches.Single(one => one.Id == batch).WrittenSupport));
    }

    [Fact]
    public void Written_words_do_not_stand_in_for_readings_of_what_the_tables_reach()
    {
        var (batch, _) = shop.MixedRing("Gia Lane");
        KitchenSteps.Expect(shop.Weigh(batch, null, 33m));

        Assert.Contains("Cooking:", shop.Release(batch, support: "we know how", hand: shop.File.Manager).Text(), StringComparison.Ordinal);
    }

    [Fact]
    public void Thrown_out_by_the_manager_with_a_reason_it_goes_back_to_nobody()
    {
        var job = shop.Job("Hank Ross", Pooling.Own, [9m], (KitchenShop.Hot, AskKind.Rest, 0m));
        var batch = shop.Plan(job.Allotments[KitchenShop.Hot]);
        Outcome Discard(string because, Hand hand) => shop.Try((records, act) => records.DiscardBatch(batch, because, act), hand);
        Assert.Contains("No meat is in it yet", Discard("spoiled", shop.File.Manager).Text(), StringComparison.Ordinal);
        KitchenSteps.Expect(shop.Draw(shop.LoadsOf(batch).Single(), job.Lugs[0], 9m));

        Assert.Equal("Only the manager throws a batch out.", Discard("spoiled", shop.Hand).Text());
        Assert.Contains("Say why it is thrown out", Discard("", shop.File.Manager).Text(), StringComparison.Ordinal);
        Assert.Contains("The owners have to know first.", Discard("the cooler failed", shop.File.Manager).Text(), StringComparison.Ordinal);
        shop.TellOwners(batch);
        KitchenSteps.Expect(Discard("the cooler failed; told him by phone", shop.File.Manager));

        Assert.Equal(BatchStage.Ended, shop.Read(records => records.Batches.Single(one => one.Id == batch).Stage));
        var made = Assert.Single(shop.Read(records => records.MadeOf(job.Id)), product => product.Name == KitchenShop.Hot);
        Assert.Equal(("the cooler failed; told him by phone", false), (made.DiscardedBecause, made.IsReleased));
        Assert.NotNull(shop.Read(records => records.Jobs.Single(one => one.Id == job.Id).MadeAt));
        Assert.Contains("is over", shop.Release(batch).Text(), StringComparison.Ordinal);
        Assert.Contains("is over", shop.Draw(shop.LoadsOf(batch).Single(), job.Lugs[0], 1m, alreadyIn: "late").Text(), StringComparison.Ordinal);
    }

    private void Read(int batch, ReadingStage stage, params (int Minutes, int Degrees)[] readings)
    {
        var into = shop.File.Now;
        shop.File.Clock.Advance(TimeSpan.FromHours(2));
        shop.Must((records, act) => records.NoteReadings(batch,
            [.. readings.Select(one => BatchReading.OfTemperature(batch, stage, 1, Temperature.FromFahrenheit(one.Degrees), into.AddMinutes(one.Minutes), act.Now, act.Hand.Id))], act));
    }
}
