using ProcessorDesk.Trade.Formulas;

namespace ProcessorDesk.Records;

/// <content>The words of the larder.</content>
public static partial class Wording
{
    public static string Of(IngredientKind kind) => kind switch
    {
        IngredientKind.Meat => "Meat or fat bought in",
        IngredientKind.Seasoning => "Seasoning",
        IngredientKind.Salt => "Salt",
        IngredientKind.Cure => "Cure",
        IngredientKind.AcceleratorAcid => "Accelerator: ascorbic or erythorbic acid",
        IngredientKind.AcceleratorSalt => "Accelerator: sodium ascorbate or erythorbate",
        IngredientKind.Phosphate => "Phosphate",
        IngredientKind.Binder => "Binder",
        IngredientKind.IsolatedSoyProtein => "Binder: isolated soy protein",
        IngredientKind.SodiumCaseinate => "Binder: sodium caseinate",
        IngredientKind.Water => "Water or ice",
        IngredientKind.Casing => "Casing",
        IngredientKind.Other => "Other",
    };

    /// <summary>One allergen, by its name in the law.</summary>
    public static string Of(Allergen allergen) => allergen switch
    {
        Allergen.Milk => "Milk",
        Allergen.Egg => "Egg",
        Allergen.Fish => "Fish",
        Allergen.Shellfish => "Crustacean shellfish",
        Allergen.TreeNuts => "Tree nuts",
        Allergen.Peanuts => "Peanuts",
        Allergen.Wheat => "Wheat",
        Allergen.Soybeans => "Soybeans",
        Allergen.Sesame => "Sesame",
        Allergen.Mustard => "Mustard",
        Allergen.Celery => "Celery",
        Allergen.None => "None of them",
    };

    public static string Of(ProductClass rules) => rules switch
    {
        ProductClass.GroundBeef => "Ground beef, hamburger",
        ProductClass.FreshPorkSausage => "Fresh pork sausage",
        ProductClass.FreshBeefSausage => "Fresh beef sausage",
        ProductClass.BreakfastSausage => "Breakfast sausage",
        ProductClass.ItalianSausage => "Italian sausage",
        ProductClass.UncookedSausage => "Other sausage, not cooked",
        ProductClass.CookedSausage => "Cooked sausage",
        ProductClass.Frankfurter => "Frankfurter, bologna",
    };
}
