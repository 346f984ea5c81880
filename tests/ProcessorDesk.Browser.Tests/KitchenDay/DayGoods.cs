using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Formulas;

namespace ProcessorDesk.Browser.Tests.KitchenDay;

/// <summary>What the kitchen makes that day, as the test reckons with it. Formulas are invented; the cure is 4 oz of 6.25 % to 100 lb of meat block.</summary>
/// <param name="Lean">Percent of the meat block; the rest is added fat.</param>
/// <param name="Loses">Percent lost between the mixer and the scale, as the story has it.</param>
/// <param name="Seasoning">Percent of the meat block.</param>
internal sealed record DayProduct(
    string Name, ProcessKind Kind, decimal Lean, string? Fat, decimal Loses, string? Casing, params (string Name, decimal Percent)[] Seasoning)
{
    public bool IsCured => Kind != ProcessKind.Fresh;

    public bool IsHeated => Kind is ProcessKind.Smoked or ProcessKind.Cooked or ProcessKind.Fermented;

    public bool HasPork => Fat == DayGoods.Pork || Casing == DayGoods.Hog;
}

internal static class DayGoods
{
    public const string Pork = "Pork trim";
    public const string Suet = "Beef suet";
    public const string Hog = "Hog casing";
    public const string Beef = "Collagen casing";
    public const string Cure = "Pink curing salt";
    public const string Cheese = "Cheddar";

    public const string Plain = "Plain ground";
    public const string Links = "Breakfast links, no pork";
    public const string Hot = "Hot sausage";
    public const string Cheddar = "Cheddar sausage";
    public const string Raw = "Cured raw sausage";
    public const string Rings = "Smoked rings";
    public const string Summer = "Summer sausage";
    public const string Sticks = "Tangy sticks";
    public const string Jerky = "Ground jerky";

    public static readonly IReadOnlyList<DayProduct> Products =
    [
        new(Plain, ProcessKind.Fresh, 100m, null, 0.2m, null),
        new(Links, ProcessKind.Fresh, 85m, Suet, 0.3m, Beef, ("Salt", 1.50m), ("Sage", 0.50m)),
        new(Hot, ProcessKind.Fresh, 75m, Pork, 0.3m, Hog, ("Salt", 1.50m), ("Red pepper", 0.50m)),
        new(Cheddar, ProcessKind.Fresh, 75m, Pork, 0.4m, Hog, ("Salt", 1.60m), (Cheese, 8.00m), ("Black pepper", 0.40m)),
        new(Raw, ProcessKind.CuredRaw, 75m, Pork, 0.5m, Hog, ("Salt", 1.60m), ("Sage", 0.35m)),
        new(Rings, ProcessKind.Smoked, 70m, Pork, 10.2m, Hog, ("Salt", 1.65m), ("Black pepper", 0.60m), ("Water", 1.50m)),
        new(Summer, ProcessKind.Cooked, 80m, Pork, 14.6m, Beef, ("Salt", 1.75m), ("Black pepper", 0.50m), ("Water", 1.00m)),
        new(Sticks, ProcessKind.Fermented, 75m, Pork, 24.8m, Beef, ("Salt", 1.80m), ("Starter", 0.10m), ("Red pepper", 0.60m)),
        new(Jerky, ProcessKind.Dried, 100m, null, 52.3m, null, ("Salt", 1.90m), ("Black pepper", 0.70m), ("Water", 1.10m)),
    ];

    public static DayProduct Find(string name) => Products.Single(product => product.Name == name);

    /// <summary>The larder, its lots, the formulas; the cure and the pork in two lots each.</summary>
    public static void Stock(DayShop shop)
    {
        shop.Do("stock the larder", shop.Manager, "Office", (records, act) =>
        {
            records.Shop.Single().SetMixer(Weight.FromPounds(50m));
            records.Shop.Single().SetDay(smallestFill: Weight.FromPounds(20m), Weight.Zero, Weight.Zero);
            var larder = Ingredients().ToDictionary(one => one.Name);
            records.Ingredients.AddRange(larder.Values);
            records.Products.AddRange(Products.Where(product => product.Name != Plain).Select(product => ToProduct(product, larder, act.Now)));
            return Outcome.Done();
        });
        foreach (var (name, lot, amount) in new[] { (Cure, "CU-1", 3m), (Cure, "CU-2", 3m), (Pork, "PT-1", 90m), (Pork, "PT-2", 120m), (Hog, "HC-1", 900m), (Beef, "CC-1", 900m) }
            .Concat(Ingredients().Where(one => one.Name is not (Cure or Pork or Hog or Beef or "Water")).Select(one => (one.Name, one.Name[..2].ToUpperInvariant() + "-1", 60m))))
        {
            shop.Do("receive a lot", shop.Kitchen, "Kitchen", (records, act) =>
            {
                var ingredient = records.Ingredients.Single(one => one.Name == name);
                return records.ReceiveLot(new LotReceipt(
                    ingredient.Id, lot, new DateOnly(2026, 11, 26), ingredient.GoesByPiece ? Weight.Zero : Weight.FromPounds(amount),
                    ingredient.GoesByPiece ? decimal.ToInt32(amount) : 0, ingredient.Nitrite, ingredient.Nitrate, "Lindenfold Spice Co."), act);
            });
        }
    }

    private static IEnumerable<Ingredient> Ingredients()
    {
        static IngredientFacts Of(string name, IngredientKind kind) => new(name, kind, Proportion.Zero, Proportion.Zero);
        return new[]
        {
            Of(Pork, IngredientKind.Meat) with { IsPork = true },
            Of(Suet, IngredientKind.Meat),
            new IngredientFacts(Cure, IngredientKind.Cure, Proportion.FromPercent(6.25m), Proportion.Zero),
            Of("Salt", IngredientKind.Salt),
            Of("Black pepper", IngredientKind.Seasoning),
            Of("Red pepper", IngredientKind.Seasoning),
            Of("Sage", IngredientKind.Seasoning),
            Of("Starter", IngredientKind.Other),
            Of(Cheese, IngredientKind.Other) with { Contains = Allergen.Milk },
            Of("Water", IngredientKind.Water) with { Water = Proportion.Whole },
            Of(Hog, IngredientKind.Casing) with { IsPork = true },
            Of(Beef, IngredientKind.Casing),
        }.Select(facts => new Ingredient(facts));
    }

    private static Product ToProduct(DayProduct made, Dictionary<string, Ingredient> larder, DateTime at)
    {
        var product = new Product(made.Name, made.Kind, made.IsCured);
        var lines = made.Seasoning.Select((line, i) => new FormulaIngredient(i, larder[line.Name], FormulaBasis.PercentOfBlock, line.Percent)).ToList();
        if (made.IsCured)
            lines.Add(new FormulaIngredient(lines.Count, larder[Cure], FormulaBasis.OuncesPer100Pounds, 4m));
        Proportion Loss(decimal by) => Proportion.FromPercent(Math.Max(0m, made.Loses + by));
        var formula = new FormulaVersion(
            at, Proportion.FromPercent(made.Lean), null, false, (Loss(-3m), Loss(0m), Loss(3m)), Weight.Zero, Weight.Zero, lines,
            restMinutes: made.Kind is ProcessKind.Smoked or ProcessKind.Cooked ? 240 : 0);
        if (made.Fat is { } fat)
            formula = formula.WithAddedFat(larder[fat]);
        if (made.Casing is { } casing)
            formula = formula.WithCasing(larder[casing], Weight.FromPounds(1.25m));
        if (made.Kind == ProcessKind.Dried && product.HoldAgainst(product.Cooking, null, Proportion.FromPercent(45m)) is { } wrong)
            throw new InvalidOperationException(wrong.Text);
        return product.Reformulate(formula) is { } refusal ? throw new InvalidOperationException(refusal.Text) : product;
    }
}
