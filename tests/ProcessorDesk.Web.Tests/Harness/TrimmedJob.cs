using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Formulas;
using ProcessorDesk.Trade.Grinding;

namespace ProcessorDesk.Web.Tests.Harness;

/// <summary>
/// One owner's two deer with their trim weighed, and four asks: ring sausage, summer sausage, hot sausage, the rest ground.
/// Field-dressed 128.5 and 96.0 lb; fillings net 31.52, 26.38, 19.20 and 15.65 lb.
/// </summary>
public static class TrimmedJob
{
    public static readonly decimal[] Nets = [31.52m, 26.38m, 19.20m, 15.65m];

    private static readonly Proportion Cure = Proportion.FromPercent(6.25m);

    /// <summary>The products and the price list, once for a shop.</summary>
    public static void Prepare(ShopUnderTest shop) => shop.Write((records, act) =>
    {
        var settings = records.Shop.Single();
        settings.SetRules(TagRule.Hold, Proportion.FromPercent(6.25m), "Sales tax", Proportion.FromPercent(5m));
        var ring = Product(records, act, "Ring sausage", ProcessKind.Smoked, 70m, (8m, 10m, 12m), 3.75m);
        var summer = Product(records, act, "Summer sausage", ProcessKind.Cooked, 80m, (10m, 15m, 20m), 3.25m);
        var hot = Product(records, act, "Hot sausage", ProcessKind.Fresh, 75m, (0m, 0m, 0m), 2m);
        records.SaveChanges();
        var plain = records.Products.Single(product => product.IsPlainGround);
        records.PriceLists.Add(new PriceList("Season", new DateOnly(2026, 11, 27),
        [
            new Price(PriceFor.Animal, "Processing", ChargeBasis.Each, 9_500, taxed: false, Species.WhiteTailDeer),
            new Price(PriceFor.Product, "Ring sausage", ChargeBasis.GreenPound, 375, taxed: true, productId: ring.Id),
            new Price(PriceFor.Product, "Summer sausage", ChargeBasis.FinishedPound, 425, taxed: true, productId: summer.Id),
            new Price(PriceFor.Product, "Hot sausage", ChargeBasis.FinishedPound, 250, taxed: true, productId: hot.Id),
            new Price(PriceFor.Product, "Plain ground", ChargeBasis.LeanPound, 110, taxed: false, productId: plain.Id),
            new Price(PriceFor.AddedFat, "Pork trim", ChargeBasis.AddedFatPound, 195, taxed: true),
            new Price(PriceFor.Extra, "Caping", ChargeBasis.Each, 4_000, taxed: false),
        ]));
        return Outcome.Done();
    });

    /// <summary>The job, ready for its split; answers its id.</summary>
    public static int Make(ShopUnderTest shop, string owner = "Ines Moreau", bool finished = true)
    {
        var hand = new Hand(shop.StaffOf(StaffRole.Manager), "Cutting");
        var jobId = int.Parse(
            shop.Write((records, act) => records.TakeIn(DropOff(records, owner), new DateOnly(2026, 11, 27), act), hand).Result,
            System.Globalization.CultureInfo.InvariantCulture);
        shop.Write((records, act) => Weigh(records, act, jobId, finished), hand);
        return jobId;
    }

    public static Animal AnimalOf(RecordsContext records, int jobId) =>
        records.Animals.First(animal => animal.Shares.Any(share => share.JobId == jobId));

    private static DropOff DropOff(RecordsContext records, string owner)
    {
        PlannedAsk Ask(string product, AskKind kind, decimal pounds) => new(
            records.FormulaVersions.Newest().Single(formula => formula.Product.Name == product), kind, Weight.FromPounds(pounds), Proportion.Zero);
        TakenAnimal Deer(string tag, decimal pounds) => new(Species.WhiteTailDeer, ArrivalState.FieldDressed)
        {
            Tag = tag,
            ArrivalWeight = Weight.FromPounds(pounds),
            Parts = [PartKind.Antlers],
        };
        return new DropOff(
            new TakenOwner(null, owner, "555-0134", "9 Orchard Row", null, false),
            [],
            [Deer("TW-1001", 128.5m), Deer("TW-1002", 96.0m)],
            new TakenOrder(
                [],
                [Ask("Ring sausage", AskKind.OwnLean, 25m), Ask("Summer sausage", AskKind.Finished, 20m), Ask("Hot sausage", AskKind.Finished, 15m), Ask("Plain ground", AskKind.Rest, 0m)],
                new DateOnly(2026, 12, 11), Pooling.Own, PackWrap.Vacuum, false, null),
            Money.FromDollars(50m),
            PaymentMethod.Cash);
    }

    private static Outcome Weigh(RecordsContext records, Act act, int jobId, bool finished)
    {
        var job = records.Jobs.Single(one => one.Id == jobId);
        job.StartCutting(act.Now);
        var animals = records.Shares.Where(share => share.JobId == jobId).Select(share => share.AnimalId).ToList();
        var lugNumber = records.Lugs.Count() + 1;
        var reading = new Reading("Bench", ScaleDivision.HundredthPound);
        foreach (var (net, i) in Nets.Select((net, i) => (net, i)))
        {
            var lug = new Lug(lugNumber + i, Weight.FromPounds(3.10m), act.Now);
            var filling = new Records.Filling(lug, jobId, [animals[i / 2]], act.Now);
            records.Fillings.Add(filling);
            records.WeighIns.Add(WeighIn.OfFilling(WeighInKind.LeanTrim, filling, Weight.FromPounds(net + 3.10m), reading, act.Now, act.Hand.Id));
        }

        if (finished)
            job.FinishCutting(act.Now);
        return Outcome.Done(jobId);
    }

    /// <summary>Cure at 4 oz to 100 lb (0.25 % of the block) and seasoning up to the additions asked for.</summary>
    private static Product Product(
        RecordsContext records, Act act, string name, ProcessKind kind, decimal lean, (decimal Low, decimal Typical, decimal High) loss, decimal seasoning)
    {
        var product = new Product(name, kind, cured: kind != ProcessKind.Fresh);
        List<FormulaIngredient> lines = [new(0, "Seasoning", FormulaBasis.PercentOfBlock, seasoning, Proportion.Zero, Proportion.Zero, false)];
        if (product.Cured)
            lines.Add(new FormulaIngredient(1, "Pink curing salt", FormulaBasis.OuncesPer100Pounds, 4m, Cure, Proportion.Zero, false));
        product.Reformulate(new FormulaVersion(
            act.Now, Proportion.FromPercent(lean), "Pork trim", true,
            (Proportion.FromPercent(loss.Low), Proportion.FromPercent(loss.Typical), Proportion.FromPercent(loss.High)), Weight.Zero, Weight.Zero, lines));
        records.Products.Add(product);
        return product;
    }
}
