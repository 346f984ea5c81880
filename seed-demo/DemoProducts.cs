using ProcessorDesk.Records;
using ProcessorDesk.Trade;
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
        Add(records, at, Ring, ProcessKind.Smoked, 70m, "Pork trim", isPork: true, (8m, 10m, 12m), run: 10m, restMinutes: 240,
            [("Salt", 1.60m, null), ("Black pepper", 0.35m, null), ("Sugar", 0.30m, null), ("Garlic", 0.10m, null), ("Ice water", 1.40m, null)]);
        Add(records, at, Summer, ProcessKind.Cooked, 80m, "Pork trim", isPork: true, (10m, 15m, 20m), run: 10m, restMinutes: 1080,
            [("Salt", 1.75m, null), ("Black pepper", 0.40m, null), ("Sugar", 0.35m, null), ("Mustard seed", 0.25m, "mustard"), ("Ice water", 0.50m, null)]);
        Add(records, at, Hot, ProcessKind.Fresh, 75m, "Pork trim", isPork: true, (0m, 0m, 0m), run: 5m, restMinutes: 0,
            [("Salt", 1.40m, null), ("Red pepper", 0.35m, null), ("Sage", 0.25m, null)]);
        Add(records, at, Breakfast, ProcessKind.Fresh, 70m, "Pork trim", isPork: true, (0m, 1m, 2m), run: 5m, restMinutes: 0,
            [("Salt", 1.50m, null), ("Sage", 0.30m, null), ("Non-fat dry milk", 1.20m, "milk")]);
        Add(records, at, BeefFat, ProcessKind.Fresh, 90m, "Beef suet", isPork: false, (0m, 0m, 0m), run: 0m, restMinutes: 0, []);
    }

    public static int IdOf(RecordsContext records, string name) =>
        records.Products.Where(product => product.Name == name).Select(product => product.Id).Single();

    public static bool IsHeated(string name) => name is Ring or Summer;

    private static void Add(
        RecordsContext records,
        DateTime at,
        string name,
        ProcessKind kind,
        decimal lean,
        string fat,
        bool isPork,
        (decimal Low, decimal Typical, decimal High) loss,
        decimal run,
        int restMinutes,
        IEnumerable<(string Name, decimal Percent, string? Allergens)> seasoning)
    {
        var product = new Product(name, kind, cured: kind is ProcessKind.Smoked or ProcessKind.Cooked);
        var lines = seasoning
            .Select((line, i) => new FormulaIngredient(i, line.Name, FormulaBasis.PercentOfBlock, line.Percent, Proportion.Zero, Proportion.Zero, false))
            .ToList();
        if (product.Cured)
            lines.Add(new FormulaIngredient(
                lines.Count, "Pink curing salt", FormulaBasis.OuncesPer100Pounds, 4m, Proportion.FromPercent(6.25m), Proportion.Zero, false));
        var refusal = product.Reformulate(new FormulaVersion(
            at, Proportion.FromPercent(lean), fat, isPork,
            (Proportion.FromPercent(loss.Low), Proportion.FromPercent(loss.Typical), Proportion.FromPercent(loss.High)),
            Weight.FromPounds(run), Weight.Zero, lines, restMinutes));
        if (refusal is not null)
            throw new InvalidOperationException(refusal.Text);
        records.Products.Add(product);
    }
}
