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

    public string? AddedFat { get; private set; }

    public bool AddedFatIsPork { get; private set; }

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

    public bool HasCure => _ingredients.Any(line => line.IsCure);

    public bool HasPork => AddedFatIsPork || _ingredients.Any(line => line.IsPork);

    /// <summary>All that is not meat, as a part of the meat block. The ingredients must have been loaded.</summary>
    public Ratio Additions => _ingredients.Aggregate(Ratio.Zero, (sum, line) => sum + line.OfMeatBlock);

    public GrindBlend ToBlend() => new(LeanShare, Additions, LossTypical, LossLow, LossHigh, SmallestRun, Step);
}
