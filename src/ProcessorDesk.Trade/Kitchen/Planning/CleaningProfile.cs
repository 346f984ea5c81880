namespace ProcessorDesk.Trade.Kitchen.Planning;

/// <summary>What a batch leaves on the equipment, and what it may not find there. Batches of one profile need no cleaning between them.</summary>
/// <remarks>Equal where all four are; allergens whatever their order, compared letter by letter.</remarks>
/// <param name="Allergens">As the shop names them; empty for none.</param>
public sealed record CleaningProfile(Species Species, bool HoldsPork, bool Cured, IReadOnlyList<string> Allergens)
{
    public bool Equals(CleaningProfile? other) =>
        other is not null && (Species, HoldsPork, Cured) == (other.Species, other.HoldsPork, other.Cured) && Allergens.ToHashSet(StringComparer.Ordinal).SetEquals(other.Allergens);

    public override int GetHashCode() =>
        HashCode.Combine(Species, HoldsPork, Cured, Allergens.Distinct(StringComparer.Ordinal).Aggregate(0, (sum, allergen) => sum ^ StringComparer.Ordinal.GetHashCode(allergen)));
}
