using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Grinding;

namespace ProcessorDesk.Records;

/// <summary>One version of a product's formula. Never changed: a change is a new version.</summary>
public sealed class FormulaVersion
{
    private readonly List<FormulaIngredient> _ingredients = [];

    private FormulaVersion()
    {
    }

    public FormulaVersion(
        DateTime madeAt,
        Proportion leanShare,
        string? addedFat,
        bool addedFatIsPork,
        (Proportion Low, Proportion Typical, Proportion High) loss,
        Weight smallestRun,
        Weight step,
        IEnumerable<FormulaIngredient> ingredients,
        int restMinutes = 0)
    {
        MadeAt = madeAt;
        LeanShare = leanShare;
        AddedFat = Texts.OrNull(addedFat);
        AddedFatIsPork = addedFatIsPork;
        (LossLow, LossTypical, LossHigh) = loss;
        SmallestRun = smallestRun;
        Step = step;
        RestMinutes = restMinutes;
        _ingredients.AddRange(ingredients);
    }

    public int Id { get; private set; }

    public int ProductId { get; private set; }

    public Product Product { get; private set; } = null!;

    public int Number { get; internal set; }

    public DateTime MadeAt { get; private set; }

    /// <summary>The owner's lean in the meat block; the rest is added fat.</summary>
    public Proportion LeanShare { get; private set; }

    /// <summary>Fat in the owner's lean, as the shop counts it; null where nobody said.</summary>
    public Proportion? LeanFat { get; init; }

    public string? AddedFat { get; private set; }

    public bool AddedFatIsPork { get; private set; }

    /// <summary>Fat in what is added; null where nobody said.</summary>
    public Proportion? AddedFatFat { get; private set; }

    public int? AddedFatIngredientId { get; private set; }

    public Ingredient? AddedFatIngredient { get; private set; }

    /// <summary>What it is stuffed into; null for loose product.</summary>
    public string? Casing { get; private set; }

    public bool CasingIsPork { get; private set; }

    /// <summary>Green weight one casing holds; null for loose product.</summary>
    public Weight? CasingHolds { get; private set; }

    public int? CasingIngredientId { get; private set; }

    public Ingredient? CasingIngredient { get; private set; }

    /// <summary>Allergens of added fat and casing; those of the lines stand with them.</summary>
    public Allergen ContainsBeside { get; private set; }

    public Proportion LossLow { get; private set; }

    public Proportion LossTypical { get; private set; }

    public Proportion LossHigh { get; private set; }

    /// <summary>Smallest run in green weight; zero for none.</summary>
    public Weight SmallestRun { get; private set; }

    /// <summary>Step of the green weight; zero for none.</summary>
    public Weight Step { get; private set; }

    /// <summary>How long the mix rests before it is stuffed; zero for none.</summary>
    public int RestMinutes { get; private set; }

    public IReadOnlyCollection<FormulaIngredient> Ingredients => _ingredients;

    public bool HasCure => _ingredients.Any(line => line.Cures);

    /// <summary>Anything from the pig: added fat, casing, an ingredient such as gelatin. The ingredients must have been loaded.</summary>
    public bool HasPork => AddedFatIsPork || CasingIsPork || _ingredients.Any(line => line.IsPork);

    /// <summary>All that anything in it or around it holds. The ingredients must have been loaded.</summary>
    public Allergen Contains => _ingredients.Aggregate(ContainsBeside, (all, line) => all | line.Contains);

    /// <summary>All that is not meat, as a part of the meat block. The ingredients must have been loaded.</summary>
    public Ratio Additions => _ingredients.Aggregate(Ratio.Zero, (sum, line) => sum + line.OfMeatBlock);

    /// <summary>What the added fat is, and a copy of what matters of it. Only while the version is made.</summary>
    public FormulaVersion WithAddedFat(Ingredient fat)
    {
        (AddedFatIngredient, AddedFat, AddedFatIsPork, AddedFatFat) = (fat, fat.Name, fat.IsPork, fat.Fat);
        ContainsBeside |= fat.Contains;
        return this;
    }

    /// <summary>What it is stuffed into, and a copy of what matters of it. Only while the version is made.</summary>
    /// <param name="holds">Green weight one of them holds; above zero.</param>
    public FormulaVersion WithCasing(Ingredient casing, Weight holds)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(holds, Weight.Zero);
        (CasingIngredient, Casing, CasingIsPork, CasingHolds) = (casing, casing.Name, casing.IsPork, holds);
        ContainsBeside |= casing.Contains;
        return this;
    }

    public GrindBlend ToBlend() => new(LeanShare, Additions, LossTypical, LossLow, LossHigh, SmallestRun, Step);
}
