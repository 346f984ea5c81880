using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Grinding;
using Xunit;

namespace ProcessorDesk.Records.Tests.Kitchen;

/// <summary>
/// A record that does not meet, or does not show, and what is done about it. The table begins at 130 °F (FSIS-GD-2021-14, Table 2), so 129 °F meets
/// no row; 15 minutes are the longest gap of a cooking record.
/// </summary>
public sealed class DispositionTests(KitchenShop shop) : IClassFixture<KitchenShop>
{
    [Fact]
    public void An_experts_letter_needs_name_date_and_reference()
    {
        var batch = Cold("Al Crane");
        Outcome Letter(string name, DateOnly on, string reference, Hand? hand = null, ReadingStage? stage = ReadingStage.Cooking) =>
            shop.Dispose(batch, DispositionKind.ExpertsLetter, stage, name, reference, on, hand);
        var today = DateOnly.FromDateTime(shop.File.Now);

        Assert.Equal(["Name", "Reference"], Letter(" ", today, "", shop.File.Manager).Findings.Select(finding => finding.Field));
        Assert.Equal(["On"], Letter("Dr. Marsh", default, "Letter 7", shop.File.Manager).Findings.Select(finding => finding.Field));
        Assert.Contains("still to come", Letter("Dr. Marsh", today.AddDays(1), "Letter 7", shop.File.Manager).Text(), StringComparison.Ordinal);
        Assert.Equal(["Stage"], Letter("Dr. Marsh", today, "Letter 7", shop.File.Manager, stage: null).Findings.Select(finding => finding.Field));
        Assert.Contains("Only the manager", Letter("Dr. Marsh", today, "Letter 7").Text(), StringComparison.Ordinal);
        Assert.Contains("Cooking: Do not release it.", shop.Release(batch).Text(), StringComparison.Ordinal);

        KitchenSteps.Expect(Letter("Dr. Marsh", today, "Letter 7", shop.File.Manager));
        KitchenSteps.Expect(shop.Release(batch));

        var kept = Assert.Single(shop.Read(records => records.DispositionsOf(batch)));
        Assert.Equal((DispositionKind.ExpertsLetter, ReadingStage.Cooking, "Dr. Marsh", today, "Letter 7"), (kept.Kind, kept.Stage!.Value, kept.Name, kept.On, kept.Reference));
    }

    [Fact]
    public void A_rework_answers_for_what_the_record_does_not_show_and_for_that_part_alone()
    {
        var (batch, _) = shop.MixedRing("Bo Dern");
        var into = shop.File.Now;
        shop.File.Clock.Advance(TimeSpan.FromHours(2));
        Read(batch, into, ReadingStage.Cooking, (0, 45), (60, 150));
        KitchenSteps.Expect(shop.Weigh(batch, null, 33m));
        KitchenSteps.Expect(shop.Dispose(batch, DispositionKind.Reworked, ReadingStage.Cooking, "Meat lab guidance 12", "cooked again to 160 °F, sheet 12-4", hand: shop.File.Manager));

        var text = shop.Release(batch).Text();
        Assert.DoesNotContain("Cooking:", text, StringComparison.Ordinal);
        Assert.Contains("Chilling: There are no readings.", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_letter_lapses_when_the_record_it_judged_is_another_afterwards()
    {
        var batch = Cold("Cy Dole");
        KitchenSteps.Expect(shop.Dispose(batch, DispositionKind.ExpertsLetter, ReadingStage.Cooking, "Dr. Marsh", "Letter 7", hand: shop.File.Manager));
        shop.File.Clock.Advance(TimeSpan.FromMinutes(5));
        Read(batch, shop.File.Now, ReadingStage.Cooking, (-1, 90));

        Assert.Contains("Cooking: The readings leave out too much to tell.", shop.Release(batch).Text(), StringComparison.Ordinal);
    }

    /// <summary>9 CFR 424.21(c) as printed: 1/4 oz to 100 lb is 156.25 ppm; 40 g of a 6.25 % cure on 17.86 lb (8.10 kg) is about 309.</summary>
    [Fact]
    public void No_letter_helps_a_load_whose_cure_is_over_the_limit_or_missing()
    {
        foreach (var grams in new[] { 40m, 0m })
        {
            var job = shop.TwoDeer($"Deb Ford {grams}");
            var batch = shop.Plan(job.Allotments[KitchenShop.Ring]);
            foreach (var load in shop.LoadsOf(batch))
                KitchenSteps.Expect(shop.Draw(load, job.Lugs[0], 12.50m));
            foreach (var (load, fat) in shop.LoadsOf(batch).Zip([5.36m, 5.35m]))
            {
                shop.Must((records, act) => records.MixLoad(
                    new MixOrder(load, Weight.FromPounds(fat), new Dictionary<int, (Weight, WeightUnit)> { [0] = (Weight.FromGrams(300m), WeightUnit.Gram), [1] = (Weight.FromGrams(grams), WeightUnit.Gram) },
                        AlreadyInBecause: "the bag was tipped in"), false, act));
            }

            shop.CookAndChill(batch);
            KitchenSteps.Expect(shop.Weigh(batch, null, 33m));
            shop.Must((records, act) => records.Holds.Standing().Where(hold => hold.BatchId == batch).Select(hold => hold.Id).ToList()
                .Select(hold => records.ReleaseBatchHold(hold, "looked at", act)).Last(), shop.File.Manager);
            foreach (var stage in Enum.GetValues<ReadingStage>())
                KitchenSteps.Expect(shop.Dispose(batch, DispositionKind.ExpertsLetter, stage, "Dr. Marsh", "Letter 8", hand: shop.File.Manager));

            Assert.Contains("Load 1:", shop.Release(batch, hand: shop.File.Manager).Text(), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Owners_told_is_written_by_any_hand_and_opens_nothing_but_the_discard()
    {
        var batch = Cold("Eli Grove");
        shop.TellOwners(batch);

        Assert.Contains("Cooking: Do not release it.", shop.Release(batch, hand: shop.File.Manager).Text(), StringComparison.Ordinal);
        KitchenSteps.Expect(shop.Try((records, act) => records.DiscardBatch(batch, "not cooked through", act), shop.File.Manager));
        Assert.Contains("is over", shop.Dispose(batch, DispositionKind.OwnersTold, null, "Kit Hollow", "again").Text(), StringComparison.Ordinal);
    }

    /// <summary>Mixed, cooked to 129 °F, chilled well, weighed.</summary>
    private int Cold(string owner)
    {
        var (batch, _) = shop.MixedRing(owner);
        var into = shop.File.Now;
        shop.CookAndChill(batch);
        var hot = shop.Read(records => records.BatchReadings.Where(one => one.BatchId == batch && one.Stage == ReadingStage.Cooking).Select(one => one.Id).ToList());
        hot.ForEach(id => shop.Must((records, act) => records.StrikeReading(id, "another house", act)));
        Read(batch, into, ReadingStage.Cooking, (0, 45), (15, 80), (30, 120), (45, 129), (60, 120));
        KitchenSteps.Expect(shop.Weigh(batch, null, 33m));
        return batch;
    }

    private void Read(int batch, DateTime into, ReadingStage stage, params (int Minutes, int Degrees)[] readings) => shop.Must((records, act) => records.NoteReadings(batch,
        [.. readings.Select(one => BatchReading.OfTemperature(batch, stage, 1, Temperature.FromFahrenheit(one.Degrees), into.AddMinutes(one.Minutes), act.Now, act.Hand.Id))], act));
}
