using ProcessorDesk.Records.Tests.HandOvers;
using ProcessorDesk.Records.Tests.Kitchen;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Grinding;

namespace ProcessorDesk.Records.Tests.Tracing;

/// <summary>
/// A small shop with a planted mistake. Five owners; Ann Pell's deer tests positive when some of it is gone:
/// <code>
/// Ann's lug 1, 20.00 lb:  12.00 into hot (with Ben's 9.00), 5.00 into plain, 3.00 into Eli's hot by mistake and struck out; 3.00 still in it
/// Ann's lug 2,  7.60 lb:   5.00 into plain (with Cal's 6.00), 2.50 into Dee's hot by mistake, mixed; empty, 0.10 of it drip
/// hot:   21.00 of meat, 7.00 of fat;  finished 28.00: Ann 16.00, Ben 12.00
/// plain: 16.00 of meat;               finished 15.84: Ann 9.90, Cal 5.94
/// Dee's hot: 8.00 of her own and 2.50 of Ann's; on hold
/// Ann's summer sausage: planned, nothing drawn
/// seasoning, lot S 7, 2 lb: 200.0 g into hot, 100.0 g into Dee's hot, and 110.0 g there that were struck out
/// pork trim, lot P 3, establishment 00000, 40 lb: 7.00 lb into hot
/// boxes: Ann 1 hot, 2 plain, 3 cuts, in the freezer, 4 plain unpacked; Ben 1 hot, handed over; Cal 1 plain, in the freezer
/// </code>
/// </summary>
public sealed class RecallShop : IDisposable
{
    public const string Plain = "Plain ground";

    public RecallShop()
    {
        Shop.File.Do((records, _) =>
        {
            records.Shop.Single().SetMixer(Weight.FromPounds(100m));
            return 0;
        });
        Ann = Job("Ann Pell", Pooling.Pooled, [20.00m, 7.60m], (PickupShop.Hot, AskKind.OwnLean, 12m), (Plain, AskKind.OwnLean, 10m), (PickupShop.Summer, AskKind.Rest, 0m));
        Ben = Job("Ben Roth", Pooling.Pooled, [9.00m], (PickupShop.Hot, AskKind.Rest, 0m));
        Cal = Job("Cal Sund", Pooling.Pooled, [6.00m], (Plain, AskKind.Rest, 0m));
        Dee = Job("Dee Tolk", Pooling.Own, [8.00m], (PickupShop.Hot, AskKind.Rest, 0m));
        Eli = Job("Eli Ware", Pooling.Own, [8.00m], (PickupShop.Hot, AskKind.Rest, 0m));
        Hot = Kitchen.Plan(Ann.Allotments[PickupShop.Hot], Ben.Allotments[PickupShop.Hot]);
        PlainGround = Kitchen.Plan(Ann.Allotments[Plain], Cal.Allotments[Plain]);
        DeesHot = Kitchen.Plan(Dee.Allotments[PickupShop.Hot]);
        ElisHot = Kitchen.Plan(Eli.Allotments[PickupShop.Hot]);
        AnnsSummer = Kitchen.Plan(Ann.Allotments[PickupShop.Summer]);
        var struck = Draw(ElisHot, Ann.Lugs[0], 3.00m, alreadyIn: "two lugs side by side");
        Shop.Must((records, act) => records.StrikeDraw(struck, "it was seen in time", act));
        Draw(Hot, Ann.Lugs[0], 12.00m);
        Draw(Hot, Ben.Lugs[0], 9.00m, empties: true);
        Draw(PlainGround, Ann.Lugs[0], 5.00m);
        Draw(PlainGround, Ann.Lugs[1], 5.00m);
        Draw(PlainGround, Cal.Lugs[0], 6.00m, empties: true);
        Draw(DeesHot, Dee.Lugs[0], 8.00m, empties: true);
        Draw(DeesHot, Ann.Lugs[1], 2.50m, empties: true, alreadyIn: "no card on the lug");
        Seasoning = Receive(new IngredientFacts("Seasoning", IngredientKind.Seasoning, Proportion.Zero, Proportion.Zero), "S 7", 2m, null);
        Pork = Receive(new IngredientFacts("Pork trim", IngredientKind.Meat, Proportion.Zero, Proportion.Zero), "P 3", 40m, "Est. 00000");
        Finish(Hot, fat: 7.00m, finished: 28.00m);
        Finish(PlainGround, fat: 0m, finished: 15.84m);
        Mix(DeesHot, 2.66m, "mixed before anybody saw it");
        var wrong = Note(DeesHot, 0, Seasoning, Weight.FromGrams(110m));
        Shop.Must((records, act) => records.StrikeLotUse(wrong, "read off wrongly", act));
        Note(DeesHot, 0, Seasoning, Weight.FromGrams(100m));
        Boxes = new Dictionary<string, int>
        {
            ["Ann 1"] = Shop.Box(Ann, PickupShop.Hot, 16.00m),
            ["Ann 2"] = Shop.Box(Ann, Plain, 9.90m, place: "Freezer 2"),
            ["Ann 3"] = Shop.Box(Ann, PickupShop.Backstrap, 4.20m, place: null),
            ["Ann 4"] = Shop.Box(Ann, Plain, 1.00m),
            ["Ben 1"] = Shop.Box(Ben, PickupShop.Hot, 12.00m),
            ["Cal 1"] = Shop.Box(Cal, Plain, 5.94m),
        };
        Shop.Must((records, act) => records.UnpackBox(Boxes["Ann 4"], "two weighed as one", act));
        Shop.Invoice(Ben);
        Shop.HandOver(Ben, [Boxes["Ben 1"]], to: "Bea Roth", owing: true);
        Shop.Must((records, _) =>
        {
            records.Animals.Single(one => one.Id == Ann.AnimalId).RecordDiseaseTest(DiseaseTest.Detected, "S 118", "State laboratory", new DateOnly(2026, 12, 1));
            return Outcome.Done(Ann.AnimalId);
        });
    }

    public PickupShop Shop { get; } = new();

    public MadeJob Ann { get; }

    public MadeJob Ben { get; }

    public MadeJob Cal { get; }

    public MadeJob Dee { get; }

    public MadeJob Eli { get; }

    public int Hot { get; }

    public int PlainGround { get; }

    public int DeesHot { get; }

    public int ElisHot { get; }

    public int AnnsSummer { get; }

    /// <summary>Lots.</summary>
    public int Seasoning { get; }

    public int Pork { get; }

    public IReadOnlyDictionary<string, int> Boxes { get; }

    private KitchenShop Kitchen => Shop.Kitchen;

    public Trace Trace(TracedKind kind, int id) => Shop.Read(records => records.TraceOf(new TraceStart(kind, id)))!;

    public void Dispose() => Shop.Dispose();

    private MadeJob Job(string owner, Pooling pooling, decimal[] nets, params (string Product, AskKind Kind, decimal Amount)[] asks) => Kitchen.Job(owner, pooling, nets, asks);

    private int Draw(int batch, int lug, decimal pounds, bool empties = false, string? alreadyIn = null)
    {
        var load = Kitchen.LoadsOf(batch)[0];
        Free(batch);
        return Shop.Must((records, act) => records.DrawMeat(new DrawOrder(load, lug, Weight.FromPounds(pounds), empties, alreadyIn), act));
    }

    /// <summary>The manager lets a batch go on that is held for the wrong meat in it.</summary>
    private void Free(int batch)
    {
        foreach (var hold in Shop.Read(records => records.Holds.Standing().Where(hold => hold.BatchId == batch).Select(hold => hold.Id).ToList()))
            Shop.Must((records, act) => records.ReleaseBatchHold(hold, "looked at", act));
    }

    private void Mix(int batch, decimal fat, string? alreadyIn = null) =>
        KitchenSteps.Expect(Kitchen.Mix(Kitchen.LoadsOf(batch).Single(), fat, alreadyIn: alreadyIn));

    private void Finish(int batch, decimal fat, decimal finished)
    {
        foreach (var load in Kitchen.LoadsOf(batch))
        {
            if (Shop.Read(records => records.Draws.Any(draw => draw.LoadId == load)))
                KitchenSteps.Expect(Kitchen.Mix(load, fat));
        }

        Shop.Try((records, act) => records.FinishMixing(batch, act));
        if (batch == Hot)
        {
            Note(batch, 0, Seasoning, Weight.FromGrams(200m));
            Note(batch, null, Pork, Weight.FromPounds(7m));
        }

        Kitchen.CookAndChill(batch);
        KitchenSteps.Expect(Kitchen.Weigh(batch, null, finished));
        KitchenSteps.Expect(Kitchen.Release(batch));
    }

    private int Receive(IngredientFacts facts, string code, decimal pounds, string? establishment)
    {
        var ingredient = Shop.File.Do((records, _) =>
        {
            var added = new Ingredient(facts);
            records.Ingredients.Add(added);
            records.SaveChanges();
            return added.Id;
        });
        return Shop.Must((records, act) => records.ReceiveLot(
            new LotReceipt(ingredient, code, new DateOnly(2026, 11, 20), Weight.FromPounds(pounds), 0, Proportion.Zero, Proportion.Zero, "Example Supply", establishment), act));
    }

    /// <summary>Answers the use's id.</summary>
    private int Note(int batch, int? position, int lot, Weight amount)
    {
        Shop.Must((records, act) => records.NoteLot(new LotNote(Kitchen.LoadsOf(batch)[0], position, lot, amount, 0), act));
        return Shop.Read(records => records.LotUses.Max(use => use.Id));
    }
}
