using Microsoft.Extensions.Time.Testing;
using ProcessorDesk.Migrations;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Formulas;

namespace ProcessorDesk.Seasons.Tests.Generating;

/// <summary>The shop on the morning before its first season, set up through the verbs: hands, products, lugs, a price list for every season.</summary>
internal static class ShopOpening
{
    public const string Sausage = "Smoked ring sausage";
    public const string Breakfast = "Breakfast sausage";
    public const string BeefFat = "Ground with beef fat";

    private const int Lugs = 1_200;

    /// <param name="seasons">The first day of each.</param>
    public static void Open(string path, IReadOnlyList<DateOnly> seasons, DateTime at)
    {
        var clock = new FakeTimeProvider(new DateTimeOffset(at));
        SchemaKeeper.BringUpToDate(path, clock);
        using var records = RecordsFile.Open(path);
        using var gate = new WriteGate();
        var verbs = new Verbs(records, gate, clock);
        StartingShop.Lay(records, verbs, "Nettlefork Custom Meats", "America/Chicago", isDemo: false);
        verbs.Run("set up the shop", Hand.SetUp, null, act =>
        {
            records.Shop.Single().SetRules(TagRule.Hold, Proportion.FromPercent(5.5m), "Sales tax", Proportion.FromPercent(5m));
            foreach (var (role, count) in ((StaffRole, int)[])[(StaffRole.Manager, 1), (StaffRole.Clerk, 3), (StaffRole.Cutter, 6), (StaffRole.Kitchen, 3)])
                records.Staff.AddRange(Enumerable.Range(1, count).Select(i => new Staff($"{role} {i}", $"{role.ToString()[..2]}{i}", role)));
            records.Lugs.AddRange(Enumerable.Range(1, Lugs).Select(number => new Lug(number, Weight.FromPounds(number % 3 == 0 ? 2.86m : 3.10m), act.Now)));
            var larder = new OpeningLarder();
            records.Products.AddRange(
                Made(act, larder, Sausage, ProcessKind.Smoked, 70m, larder.Pork, (8m, 10m, 12m)),
                Made(act, larder, Breakfast, ProcessKind.Fresh, 70m, larder.Pork, (0m, 1m, 2m)),
                Made(act, larder, BeefFat, ProcessKind.Fresh, 90m, larder.Suet, (0m, 0m, 0m)));
            records.SaveChanges();
            records.PriceLists.AddRange(seasons.Select((day, i) => new PriceList($"Season {i + 1}", day, Prices(records, i))));
            return Outcome.Done();
        });
        verbs.Run("begin at the prices", Hand.SetUp, null, act =>
        {
            foreach (var list in records.PriceLists.AsEnumerable().Where(list => seasons.Contains(list.StartsOn)))
                list.Use(act.Now);
            return Outcome.Done();
        });
    }

    private static Product Made(Act act, OpeningLarder larder, string name, ProcessKind kind, decimal lean, Ingredient fat, (decimal Low, decimal Typical, decimal High) loss)
    {
        var product = new Product(name, kind, cured: kind == ProcessKind.Smoked);
        List<FormulaIngredient> lines = [new(0, larder.Salt, FormulaBasis.PercentOfBlock, 1.6m)];
        if (product.Cured)
            lines.Add(new(1, larder.Cure, FormulaBasis.OuncesPer100Pounds, 4m));
        var formula = new FormulaVersion(
            act.Now, Proportion.FromPercent(lean), null, false,
            (Proportion.FromPercent(loss.Low), Proportion.FromPercent(loss.Typical), Proportion.FromPercent(loss.High)), Weight.FromPounds(5m), Weight.Zero, lines).WithAddedFat(fat);
        product.Reformulate(product.Cured ? formula.WithCasing(larder.Casing, Weight.FromPounds(1.1m)) : formula);
        return product;
    }

    private static List<Price> Prices(RecordsContext records, int season) =>
    [
        .. ((Species Species, int Cents, ChargeBasis Basis)[])
            [
                (Species.WhiteTailDeer, 11_500, ChargeBasis.Each), (Species.Elk, 24_000, ChargeBasis.Each), (Species.Lamb, 9_000, ChargeBasis.Each),
                (Species.Hog, 95, ChargeBasis.HangingPound), (Species.Beef, 92, ChargeBasis.HangingPound),
            ] is var animals ? animals.Select(one => new Price(PriceFor.Animal, "Cutting", one.Basis, one.Cents + season, taxed: false, one.Species)) : [],
        .. records.Products.AsEnumerable().Select(product =>
            new Price(PriceFor.Product, product.Name, ChargeBasis.GreenPound, product.IsPlainGround ? 60 : 300 + season, taxed: !product.IsPlainGround, productId: product.Id)),
        new(PriceFor.AddedFat, "Fat bought in and added", ChargeBasis.AddedFatPound, 195, taxed: true),
        new(PriceFor.Extra, "Caping", ChargeBasis.Each, 4_000, taxed: false),
        new(PriceFor.Deposit, "Deposit", ChargeBasis.Each, 5_000, taxed: false),
    ];
}
