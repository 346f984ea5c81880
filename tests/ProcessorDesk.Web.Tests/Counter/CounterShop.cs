using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Formulas;
using ProcessorDesk.Web.Tests.Harness;

namespace ProcessorDesk.Web.Tests.Counter;

/// <summary>A small named cast for the counter: one owner, four products, a price list.</summary>
public sealed class CounterShop : ShopUnderTest
{
    public CounterShop()
    {
        Write((records, act) =>
        {
            var ada = new Owner("Ada Brandt", "(608) 555-0142");
            ada.Describe("Ada Brandt", "(608) 555-0142", "14 Mill Road", null);
            records.Owners.AddRange(ada, new Owner("Ben Cole", "608-555-0177"), new Owner("Benita Cole", "608-555-0178"));
            var ring = Product(records, "Ring sausage", ProcessKind.Smoked, cured: true, lean: 70m, pork: true, loss: 0m, new FormulaIngredient(0, "Cure 6.25 %", FormulaBasis.OuncesPer100Pounds, 4m, Proportion.FromPercent(6.25m), Proportion.Zero, false), act.Now);
            var hot = Product(records, "Hot sausage", ProcessKind.Fresh, cured: false, lean: 75m, pork: true, loss: 0m, new FormulaIngredient(0, "Spice", FormulaBasis.PercentOfBlock, 2m, Proportion.Zero, Proportion.Zero, false), act.Now);
            var beef = Product(records, "Suet patties", ProcessKind.Fresh, cured: false, lean: 90m, pork: false, loss: 0m, null, act.Now);
            records.SaveChanges();
            records.PriceLists.Add(new PriceList("Autumn", new DateOnly(2026, 11, 27),
            [
                new Price(PriceFor.Animal, "Cutting a deer", ChargeBasis.Each, 12_000, taxed: false, Species.WhiteTailDeer),
                new Price(PriceFor.Product, "Ring sausage", ChargeBasis.FinishedPound, 400, taxed: true, productId: ring.Id),
                new Price(PriceFor.Deposit, "Deposit", ChargeBasis.Each, 5_000, taxed: false),
            ]));
            return Outcome.Done();
        });
    }

    public int ProductId(string name) => Read(records => records.Products.Single(product => product.Name == name).Id);

    public int OwnerId(string name) => Read(records => records.Owners.Single(owner => owner.Name == name).Id);

    public int Jobs => Read(records => records.Jobs.Count());

    private static Product Product(
        RecordsContext records, string name, ProcessKind kind, bool cured, decimal lean, bool pork, decimal loss, FormulaIngredient? line, DateTime at)
    {
        var product = new Product(name, kind, cured);
        var percent = Proportion.FromPercent(loss);
        product.Reformulate(new FormulaVersion(
            at, Proportion.FromPercent(lean), pork ? "Pork trim" : "Suet", pork, (percent, percent, percent), Weight.Zero, Weight.Zero, line is null ? [] : [line]));
        records.Products.Add(product);
        return product;
    }
}
