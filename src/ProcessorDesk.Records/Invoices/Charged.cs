using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Grinding;

namespace ProcessorDesk.Records;

/// <summary>An animal as it is charged: weighed, or only foretold.</summary>
/// <param name="Name">"White-tail deer, tag NF-20418".</param>
/// <param name="Share">What of it is the job's.</param>
/// <param name="Hanging">The hanging weight of the whole animal; null where it is not known.</param>
public sealed record ChargedAnimal(
    string Name, Species Species, ArrivalState? ArrivalState, OwnersShare Share, Weight? Hanging, int? AnimalId = null)
{
    public static ChargedAnimal Of(AnimalWeights animal) =>
        Of(animal.AnimalId, animal.Species, animal.Tag, animal.ArrivalState, animal.Share, animal.Hanging);

    /// <param name="hanging">Of the whole animal.</param>
    public static ChargedAnimal Of(int animalId, Species species, string? tag, ArrivalState arrivalState, OwnersShare share, Weight? hanging) =>
        new(tag is null ? Wording.Of(species) : $"{Wording.Of(species)}, tag {tag}", species, arrivalState, share, hanging, animalId);

    /// <summary>The job's part of the hanging weight, on the division; the owners' parts sum to the animal's.</summary>
    public Weight? HangingOf(ScaleDivision division) => Hanging is { } whole ? Share.Of(whole, division) : null;
}

/// <summary>A product as it is charged: agreed, or only foretold.</summary>
public sealed record ChargedProduct(int ProductId, string Name, Weight Lean, Weight AddedFat, Weight Green, Weight Finished, int? AllotmentId = null)
{
    /// <summary>A product that is made: lean, fat and green weight as agreed, finished weight as it came back.</summary>
    public static ChargedProduct Of(MadeProduct made) =>
        new(made.ProductId, made.Name, made.Lean, made.AddedFat, made.Green, made.Finished ?? Weight.Zero, made.AllotmentId);

    public static ChargedProduct Of(int productId, Allotment given) =>
        new(productId, given.Ask.Name, given.Lean, given.AddedFat, given.Green, given.Finished);
}
