using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Process;
using Xunit;

namespace ProcessorDesk.Records.Tests.Kitchen;

/// <summary>
/// What the shop sets of its own, and what of it holds for a batch. FSIS-GD-2021-14, Table 2: 145 °F for 4 minutes at 6.5-log and 7-log, 3 at 5-log;
/// p. 20: the limit stands above the table by what the thermometer may be off. 15 and 60 minutes between readings are common practice, no source.
/// </summary>
public sealed class RulesTests : IDisposable
{
    private readonly KitchenShop _shop = new();

    public void Dispose() => _shop.Dispose();

    [Fact]
    public void A_gap_longer_than_set_counts_for_nothing_and_the_batch_is_not_shown()
    {
        Set(cookingGap: 10);
        var (batch, _) = _shop.MixedRing("Al Crane");
        Cook(batch, (0, 160), (10, 160), (21, 120)); // 158 °F at once is a row: met by the first ten minutes
        Assert.Equal(ProcessVerdict.Meets, Verdicts(batch).Cooking!.Verdict);

        var (other, _) = _shop.MixedRing("Bo Dern");
        Cook(other, (0, 145), (11, 145)); // eleven minutes at 145 °F, four are asked for, but nothing counts between readings so far apart
        Assert.Equal(ProcessVerdict.NotShown, Verdicts(other).Cooking!.Verdict);
        Assert.Contains("Cooking: The readings leave out too much to tell.", _shop.Release(other).Text(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_shop_may_ask_for_more_than_was_published_and_not_for_less()
    {
        IReadOnlyList<Finding> Try(CoolingOption? cooling, int cooking, int chilling, int accuracy) => _shop.File.Do((records, _) =>
            records.Shop.Single().SetProcess(cooling, cooking, chilling, Temperature.FromHundredthsFahrenheit(accuracy)));

        Assert.Equal(["CookingGap", "ChillingGap"], Try(null, 16, 61, 0).Select(finding => finding.Field));
        Assert.Equal(["CookingGap", "ChillingGap", "Accuracy"], Try(null, 0, 0, -1).Select(finding => finding.Field));
        Assert.Equal(["Cooling"], Try(CoolingOptions.Three, 15, 60, 0).Select(finding => finding.Field));
        Assert.Empty(Try(CoolingOptions.Two, 15, 60, 200));
    }

    [Fact]
    public void The_thermometers_accuracy_is_added_above_the_table()
    {
        Set(accuracy: 100);
        var (batch, _) = _shop.MixedRing("Cy Dole");
        Cook(batch, (0, 145), (4, 145), (5, 120)); // 145 °F less 1 is 144, whose row asks for 5 minutes

        Assert.NotEqual(ProcessVerdict.Meets, Verdicts(batch).Cooking!.Verdict);

        var (other, _) = _shop.MixedRing("Deb Ford");
        Cook(other, (0, 146), (4, 146), (5, 120)); // 146 less 1 is 145: 4 minutes
        Assert.Equal(ProcessVerdict.Meets, Verdicts(other).Cooking!.Verdict);
    }

    [Fact]
    public void A_rule_set_after_the_mixing_neither_helps_nor_harms_a_batch()
    {
        var (batch, _) = _shop.MixedRing("Eli Grove");
        Cook(batch, (0, 145), (3, 145), (4, 120)); // 3 minutes and a little meet 5-log alone
        Assert.Equal(ProcessVerdict.DoesNotMeet, Verdicts(batch).Cooking!.Verdict);

        Hold(LethalityKind.Meat5Log, "Support letter 3 of the meat lab");
        Set(cookingGap: 1);
        Assert.Equal(ProcessVerdict.DoesNotMeet, Verdicts(batch).Cooking!.Verdict);
        Assert.Equal((LethalityKind.Meat65Log, 15), _shop.Read(records => records.BatchRules.Where(rules => rules.BatchId == batch).AsEnumerable().Select(rules => (rules.Cooking, rules.CookingGapMinutes)).Single()));
    }

    [Fact]
    public void Five_log_needs_the_managers_support_in_writing()
    {
        Assert.Contains("needs written support", Hold(LethalityKind.Meat5Log, " ")!.Text, StringComparison.Ordinal);
        Assert.Null(Hold(LethalityKind.Meat5Log, "Support letter 3 of the meat lab"));
        Set(cookingGap: 5);
        var (batch, _) = _shop.MixedRing("Fritz Hale");
        Cook(batch, (0, 145), (3, 145), (4, 120));

        Assert.Equal(ProcessVerdict.Meets, Verdicts(batch).Cooking!.Verdict);
        Assert.Equal("Support letter 3 of the meat lab", _shop.Read(records => records.BatchRules.Single(rules => rules.BatchId == batch).CookingSupport));
    }

    /// <summary>Option 2 begins at 120 °F; a record that begins at 125 can never meet option 1 (Ohio State University meat science).</summary>
    [Fact]
    public void The_shops_own_cooling_option_is_the_one_that_holds()
    {
        (int Minutes, int Degrees)[] chilled = [(0, 125), (50, 80), (110, 65), (170, 55), (230, 45), (290, 40)];
        var (closest, _) = _shop.MixedRing("Gia Lane");
        Read(closest, ReadingStage.Chilling, chilled);
        Assert.Equal((ProcessVerdict.Meets, CoolingOptions.Two), (Verdicts(closest).Chilling!.Verdict, Verdicts(closest).Chilling!.Option));

        Set(cooling: CoolingOptions.One);
        var (own, _) = _shop.MixedRing("Hank Ross");
        Read(own, ReadingStage.Chilling, chilled);
        Assert.Equal((ProcessVerdict.NotShown, CoolingOptions.One), (Verdicts(own).Chilling!.Verdict, Verdicts(own).Chilling!.Option));
    }

    /// <summary>The mix is 12.50 lb lean and fat and ingredients twice; a third of it has to be gone, which is worked here on what was weighed.</summary>
    [Fact]
    public void Drying_is_held_against_the_loss_the_product_asks_for()
    {
        _shop.File.Do((records, _) => records.Products.Single(product => product.Name == KitchenShop.Ring).HoldAgainst(LethalityKind.Meat65Log, null, Proportion.FromPercent(30m)));
        var (batch, _) = _shop.MixedRing("Ida Moss");
        Assert.Equal(ProcessVerdict.NotShown, Verdicts(batch).Drying!.Verdict);
        var mixed = _shop.Read(records => BatchBalance.Of(records.ReadBatch(batch)!, records.LinesOf(batch), ScaleDivision.HundredthPound)).Mixed.Pounds;

        KitchenSteps.Expect(_shop.Weigh(batch, null, decimal.Floor(mixed * 70m) / 100m + 0.01m));
        Assert.Equal(ProcessVerdict.DoesNotMeet, Verdicts(batch).Drying!.Verdict);
        Assert.Contains("Drying: It has not lost enough weight.", _shop.Release(batch).Text(), StringComparison.Ordinal);

        var weighed = _shop.Read(records => records.WeighIns.Single(one => one.BatchId == batch).Id);
        _shop.Must((records, act) => records.StrikeFinished(weighed, "dried on", act));
        KitchenSteps.Expect(_shop.Weigh(batch, null, decimal.Floor(mixed * 70m) / 100m));
        Assert.Equal(ProcessVerdict.Meets, Verdicts(batch).Drying!.Verdict);
    }

    [Fact]
    public void The_next_batch_of_a_product_begins_with_the_programme_of_the_last()
    {
        var (batch, _) = _shop.MixedRing("Joe Nash");
        _shop.Must((records, act) => records.WriteProgramme(batch, "Dry 130 °F 60 min\nSmoke 150 °F 90 min", act));

        var (next, _) = _shop.MixedRing("Kim Orr");

        Assert.Equal("Dry 130 °F 60 min\nSmoke 150 °F 90 min", _shop.Read(records => records.Batches.Single(one => one.Id == next).Programme));
    }

    private void Set(CoolingOption? cooling = null, int cookingGap = 15, int accuracy = 0) => _shop.File.Do((records, _) =>
    {
        Assert.Empty(records.Shop.Single().SetProcess(cooling, cookingGap, 60, Temperature.FromHundredthsFahrenheit(accuracy)));
        return 0;
    });

    private Finding? Hold(LethalityKind cooking, string support) =>
        _shop.File.Do((records, _) => records.Products.Single(product => product.Name == KitchenShop.Ring).HoldAgainst(cooking, support, null));

    private ProcessVerdicts Verdicts(int batch) => _shop.Read(records => records.ReadBatch(batch)!.VerdictsOn(records.LinesOf(batch), ScaleDivision.HundredthPound));

    private void Cook(int batch, params (int Minutes, int Degrees)[] readings) => Read(batch, ReadingStage.Cooking, readings);

    private void Read(int batch, ReadingStage stage, (int Minutes, int Degrees)[] readings)
    {
        var into = _shop.File.Now;
        _shop.File.Clock.Advance(TimeSpan.FromHours(8));
        _shop.Must((records, act) => records.NoteReadings(batch,
            [.. readings.Select(one => BatchReading.OfTemperature(batch, stage, 1, Temperature.FromFahrenheit(one.Degrees), into.AddMinutes(one.Minutes), act.Now, act.Hand.Id))], act));
    }
}
