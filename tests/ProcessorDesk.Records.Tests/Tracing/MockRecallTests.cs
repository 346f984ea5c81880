using ProcessorDesk.Records.Tests.HandOvers;
using ProcessorDesk.Trade;
using Xunit;

namespace ProcessorDesk.Records.Tests.Tracing;

/// <summary>A mock recall: what <see cref="RecallShop"/> planted is named, all of it and nothing else, and every pound is accounted for.</summary>
public sealed class MockRecallTests(RecallShop shop) : IClassFixture<RecallShop>
{
    [Fact]
    public void A_positive_animal_is_traced_forwards_to_its_batches_and_owners_and_boxes_and_to_no_other()
    {
        var trace = shop.Trace(TracedKind.Animal, shop.Ann.AnimalId);

        Assert.Equal([shop.Hot, shop.PlainGround, shop.DeesHot], trace.In.Select(batch => batch.Id));
        Assert.Equal([shop.AnnsSummer], trace.Planned.Select(batch => batch.Id));
        Assert.Equal(["Ann Pell", "Ben Roth", "Cal Sund", "Dee Tolk"], trace.ToTell.Select(job => job.Owner));
        Assert.Equal(["Ann 1", "Ann 2", "Ann 3", "Ann 4", "Ben 1", "Cal 1"], Names(trace.BoxesOf));
        Assert.Equal(["Ann 1", "Ann 2", "Ann 3", "Cal 1"], Names(trace.BoxesOf.Where(box => box.IsHere)));
        var gone = Assert.Single(trace.BoxesOf, box => box.LeftAt is not null);
        Assert.Equal(("Ben 1", "Bea Roth"), (Names([gone]).Single(), gone.LeftWith));
        Assert.Equal("two weighed as one", Assert.Single(trace.BoxesOf, box => box.UnpackedAt is not null).UnpackedBecause);
        Assert.Equal(["Shelf 3", "Freezer 2", null, "Shelf 3"], trace.BoxesOf.Where(box => box.IsHere).Select(box => box.Place));
        Assert.All(trace.ToTell, job => Assert.Equal("555-0100", job.Phone));
    }

    [Fact]
    public void Every_pound_of_its_lugs_is_accounted_for_to_the_division()
    {
        var trace = shop.Trace(TracedKind.Animal, shop.Ann.AnimalId);

        var lugs = trace.OwnLugs;
        Assert.Equal(shop.Ann.Lugs, lugs.Select(lug => lug.Id));
        // 20.00 = 12.00 + 5.00 + 3.00 left in it; what was struck is in it again. 7.60 = 5.00 + 2.50 + 0.10 of drip.
        Assert.Equal([20.00m, 7.60m], lugs.Select(lug => Pounds(lug.Lean)));
        Assert.Equal([17.00m, 7.50m], lugs.Select(lug => Pounds(lug.Drawn(PickupShop.Bench))));
        Assert.Equal([3.00m, 0.10m], lugs.Select(lug => Pounds(lug.Rest(PickupShop.Bench))));
        Assert.Equal([false, true], lugs.Select(lug => lug.EmptiedAt is not null));
        Assert.Equal([12.00m, 10.00m, 2.50m], trace.In.Select(batch => Pounds(PickupShop.Bench.Sum(
            trace.DrawsInto(batch).Where(draw => draw.Stands && lugs.Any(lug => lug.Id == draw.LugId)).Select(draw => draw.Weighed)))));
        var struck = Assert.Single(lugs.SelectMany(lug => lug.Draws), draw => !draw.Stands);
        Assert.Equal((shop.ElisHot, 3.00m, "it was seen in time"), (struck.BatchId, Pounds(struck.Weighed), struck.StruckBecause));
    }

    [Fact]
    public void Its_batches_add_up_from_the_lugs_to_the_owners()
    {
        var trace = shop.Trace(TracedKind.Animal, shop.Ann.AnimalId);

        var (hot, plain, dees) = (trace.In[0], trace.In[1], trace.In[2]);
        Assert.Equal([21.00m, 16.00m, 10.50m], trace.In.Select(batch => Pounds(trace.Meat(batch, PickupShop.Bench)))); // 12 + 9; 5 + 5 + 6; 8 + 2.5
        Assert.Equal([7.00m, 0.00m, 2.66m], trace.In.Select(batch => Pounds(batch.Fat)));
        Assert.Equal(28.56m, Pounds(trace.Mixed(hot, PickupShop.Bench))); // 28.00 of meat and fat, and 2 % of seasoning
        Assert.Equal((28.00m, 15.84m, null), (Pounds(hot.Finished!.Value), Pounds(plain.Finished!.Value), dees.Finished));
        Assert.Equal([16.00m, 12.00m], hot.Places.Select(place => Pounds(place.Back!.Value))); // 28.00 as 12 to 9
        Assert.Equal([9.90m, 5.94m], plain.Places.Select(place => Pounds(place.Back!.Value))); // 15.84 as 10 to 6
        Assert.Equal([HoldReason.WrongMeatIn, HoldReason.WrongMeatIn], dees.Holds.Select(hold => hold.Reason)); // the draw, and the mix
        var mistaken = Assert.Single(trace.DrawsInto(dees), draw => draw.EntryId is null);
        Assert.Equal("no card on the lug", mistaken.AlreadyInBecause);
    }

    [Fact]
    public void A_delivered_box_is_traced_backwards_to_the_animals_in_its_batch_and_forwards_to_who_took_it()
    {
        var trace = shop.Trace(TracedKind.Box, shop.Boxes["Ben 1"]);

        Assert.Equal([shop.Hot], trace.In.Select(batch => batch.Id));
        Assert.Equal([shop.Ann.Lugs[0], shop.Ben.Lugs[0]], trace.LugsIn.Select(lug => lug.Id));
        Assert.Equal(["K Ann Pell", "K Ben Roth"], trace.AnimalsIn.Select(animal => animal.Tag));
        Assert.Equal([DiseaseTest.Detected, DiseaseTest.NotRequired], trace.AnimalsIn.Select(animal => animal.Test));
        Assert.Equal(["Ben 1"], Names(trace.BoxesOf));
        Assert.Equal(["Ben Roth"], trace.ToTell.Select(job => job.Owner));
    }

    [Fact]
    public void A_box_of_cuts_is_traced_backwards_to_the_animals_of_its_job() =>
        Assert.Equal([shop.Ann.AnimalId], shop.Trace(TracedKind.Box, shop.Boxes["Ann 3"]).AnimalsIn.Select(animal => animal.Id));

    [Fact]
    public void A_batch_with_meat_in_it_by_mistake_names_the_lugs_and_owners_on_both_sides()
    {
        var trace = shop.Trace(TracedKind.Batch, shop.DeesHot);

        Assert.Equal([shop.Ann.Lugs[1], shop.Dee.Lugs[0]], trace.LugsIn.Select(lug => lug.Id));
        Assert.Equal(["Ann Pell", "Dee Tolk"], trace.ToTell.Select(job => job.Owner));
        Assert.Empty(trace.BoxesOf);
    }

    [Fact]
    public void A_batch_out_of_which_the_wrong_meat_was_taken_again_is_its_owners_alone()
    {
        var trace = shop.Trace(TracedKind.Batch, shop.ElisHot);

        Assert.Empty(trace.LugsIn);
        Assert.Equal(["Eli Ware"], trace.ToTell.Select(job => job.Owner));
        Assert.Equal("it was seen in time", Assert.Single(trace.DrawsInto(trace.In.Single())).StruckBecause);
    }

    [Fact]
    public void A_lug_reaches_no_batch_that_only_the_animals_other_lug_went_into()
    {
        var trace = shop.Trace(TracedKind.Lug, shop.Ann.Lugs[0]);

        Assert.Equal([shop.Hot, shop.PlainGround], trace.In.Select(batch => batch.Id));
        Assert.Equal(["Ann Pell", "Ben Roth", "Cal Sund"], trace.ToTell.Select(job => job.Owner));
        Assert.Equal(["Ann 1", "Ann 2", "Ann 4", "Ben 1", "Cal 1"], Names(trace.BoxesOf));
        Assert.Equal([shop.Ann.AnimalId], trace.AnimalsIn.Select(animal => animal.Id));
    }

    [Fact]
    public void A_job_reaches_as_far_as_all_its_animals()
    {
        var trace = shop.Trace(TracedKind.Job, shop.Ann.Id);
        var animal = shop.Trace(TracedKind.Animal, shop.Ann.AnimalId);

        Assert.Equal(animal.In.Select(batch => batch.Id), trace.In.Select(batch => batch.Id));
        Assert.Equal(animal.ToTell.Select(job => job.Id), trace.ToTell.Select(job => job.Id));
        Assert.Equal(Names(animal.BoxesOf), Names(trace.BoxesOf));
        Assert.Equal(["K Ann Pell", "K Ben Roth", "K Cal Sund", "K Dee Tolk"], trace.AnimalsIn.Select(one => one.Tag));
    }

    [Fact]
    public void A_lot_of_seasoning_reaches_its_batches_and_owners_and_boxes_and_adds_up_to_the_tenth_of_a_gram()
    {
        var trace = shop.Trace(TracedKind.IngredientLot, shop.Seasoning);

        Assert.Equal([shop.Hot, shop.DeesHot], trace.In.Select(batch => batch.Id));
        Assert.Equal(["Ann Pell", "Ben Roth", "Dee Tolk"], trace.ToTell.Select(job => job.Owner)); // Ann in Dee's batch by mistake, and in her own
        Assert.Equal(["Ann 1", "Ben 1"], Names(trace.BoxesOf));
        var lot = trace.Lots.Single();
        Assert.Equal(("S 7", "Example Supply", null), (lot.LotCode, lot.Supplier, lot.Establishment));
        Assert.Equal((300.0m, 607.2m), (ScaleDivision.TenthGram.Figure(lot.Used), ScaleDivision.TenthGram.Figure(lot.Rest))); // 2 lb are 907.18474 g
        Assert.Equal([110.0m], lot.Uses.Where(use => !use.Stands).Select(use => use.Amount.Grams));
    }

    [Fact]
    public void A_lot_of_fat_has_its_supplier_and_establishment_and_names_no_batch_it_was_not_in()
    {
        var trace = shop.Trace(TracedKind.IngredientLot, shop.Pork);

        Assert.Equal(("P 3", "Est. 00000"), (trace.Lots.Single().LotCode, trace.Lots.Single().Establishment));
        Assert.Equal([shop.Hot], trace.In.Select(batch => batch.Id));
        Assert.Equal((7.00m, 33.00m), (Pounds(trace.Lots.Single().Used), Pounds(trace.Lots.Single().Rest)));
        Assert.Equal([shop.Seasoning, shop.Pork], shop.Trace(TracedKind.Box, shop.Boxes["Ben 1"]).LotsIn.Select(one => one.Id).Order());
    }

    [Theory]
    [InlineData(TracedKind.Animal)]
    [InlineData(TracedKind.Job)]
    [InlineData(TracedKind.Lug)]
    [InlineData(TracedKind.Batch)]
    [InlineData(TracedKind.Box)]
    [InlineData(TracedKind.IngredientLot)]
    public void What_is_not_there_has_no_trace(TracedKind kind) => Assert.Null(shop.Shop.Read(records => records.TraceOf(new TraceStart(kind, 1_000_000))));

    private static decimal Pounds(Weight weight) => PickupShop.Bench.Figure(weight);

    private string[] Names(IEnumerable<TracedBox> boxes) => [.. boxes.Select(box => shop.Boxes.Single(one => one.Value == box.Id).Key)];
}
