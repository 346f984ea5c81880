using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>What the shop states of an ingredient, edited as a whole.</summary>
/// <param name="Nitrite">As the label states it; zero is a statement, so it is always given.</param>
/// <param name="Nitrate">As the label states it; zero is a statement, so it is always given.</param>
public sealed record IngredientFacts(string Name, IngredientKind Kind, Proportion Nitrite, Proportion Nitrate)
{
    /// <summary>It counts as meat in the check of the cure, as bacon ends do.</summary>
    public bool InMeatBlock { get; init; }

    public bool IsPork { get; init; }

    public Proportion Fat { get; init; }

    /// <summary>The id of the published figure the fat was taken from; null where the shop measured it or none is stated.</summary>
    public string? FatSource { get; init; }

    public Proportion Salt { get; init; }

    /// <summary>Water or ice that is added with it.</summary>
    public Proportion Water { get; init; }

    public Allergen Contains { get; init; }

    /// <summary>For a pound, or of a casing for a piece; null where nobody said.</summary>
    public Money? Cost { get; init; }

    /// <summary>Less than this on hand is low; zero where nobody watches it. For casings see <see cref="LeastPieces"/>.</summary>
    public Weight LeastOnHand { get; init; }

    public int LeastPieces { get; init; }

    /// <summary>The unit it is bought and counted in. Casings go by the piece, whatever stands here.</summary>
    public WeightUnit BoughtIn { get; init; } = WeightUnit.Pound;
}
