using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Blending;
using ProcessorDesk.Trade.Formulas;

namespace ProcessorDesk.SeedDemo;

/// <summary>What the made-up shop makes. The formulas are invented; the cure is at the published use level, 4 oz of a 6.25 % cure to 100 lb.</summary>
internal static class DemoProducts
{
    public const string Ring = "Smoked ring sausage";
    public const string Summer = "Summer sausage";
    public const string Hot = "Fresh hot sausage";
    public const string Breakfast = "Breakfast sausage";
    public const string BeefFat = "Ground with beef fat";
    public const string Plain = "Plain ground";

    public static void Make(RecordsContext records, DateTime at)
    {
        var larder = DemoLarder.Stock(records);
        void Add(
            string name, ProcessKind kind, ProductClass rules, decimal lean, string fat, (decimal Low, decimal Typical, decimal High) loss, decimal run, int restMinutes,
            (string Casing, decimal Holds)? casing, params (string Name, decimal Percent)[] seasoning)
        {
            var product = new Product(name, kind, cured: kind is ProcessKind.Smoked or ProcessKind.Cooked);
            product.GuideBy(rules);
            var lines = seasoning.Select((line, i) => new FormulaIngredient(i, larder[line.Name], FormulaBasis.PercentOfBlock, line.Percent)).ToList();
            if (product.Cured)
                lines.Add(new FormulaIngredient(lines.Count, larder[DemoLarder.Cure], FormulaBasis.OuncesPer100Pounds, 4m));
            var formula = new FormulaVersion(
                at, Proportion.FromPercent(lean), null, false,
                (Proportion.FromPercent(loss.Low), Proportion.FromPercent(loss.Typical), Proportion.FromPercent(loss.High)),
                Weight.FromPounds(run), Weight.Zero, lines, restMinutes)
            { LeanFat = FatContents.Find("deer").Fat }.WithAddedFat(larder[fat]);
            if (casing is { } stuffed)
                formula.WithCasing(larder[stuffed.Casing], Weight.FromPounds(stuffed.Holds));
            if (product.Reformulate(formula) is { } refusal)
                throw new InvalidOperationException(refusal.Text);
            records.Products.Add(product);
        }

        Add(Ring, ProcessKind.Smoked, ProductClass.CookedSausage, 70m, DemoLarder.Pork, (8m, 10m, 12m), run: 10m, restMinutes: 240, (DemoLarder.HogCasing, 1.25m),
            ("Salt", 1.60m), ("Black pepper", 0.35m), ("Sugar", 0.30m), ("Garlic", 0.10m), ("Ice water", 1.40m));
        Add(Summer, ProcessKind.Cooked, ProductClass.CookedSausage, 80m, DemoLarder.Pork, (10m, 15m, 20m), run: 10m, restMinutes: 1080, (DemoLarder.Fibrous, 3.5m),
            ("Salt", 1.75m), ("Black pepper", 0.40m), ("Sugar", 0.35m), ("Mustard seed", 0.25m), ("Ice water", 0.50m));
        Add(Hot, ProcessKind.Fresh, ProductClass.UncookedSausage, 75m, DemoLarder.Pork, (0m, 0m, 0m), run: 5m, restMinutes: 0, (DemoLarder.HogCasing, 1.25m),
            ("Salt", 1.40m), ("Red pepper", 0.35m), ("Sage", 0.25m));
        Add(Breakfast, ProcessKind.Fresh, ProductClass.BreakfastSausage, 70m, DemoLarder.Pork, (0m, 1m, 2m), run: 5m, restMinutes: 0, null,
            ("Salt", 1.50m), ("Sage", 0.30m), ("Non-fat dry milk", 1.20m));
        Add(BeefFat, ProcessKind.Fresh, ProductClass.GroundBeef, 90m, DemoLarder.Suet, (0m, 0m, 0m), run: 0m, restMinutes: 0, null);
    }

    public static int IdOf(RecordsContext records, string name) =>
        records.Products.Where(product => product.Name == name).Select(product => product.Id).Single();

    public static bool IsHeated(string name) => name is Ring or Summer;
}
