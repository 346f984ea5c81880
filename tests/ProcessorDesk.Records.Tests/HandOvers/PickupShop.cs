using ProcessorDesk.Records.Tests.Cast;
using ProcessorDesk.Records.Tests.Kitchen;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Grinding;
using Xunit;

namespace ProcessorDesk.Records.Tests.HandOvers;

/// <summary>
/// The kitchen's shop with prices: $95.00 a deer, hot sausage $2.50 and summer sausage $4.25 a finished pound, both taxed at 6.25 %, fat $1.95 a
/// pound and caping $40.00 without tax.
/// </summary>
public sealed class PickupShop : IDisposable
{
    public const string Hot = KitchenShop.Hot;
    public const string Summer = KitchenShop.Summer;
    public const string Backstrap = "Backstrap, steaks";

    public static readonly ScaleDivision Bench = ScaleDivision.HundredthPound;
    private static readonly DateOnly s_today = new(2026, 11, 25);

    private readonly KitchenShop _kitchen = new();

    public PickupShop() => File.Do((records, act) =>
    {
        records.Shop.Single().SetRules(TagRule.Hold, Proportion.FromPercent(6.25m), "Sales tax", Proportion.FromPercent(5m));
        int Product(string name) => records.Products.Single(product => product.Name == name).Id;
        records.PriceLists.Add(new PriceList("Season", s_today,
        [
            new Price(PriceFor.Animal, "Processing", ChargeBasis.Each, 9_500, taxed: false, Species.WhiteTailDeer),
            new Price(PriceFor.Product, Hot, ChargeBasis.FinishedPound, 250, taxed: true, productId: Product(Hot)),
            new Price(PriceFor.Product, Summer, ChargeBasis.FinishedPound, 425, taxed: true, productId: Product(Summer)),
            new Price(PriceFor.AddedFat, "Pork trim", ChargeBasis.AddedFatPound, 195, taxed: false),
            new Price(PriceFor.Extra, "Caping", ChargeBasis.Each, 4_000, taxed: false),
        ]));
        return 0;
    });

    public ShopFile File => _kitchen.File;

    public KitchenShop Kitchen => _kitchen;

    /// <summary>One deer: 9.40 lb of cuts in 6 packs, 20.00 lb of lean, 9.00 of it for hot sausage and 11.00 for summer sausage; $50.00 paid ahead.</summary>
    public MadeJob Job(string owner)
    {
        var job = _kitchen.Job(owner, Pooling.Own, [9.00m, 11.00m], (Hot, AskKind.OwnLean, 9m), (Summer, AskKind.Rest, 0m));
        File.Do((records, act) =>
        {
            records.WeighIns.Add(WeighIn.OfJob(
                WeighInKind.CutPack, job.Id, job.AnimalId, Weight.FromPounds(9.40m), Weight.Zero, new Reading("bench", Bench, Backstrap, Packs: 6), act.Now, act.Hand.Id));
            records.Payments.Add(new Payment(records.Jobs.Single(one => one.Id == job.Id), Money.FromDollars(50m), PaymentMethod.Cash, isDeposit: true, null, act.Now, act.Hand.Id));
            return 0;
        });
        return job;
    }

    /// <summary>12.10 lb of hot sausage, from 9.00 lb of lean and 3.00 of fat.</summary>
    public int MakeHot(MadeJob job) => Make(job, Hot, 0, lean: 9.00m, fat: 3.00m, finished: 12.10m);

    /// <summary>12.30 lb of summer sausage, from 11.00 lb of lean and 2.75 of fat.</summary>
    public int MakeSummer(MadeJob job) => Make(job, Summer, 1, lean: 11.00m, fat: 2.75m, finished: 12.30m);

    /// <summary>From the plan to the release, an hour for each step.</summary>
    private int Make(MadeJob job, string product, int lug, decimal lean, decimal fat, decimal finished)
    {
        var batch = Mix(job, product, lug, lean, fat);
        _kitchen.CookAndChill(batch);
        KitchenSteps.Expect(_kitchen.Weigh(batch, null, finished));
        Later();
        KitchenSteps.Expect(_kitchen.Release(batch));
        Later();
        return batch;
    }

    public int Mix(MadeJob job, string product, int lug, decimal lean, decimal fat)
    {
        var batch = _kitchen.Plan(job.Allotments[product]);
        Later();
        KitchenSteps.Expect(_kitchen.Draw(_kitchen.LoadsOf(batch).Single(), job.Lugs[lug], lean, empties: true));
        KitchenSteps.Expect(_kitchen.Mix(_kitchen.LoadsOf(batch).Single(), fat));
        Later();
        return batch;
    }

    /// <summary>A box of one kind at its net, with a tare of 0.80 lb; answers its id.</summary>
    public int Box(MadeJob job, string kind, decimal net, int packs = 10, string? place = "Shelf 3") => Must((records, act) => records.PackBox(
        new BoxOrder(job.Id, [Packs(job, kind, packs)], Weight.FromPounds(net + 0.80m), Weight.FromPounds(0.80m), place), act));

    public static PacksIn Packs(MadeJob job, string kind, int packs) =>
        kind == Backstrap ? new PacksIn(null, Backstrap, packs) : new PacksIn(job.Allotments[kind], null, packs);

    public int Invoice(MadeJob job) => Must((records, act) => records.IssueInvoice(job.Id, s_today, new Dictionary<int, int>(), act));

    public void Pay(MadeJob job, decimal dollars) => Must((records, act) => records.TakePayment(job.Id, Money.FromDollars(dollars), PaymentMethod.Check, null, act));

    public Outcome TryHandOver(MadeJob job, int[] boxes, int[]? parts = null, string? to = "Ivo Tell", bool owing = false) =>
        Try((records, act) => records.HandOver(new HandOverOrder(job.Id, boxes, parts ?? [], to, owing), act));

    public int HandOver(MadeJob job, int[] boxes, int[]? parts = null, string to = "Ivo Tell", bool owing = false) =>
        Must((records, act) => records.HandOver(new HandOverOrder(job.Id, boxes, parts ?? [], to, owing), act));

    public void Finish(MadeJob job) => Must((records, act) => records.FinishBoxing(job.Id, act));

    /// <summary>One verb an hour after the one before.</summary>
    public Outcome Try(Func<RecordsContext, Act, Outcome> work)
    {
        Later();
        return _kitchen.Try(work, File.Manager);
    }

    public int Must(Func<RecordsContext, Act, Outcome> work)
    {
        Later();
        return _kitchen.Must(work, File.Manager);
    }

    public T Read<T>(Func<RecordsContext, T> read) => _kitchen.Read(read);

    public Job JobOf(MadeJob job) => Read(records => records.Jobs.Single(one => one.Id == job.Id));

    /// <summary>What was still to come at a moment: "Summer sausage: not begun".</summary>
    public List<string> MissingAt(MadeJob job, DateTime moment) => Read(records =>
    {
        var facts = records.Jobs.Single(one => one.Id == job.Id);
        var missing = new MissingGoods(
            facts.CuttingDoneAt, facts.SplitAgreedAt, records.WeighIns.Standing().Any(one => one.JobId == job.Id && one.Kind == WeighInKind.CutPack), facts.BoxedAt,
            records.MadeOf(job.Id), records.GoodsOf(job.Id));
        return missing.At(moment, place => $"still on {place}").Select(one => $"{one.What}: {one.Why}").ToList();
    });

    public void Later() => File.Clock.Advance(TimeSpan.FromHours(1));

    public void Dispose() => _kitchen.Dispose();
}
