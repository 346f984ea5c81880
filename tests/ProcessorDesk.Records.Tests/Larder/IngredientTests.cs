using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Formulas;
using Xunit;

namespace ProcessorDesk.Records.Tests.Larder;

/// <summary>What an ingredient states, and what a formula keeps of it.</summary>
public sealed class IngredientTests
{
    private static readonly Proportion _none = Proportion.Zero;

    [Fact]
    public void A_cure_without_a_strength_is_none()
    {
        var finding = Assert.Single(Ingredient.Check(new IngredientFacts("Cure", IngredientKind.Cure, _none, _none)));

        Assert.Equal("Nitrite", finding.Field);
        Assert.Throws<ArgumentException>(() => new Ingredient(new IngredientFacts("Cure", IngredientKind.Cure, _none, _none)));
        Assert.Empty(Ingredient.Check(new IngredientFacts("Nitrate cure", IngredientKind.Cure, _none, Proportion.FromPercent(4m))));
    }

    [Fact]
    public void No_more_is_in_it_than_the_whole_of_it()
    {
        var pink = new IngredientFacts("Pink salt", IngredientKind.Cure, Proportion.FromPercent(6.25m), _none);

        Assert.Empty(Ingredient.Check(pink with { Salt = Proportion.FromPercent(93.75m) }));
        Assert.Equal("Salt", Assert.Single(Ingredient.Check(pink with { Salt = Proportion.FromPercent(93.76m) })).Field);
    }

    [Fact]
    public void No_pork_covers_fat_casings_and_gelatin()
    {
        var (pork, beef) = (Of("Pork trim", IngredientKind.Meat, isPork: true), Of("Beef suet", IngredientKind.Meat, isPork: false));
        var (hog, collagen) = (Of("Hog casing", IngredientKind.Casing, isPork: true), Of("Collagen casing", IngredientKind.Casing, isPork: false));
        var (gelatin, salt) = (Of("Gelatin", IngredientKind.Other, isPork: true), Of("Salt", IngredientKind.Salt, isPork: false));

        Assert.False(Formula(salt).WithAddedFat(beef).WithCasing(collagen, Weight.FromPounds(1m)).HasPork);
        Assert.True(Formula(salt).WithAddedFat(pork).HasPork);
        Assert.True(Formula(salt).WithAddedFat(beef).WithCasing(hog, Weight.FromPounds(1m)).HasPork);
        Assert.True(Formula(gelatin).WithAddedFat(beef).HasPork);
    }

    [Fact]
    public void Allergens_come_from_lines_added_fat_and_casing()
    {
        var milk = new Ingredient(new IngredientFacts("Dry milk", IngredientKind.Binder, _none, _none) { Contains = Allergen.Milk });
        var fat = new Ingredient(new IngredientFacts("Seasoned fat", IngredientKind.Meat, _none, _none) { Contains = Allergen.Wheat | Allergen.Soybeans });
        var casing = new Ingredient(new IngredientFacts("Fish casing", IngredientKind.Casing, _none, _none) { Contains = Allergen.Fish });

        Assert.Equal(Allergen.Milk | Allergen.Wheat | Allergen.Soybeans | Allergen.Fish, Formula(milk).WithAddedFat(fat).WithCasing(casing, Weight.FromPounds(1m)).Contains);
    }

    [Fact]
    public void A_formula_keeps_what_an_ingredient_was_when_it_was_made()
    {
        var facts = new IngredientFacts("Cure", IngredientKind.Cure, Proportion.FromPercent(6.25m), _none) { Contains = Allergen.Celery };
        var cure = new Ingredient(facts);
        var line = new FormulaIngredient(0, cure, FormulaBasis.OuncesPer25Pounds, 1m);

        cure.Describe(facts with { Name = "Other cure", Nitrite = Proportion.FromPercent(10m), Contains = Allergen.None });

        Assert.Equal(("Cure", Proportion.FromPercent(6.25m), Allergen.Celery), (line.Name, line.Nitrite, line.Contains));
        Assert.Equal(Ratio.Of(1, 400), line.OfMeatBlock); // 1 oz to 25 lb
    }

    private static Ingredient Of(string name, IngredientKind kind, bool isPork) => new(new IngredientFacts(name, kind, _none, _none) { IsPork = isPork });

    private static FormulaVersion Formula(Ingredient line) => new(
        new DateTime(2026, 11, 25, 0, 0, 0, DateTimeKind.Utc), Proportion.FromPercent(90m), null, false, (_none, _none, _none), Weight.Zero, Weight.Zero,
        [new FormulaIngredient(0, line, FormulaBasis.PercentOfBlock, 1m)]);
}
