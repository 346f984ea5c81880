namespace ProcessorDesk.Trade.Kitchen.Planning;

/// <summary>
/// What is cleaned away between one batch and the next, in minutes that add up. Each kind of cleaning, taken alone, can't be saved by a batch put in
/// between: what is dirty for the last was dirty for the one between, or the one between made it so. So the whole can't either:
/// from A to C never takes longer than from A to B and from B to C.
/// </summary>
/// <param name="Pork">From meat with pork to meat without.</param>
/// <param name="Allergen">For each allergen that the next batch does not have.</param>
/// <param name="Species">From one species to another.</param>
/// <param name="Cure">From cured to uncured.</param>
public sealed record CleaningMinutes(int Pork, int Allergen, int Species, int Cure)
{
    /// <summary>Common practice, no source: taken down and washed, washed, scraped and rinsed. A shop's own replace them.</summary>
    public static CleaningMinutes Usual { get; } = new(Pork: 30, Allergen: 30, Species: 10, Cure: 15);

    /// <summary>What is cleaned from one to the other, each with its minutes; empty where nothing is.</summary>
    public IReadOnlyList<Cleaning> Between(CleaningProfile before, CleaningProfile after)
    {
        var cleanings = new List<Cleaning>();
        if (before.HoldsPork && !after.HoldsPork)
            cleanings.Add(new Cleaning("Pork: the next is pork-free.", Pork));
        cleanings.AddRange(before.Allergens.Except(after.Allergens, StringComparer.Ordinal).Order(StringComparer.Ordinal)
            .Select(allergen => new Cleaning($"Allergen: {allergen} is not in the next.", Allergen)));
        if (before.Species != after.Species)
            cleanings.Add(new Cleaning("The next is of another species.", Species));
        if (before.Cured && !after.Cured)
            cleanings.Add(new Cleaning("Cure: the next is uncured.", Cure));
        return cleanings;
    }
}
