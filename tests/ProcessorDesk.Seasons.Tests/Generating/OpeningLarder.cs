using ProcessorDesk.Records;
using ProcessorDesk.Trade;

namespace ProcessorDesk.Seasons.Tests.Generating;

/// <summary>What the shop's formulas are made with.</summary>
internal sealed class OpeningLarder
{
    public Ingredient Salt { get; } = new(new IngredientFacts("Salt", IngredientKind.Salt, Proportion.Zero, Proportion.Zero) { Salt = Proportion.Whole, Cost = Money.FromCents(32), LeastOnHand = Weight.FromPounds(25m) });

    public Ingredient Cure { get; } = new(new IngredientFacts("Pink curing salt", IngredientKind.Cure, Proportion.FromPercent(6.25m), Proportion.Zero) { Salt = Proportion.FromPercent(93.75m), LeastOnHand = Weight.FromPounds(2m) });

    public Ingredient Pork { get; } = new(new IngredientFacts("Pork trim", IngredientKind.Meat, Proportion.Zero, Proportion.Zero) { IsPork = true, Fat = Proportion.FromPercent(50m), Cost = Money.FromCents(145) });

    public Ingredient Suet { get; } = new(new IngredientFacts("Beef suet", IngredientKind.Meat, Proportion.Zero, Proportion.Zero) { Fat = Proportion.FromPercent(94m), Cost = Money.FromCents(90) });

    public Ingredient Casing { get; } = new(new IngredientFacts("Collagen casing, 32 mm", IngredientKind.Casing, Proportion.Zero, Proportion.Zero) { LeastPieces = 100 });
}
