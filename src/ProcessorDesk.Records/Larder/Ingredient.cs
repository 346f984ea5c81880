using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Curing;
using ProcessorDesk.Trade.Formulas;

namespace ProcessorDesk.Records;

/// <summary>Something that goes into product beside the owner's own meat. Retired, never deleted: lots and formulas point at it.</summary>
public sealed class Ingredient : IVersioned
{
    private Ingredient()
    {
    }

    public Ingredient(IngredientFacts facts) => Describe(facts);

    public int Id { get; private set; }

    public string Name { get; private set; } = "";

    public IngredientKind Kind { get; private set; }

    public Proportion Nitrite { get; private set; }

    public Proportion Nitrate { get; private set; }

    /// <summary>It counts as meat in the check of the cure, as bacon ends do.</summary>
    public bool InMeatBlock { get; private set; }

    public bool IsPork { get; private set; }

    public Proportion Fat { get; private set; }

    /// <summary>The id of the published figure the fat was taken from; null where the shop measured it or none is stated.</summary>
    public string? FatSource { get; private set; }

    public Proportion Salt { get; private set; }

    public Proportion Water { get; private set; }

    public Allergen Contains { get; private set; }

    /// <summary>For a pound, or of a casing for a piece; null where nobody said.</summary>
    public Money? Cost { get; private set; }

    public Weight LeastOnHand { get; private set; }

    public int LeastPieces { get; private set; }

    public WeightUnit BoughtIn { get; private set; }

    public DateTime? RetiredAt { get; private set; }

    public int Version { get; private set; }

    /// <summary>Counted in pieces, not weighed.</summary>
    public bool GoesByPiece => Kind == IngredientKind.Casing;

    public PricePerPound? Price => !GoesByPiece && Cost is { } cost ? PricePerPound.FromCents(checked((int)cost.Cents)) : null;

    /// <summary>What keeps these facts from being kept; empty where nothing does. A cure without a strength is none.</summary>
    public static IReadOnlyList<Finding> Check(IngredientFacts facts)
    {
        var findings = new List<Finding>();
        if (string.IsNullOrWhiteSpace(facts.Name))
            findings.Add(new Finding(nameof(Name), "Type what it is called."));
        findings.AddRange(CureStrength.Check(facts.Nitrite, facts.Nitrate));
        if (facts.Kind == IngredientKind.Cure && facts.Nitrite.IsZero && facts.Nitrate.IsZero)
            findings.Add(new Finding(nameof(Nitrite), "A cure states its nitrite or its nitrate. Copy it from the label.", "0 %"));
        if (facts.Kind == IngredientKind.Casing && !(facts.Nitrite.IsZero && facts.Nitrate.IsZero))
            findings.Add(new Finding(nameof(Nitrite), "A casing is not weighed in, so its cure can't be reckoned. Say 0 %."));
        var stated = facts.Nitrite + facts.Nitrate + facts.Salt + facts.Fat + facts.Water;
        if (findings.Count == 0 && stated > Proportion.Whole)
            findings.Add(new Finding(nameof(Salt), "Salt, fat, water and cure in it are together at most 100 % of it.", stated.Print(), "100 %"));
        return findings;
    }

    /// <exception cref="ArgumentException">The facts can't be kept; see <see cref="Check"/>.</exception>
    public void Describe(IngredientFacts facts)
    {
        if (Check(facts) is [var finding, ..])
            throw new ArgumentException(finding.Text, nameof(facts));
        Name = facts.Name.Trim();
        Kind = facts.Kind;
        (Nitrite, Nitrate) = (facts.Nitrite, facts.Nitrate);
        (InMeatBlock, IsPork, Contains) = (facts.InMeatBlock, facts.IsPork, facts.Contains);
        (Fat, FatSource) = (facts.Fat, Texts.OrNull(facts.FatSource));
        (Salt, Water) = (facts.Salt, facts.Water);
        Cost = facts.Cost;
        (LeastOnHand, LeastPieces, BoughtIn) = (facts.LeastOnHand, facts.LeastPieces, facts.BoughtIn);
    }

    public void Retire(DateTime at) => RetiredAt ??= at;

    public void BringBack() => RetiredAt = null;

    internal static Additive AdditiveOf(IngredientKind? kind) => kind switch
    {
        IngredientKind.Phosphate => Additive.Phosphate,
        IngredientKind.Binder => Additive.Binder,
        IngredientKind.IsolatedSoyProtein => Additive.IsolatedSoyProtein,
        IngredientKind.SodiumCaseinate => Additive.SodiumCaseinate,
        null or IngredientKind.Meat or IngredientKind.Seasoning or IngredientKind.Salt or IngredientKind.Cure or IngredientKind.AcceleratorAcid
            or IngredientKind.AcceleratorSalt or IngredientKind.Water or IngredientKind.Casing or IngredientKind.Other => Additive.None,
    };

    internal static AcceleratorKind? AcceleratorOf(IngredientKind? kind) =>
        kind == IngredientKind.AcceleratorAcid ? AcceleratorKind.Acid : kind == IngredientKind.AcceleratorSalt ? AcceleratorKind.Salt : null;
}
