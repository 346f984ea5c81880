using ProcessorDesk.Trade;
using Xunit;

namespace ProcessorDesk.Records.Tests.Kitchen;

/// <summary>Steps and readings of a batch, read back as one record.</summary>
public sealed class RecordTests(KitchenShop shop) : IClassFixture<KitchenShop>
{
    [Fact]
    public void A_step_is_taken_once_and_undone_with_a_reason()
    {
        var (batch, _) = shop.MixedRing("Ann Bower");
        Outcome Take(BatchStepKind kind) => shop.Try((records, act) => records.TakeStep(batch, kind, act));

        KitchenSteps.Expect(Take(BatchStepKind.Stuffed));
        Assert.Equal("Stuffed: that was noted before.", Take(BatchStepKind.Stuffed).Text());
        var step = shop.Read(records => records.BatchSteps.Single(one => one.BatchId == batch && one.Kind == BatchStepKind.Stuffed).Id);
        Outcome Undo(string because) => shop.Try((records, act) => records.UndoStep(step, because, act));
        Assert.Equal("Say why it is undone.", Undo(" ").Text());
        KitchenSteps.Expect(Undo("the wrong batch"));
        Assert.Equal("This was undone before.", Undo("again").Text());
        KitchenSteps.Expect(Take(BatchStepKind.Stuffed));
    }

    [Fact]
    public void Nothing_is_stuffed_before_it_is_mixed()
    {
        var job = shop.TwoDeer("Bud Cask");
        var batch = shop.Plan(job.Allotments[KitchenShop.Ring]);

        Assert.Contains("Not every load is mixed yet", shop.Try((records, act) => records.TakeStep(batch, BatchStepKind.Stuffed, act)).Text(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_reading_may_be_typed_late_but_not_before_it_was_taken()
    {
        var (batch, _) = shop.MixedRing("Cam Dray");
        Outcome Note(TimeSpan from) => shop.Try((records, act) => records.NoteReadings(
            batch, [BatchReading.OfTemperature(batch, ReadingStage.Cooking, 1, Temperature.FromFahrenheit(150), act.Now + from, act.Now, act.Hand.Id)], act));

        Assert.Contains("That time is still to come", Note(TimeSpan.FromMinutes(1)).Text(), StringComparison.Ordinal);
        KitchenSteps.Expect(Note(TimeSpan.FromMinutes(-90)));
        Assert.Equal("Type at least one reading.", shop.Try((records, act) => records.NoteReadings(batch, [], act)).Text());
    }

    [Fact]
    public void Steps_readings_and_weights_are_read_back_in_the_order_they_happened()
    {
        var (batch, _) = shop.MixedRing("Dot Eames");
        var mixed = shop.File.Now;
        shop.File.Clock.Advance(TimeSpan.FromHours(3));
        shop.Must((records, act) => records.TakeStep(batch, BatchStepKind.Stuffed, act));
        shop.Must((records, act) => records.NoteReadings(
            batch,
            [
                BatchReading.OfTemperature(batch, ReadingStage.Cooking, 2, Temperature.FromFahrenheit(151.5m), act.Now.AddMinutes(-30), act.Now, act.Hand.Id),
                BatchReading.OfAcidity(batch, 530, act.Now.AddMinutes(-20), act.Now, act.Hand.Id),
            ], act));
        KitchenSteps.Expect(shop.Weigh(batch, shop.LoadsOf(batch)[1], 16.70m));
        var weighed = shop.Read(records => records.WeighIns.Single(one => one.BatchId == batch).Id);
        shop.Must((records, act) => records.StrikeFinished(weighed, "a pan lay under it", act));

        var lines = shop.Read(records => records.LinesOf(batch));

        Assert.Equal(
            [BatchLineKind.Ticket, BatchLineKind.Step, BatchLineKind.Mixed, BatchLineKind.CureAgain, BatchLineKind.Mixed, BatchLineKind.CureAgain, BatchLineKind.Reading, BatchLineKind.Reading, BatchLineKind.Step, BatchLineKind.Finished],
            lines.All.Select(line => line.Kind));
        Assert.Equal(mixed, lines.StepAt(BatchStepKind.RestStarted));
        Assert.Equal(shop.File.Now, lines.StepAt(BatchStepKind.Stuffed));
        Assert.Null(lines.StepAt(BatchStepKind.ChillStarted));
        var probe = Assert.Single(lines.Temperatures(ReadingStage.Cooking));
        Assert.Equal((2, Temperature.FromFahrenheit(151.5m), shop.File.Now.AddMinutes(-30)), (probe.Probe, probe.Reading, probe.At));
        var acidity = lines.Of(BatchLineKind.Reading).Single(line => line.Probe == 0);
        Assert.Equal((530L, (int)ReadingStage.Fermenting, "KH"), (acidity.Amount, acidity.What, acidity.By));
        var weight = lines.All[^1];
        Assert.Equal((shop.LoadsOf(batch)[1], Weight.FromPounds(16.70m).Milligrams, false, "KH", "a pan lay under it"), (weight.LoadId!.Value, weight.Amount, weight.Stands, weight.StruckBy, weight.Because));
        Assert.Empty(lines.Finished);
        Assert.Equal(shop.Read(records => records.Tickets.Single(ticket => ticket.Kind == TicketKind.Batch && ticket.TargetId == batch).Number), lines.Ticket!.Value.Number);
        Assert.Empty(lines.Shares);
    }

    [Fact]
    public void A_weight_of_a_load_is_of_a_load_of_the_batch()
    {
        var (one, _) = shop.MixedRing("Eda Finch");
        var (two, _) = shop.MixedRing("Ezra Finch");

        Assert.Contains("not of this batch", shop.Weigh(one, shop.LoadsOf(two)[0], 16m).Text(), StringComparison.Ordinal);
    }

    [Fact]
    public void Every_act_of_the_kitchen_stands_in_the_journal_with_its_hand()
    {
        var (batch, _) = shop.MixedRing("Fae Grant");

        var last = shop.Read(records => records.Journal.OrderByDescending(entry => entry.Id).First());

        Assert.Equal((shop.Hand.StaffId, "Kitchen"), (last.ById, last.Station));
        Assert.Contains("\"LoadIngredient\"", last.Changes, StringComparison.Ordinal);
        Assert.Contains("\"Batch\"", last.Changes, StringComparison.Ordinal);
        Assert.Null(shop.Read(records => records.FirstBroken()));
        Assert.NotEqual(0, batch);
    }
}
