namespace ProcessorDesk.Records;

/// <summary>What an ingredient is to the formula and to the rules. The numbers are stored.</summary>
public enum IngredientKind
{
    /// <summary>Meat or fat that is bought in, or comes out of the shop's own smokehouse.</summary>
    Meat = 1,
    Seasoning = 2,
    Salt = 3,

    /// <summary>Weighed in for its nitrite or nitrate, which it always states.</summary>
    Cure = 4,

    /// <summary>Ascorbic or erythorbic acid.</summary>
    AcceleratorAcid = 5,

    /// <summary>Sodium ascorbate or sodium erythorbate.</summary>
    AcceleratorSalt = 6,
    Phosphate = 7,

    /// <summary>Dry milk, cereal, starch, soy flour and their like.</summary>
    Binder = 8,

    /// <summary>A binder with a limit of its own.</summary>
    IsolatedSoyProtein = 9,

    /// <summary>A binder with a limit of its own.</summary>
    SodiumCaseinate = 10,
    Water = 11,

    /// <summary>Goes by the piece.</summary>
    Casing = 12,
    Other = 13,
}
