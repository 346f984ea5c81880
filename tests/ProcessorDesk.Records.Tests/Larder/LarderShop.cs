using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records.Tests.Kitchen;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Formulas;
using ProcessorDesk.Trade.Grinding;

namespace ProcessorDesk.Records.Tests.Larder;

/// <summary>
/// The kitchen's shop with a product whose lines point at ingredients: 80 % lean and pork trim, salt 2 %, cure 4 oz to 100 lb, a seasoning that
/// holds cure, bacon ends that count as meat; in hog casings of 1 lb.
/// </summary>
public sealed class LarderShop : IDisposable
{
    public const string Snack = "Snack stick";

    public const int Salt = 0;
    public const int Cure = 1;
    public const int Seasoning = 2;
    public const int Bacon = 3;

    private static readonly Proportion s_none = Proportion.Zero;

    public LarderShop() => Ids = Kitchen.File.Do((records, act) =>
    {
        Ingredient[] all =
        [
            new(new IngredientFacts("Salt", IngredientKind.Salt, s_none, s_none) { Salt = Proportion.Whole }),
            new(new IngredientFacts("Pink salt", IngredientKind.Cure, Proportion.FromPercent(6.25m), s_none)),
            new(new IngredientFacts("Ready seasoning", IngredientKind.Seasoning, Proportion.FromPercent(0.1m), s_none)),
            new(new IngredientFacts("Bacon ends", IngredientKind.Meat, Proportion.FromPercent(0.012m), s_none) { InMeatBlock = true, IsPork = true }),
            new(new IngredientFacts("Pork trim", IngredientKind.Meat, s_none, s_none) { IsPork = true }),
            new(new IngredientFacts("Hog casing", IngredientKind.Casing, s_none, s_none) { IsPork = true }),
        ];
        var product = new Product(Snack, ProcessKind.Smoked, cured: true);
        product.Reformulate(new FormulaVersion(
            act.Now, Proportion.FromPercent(80m), null, false, (s_none, s_none, s_none), Weight.Zero, Weight.Zero,
            [
                new FormulaIngredient(Salt, all[0], FormulaBasis.PercentOfBlock, 2m), new FormulaIngredient(Cure, all[1], FormulaBasis.OuncesPer100Pounds, 3m),
                new FormulaIngredient(Seasoning, all[2], FormulaBasis.PercentOfBlock, 1m), new FormulaIngredient(Bacon, all[3], FormulaBasis.PercentOfBlock, 10m),
            ]).WithAddedFat(all[4]).WithCasing(all[5], Weight.FromPounds(1m)));
        records.Products.Add(product);
        records.SaveChanges();
        return all.ToDictionary(one => one.Name, one => one.Id);
    });

    public KitchenShop Kitchen { get; } = new();

    /// <summary>Ingredients by name.</summary>
    public IReadOnlyDictionary<string, int> Ids { get; }

    /// <summary>A lot as it comes in; its id.</summary>
    /// <param name="amount">Pounds, or pieces of a casing.</param>
    public int Receive(string name, string code, decimal amount, decimal nitrite = 0m, int day = 1) => Kitchen.Must((records, act) =>
    {
        var byPiece = records.Ingredients.Single(one => one.Id == Ids[name]).GoesByPiece;
        return records.ReceiveLot(
            new LotReceipt(Ids[name], code, new DateOnly(2026, 11, day), byPiece ? Weight.Zero : Weight.FromPounds(amount), byPiece ? (int)amount : 0, Proportion.FromPercent(nitrite), s_none), act);
    });

    /// <summary>A load with 8 lb of lean in it; 2 lb of fat make 10 lb of it. With its batch.</summary>
    public (int Load, int Batch) Drawn(string owner)
    {
        var job = Kitchen.Job(owner, Pooling.Own, [8m], (Snack, AskKind.Rest, 0m));
        var batch = Kitchen.Plan(job.Allotments[Snack]);
        var load = Kitchen.LoadsOf(batch).Single();
        KitchenSteps.Expect(Kitchen.Draw(load, job.Lugs[0], 8m));
        return (load, batch);
    }

    /// <summary>Mixes it with 2 lb of fat and grams of each line.</summary>
    public Outcome Mix(int load, IReadOnlyDictionary<int, decimal> grams, IReadOnlyDictionary<int, int>? lots = null, int? fatLot = null, int? casingLot = null, string? lowBecause = null) =>
        Kitchen.Try((records, act) => records.MixLoad(
            new MixOrder(load, Weight.FromPounds(2m), grams.ToDictionary(line => line.Key, line => (Weight.FromGrams(line.Value), WeightUnit.Gram)), lowBecause)
            {
                Again = grams.ToDictionary(line => line.Key, line => (Weight.FromGrams(line.Value), WeightUnit.Gram)),
                Lots = lots ?? new Dictionary<int, int>(),
                FatLotId = fatLot,
                CasingLotId = casingLot,
            },
            records.IsManager(act.Hand), act), Kitchen.File.Manager);

    public LotOnHand Lot(int id) => Kitchen.Read(records => records.IngredientLots.Where(lot => lot.Id == id).OnHand(records).Single());

    public void Dispose() => Kitchen.Dispose();
}
