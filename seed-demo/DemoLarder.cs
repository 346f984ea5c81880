using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Blending;

namespace ProcessorDesk.SeedDemo;

/// <summary>What the made-up shop's products are made with, and the lots that came in over the season. Suppliers, lots and prices are invented.</summary>
internal static class DemoLarder
{
    public const string Pork = "Pork trim, 50 % lean";
    public const string Suet = "Beef suet";
    public const string Cure = "Pink curing salt";
    public const string HogCasing = "Hog casing, 32 mm";
    public const string Fibrous = "Fibrous casing, 2 1/2 in";

    private const string Mustard = "Mustard seed";

    /// <summary>The ingredients by name.</summary>
    public static IReadOnlyDictionary<string, Ingredient> Stock(RecordsContext records)
    {
        Ingredient[] all =
        [
            Bought(Pork, IngredientKind.Meat, 1.45m, pork: true, fat: "porkTrim50", least: 20m),
            Bought(Suet, IngredientKind.Meat, 0.90m, fat: "beefSuet"),
            New(new IngredientFacts(Cure, IngredientKind.Cure, Proportion.FromPercent(6.25m), Proportion.Zero) { Salt = Proportion.FromPercent(93.75m), Cost = Money.FromDollars(2.60m), LeastOnHand = Weight.FromPounds(1m) }),
            New(new IngredientFacts("Salt", IngredientKind.Salt, Proportion.Zero, Proportion.Zero) { Salt = Proportion.Whole, Cost = Money.FromDollars(0.32m), LeastOnHand = Weight.FromPounds(10m) }),
            Bought("Black pepper", IngredientKind.Seasoning, 6.80m),
            Bought("Red pepper", IngredientKind.Seasoning, 5.20m),
            Bought("Sugar", IngredientKind.Seasoning, 0.75m),
            Bought("Garlic", IngredientKind.Seasoning, 5.90m),
            Bought("Sage", IngredientKind.Seasoning, 9.40m),
            Bought(Mustard, IngredientKind.Seasoning, 2.10m, contains: Allergen.Mustard, least: 2m),
            Bought("Non-fat dry milk", IngredientKind.Binder, 3.30m, contains: Allergen.Milk),
            New(new IngredientFacts("Ice water", IngredientKind.Water, Proportion.Zero, Proportion.Zero) { Water = Proportion.Whole, Cost = Money.Zero }),
            New(new IngredientFacts(HogCasing, IngredientKind.Casing, Proportion.Zero, Proportion.Zero) { IsPork = true, Cost = Money.FromDollars(0.28m), LeastPieces = 50 }),
            New(new IngredientFacts(Fibrous, IngredientKind.Casing, Proportion.Zero, Proportion.Zero) { Cost = Money.FromDollars(0.46m), LeastPieces = 25 }),
        ];
        records.Ingredients.AddRange(all);
        return all.ToDictionary(one => one.Name);
    }

    /// <summary>Dry goods for the whole season at its start; fat by the fortnight, and the old is used up then; a bag of salt that ran out, and mustard that runs low.</summary>
    public static void Receive(Season season)
    {
        (string Name, decimal Amount)[] dry =
            [(Cure, 5m), ("Black pepper", 10m), ("Red pepper", 5m), ("Sugar", 25m), ("Garlic", 5m), ("Sage", 5m), ("Non-fat dry milk", 10m), (HogCasing, 400m), (Fibrous, 150m), (Mustard, 1.5m)];
        foreach (var (name, amount) in dry)
            Receive(season, name, 81, amount, "Lindenfold Spice Co.");
        Receive(season, "Salt", 81, 10m, "Lindenfold Spice Co.");
        Receive(season, "Salt", 30, 50m, "Lindenfold Spice Co.");
        season.Do(season.At(29, 7, 30), "use a lot up", "BQ", "Kitchen", act =>
            season.Records.UseUpLot(season.Records.IngredientLots.Where(lot => lot.Ingredient.Name == "Salt" && lot.UsedUpAt == null).OrderBy(lot => lot.ReceivedOn).Select(lot => lot.Id).First(), act));
        for (var day = 81; day > 0; day -= 14)
        {
            if (day < 81)
                UseUp(season, day);
            Receive(season, Pork, day, 120m, "Ostrow Packing", "Est. 00417");
            Receive(season, Suet, day, 30m, "Ostrow Packing", "Est. 00417");
        }
    }

    /// <summary>No fat is kept longer than a fortnight.</summary>
    private static void UseUp(Season season, int daysAgo) => season.Do(season.At(daysAgo, 7, 0), "use lots up", "BQ", "Kitchen", act =>
    {
        foreach (var lot in season.Records.IngredientLots.Open().Where(lot => lot.Ingredient.Kind == IngredientKind.Meat).Select(lot => lot.Id).ToList())
            season.Records.UseUpLot(lot, act);
        return Outcome.Done();
    });

    private static void Receive(Season season, string name, int daysAgo, decimal amount, string supplier, string? establishment = null) =>
        season.Do(season.At(daysAgo, 7, 5), "receive a lot", "BQ", "Kitchen", act =>
        {
            var ingredient = season.Records.Ingredients.AsNoTracking().Single(one => one.Name == name);
            var day = season.Day(daysAgo);
            return season.Records.ReceiveLot(
                new LotReceipt(
                    ingredient.Id, $"{name[..2].ToUpperInvariant()}-{day:yyMMdd}", day, ingredient.GoesByPiece ? Weight.Zero : Weight.FromPounds(amount),
                    ingredient.GoesByPiece ? decimal.ToInt32(amount) : 0, ingredient.Nitrite, ingredient.Nitrate, supplier, establishment),
                act);
        });

    private static Ingredient Bought(string name, IngredientKind kind, decimal cost, bool pork = false, string? fat = null, Allergen contains = Allergen.None, decimal least = 0m) =>
        New(new IngredientFacts(name, kind, Proportion.Zero, Proportion.Zero)
        {
            IsPork = pork,
            Fat = fat is null ? Proportion.Zero : FatContents.Find(fat).Fat,
            FatSource = fat,
            Contains = contains,
            Cost = Money.FromDollars(cost),
            LeastOnHand = Weight.FromPounds(least),
        });

    private static Ingredient New(IngredientFacts facts) => new(facts);
}
