namespace ProcessorDesk.Trade.Kitchen.Planning;

/// <summary>An allotment that waits to be made: nothing on hold, nothing planned or withdrawn.</summary>
/// <param name="Id">Its number; no two have the same.</param>
/// <param name="Whose">As people call it where something is said of it: "Ines Moreau, job 1003".</param>
/// <param name="Owner">Key of the owner.</param>
/// <param name="IsPooled">The owner agreed that it shares loads with others who agreed; else it is an own ask.</param>
/// <param name="Part">Lean, added fat and green weight; green a division or more.</param>
/// <param name="HoldsPork">Pork in it or in what is added; else it is pork-free.</param>
/// <param name="Promise">The day it is promised for; null comes after all days.</param>
public sealed record WaitingMeat(
    int Id, string Whose, KitchenProduct Product, int Owner, bool IsPooled, BatchPart Part, Species Species, bool HoldsPork, DateOnly? Promise)
{
    /// <summary>What it leaves on the equipment, and what it may not find there.</summary>
    public CleaningProfile Profile => new(Species, HoldsPork, Product.IsCured, Product.Allergens);

    /// <summary>What one batch is made of: one product, species, and with or without pork; one owner, or all who agreed to pooling.</summary>
    internal (int Product, Species Species, bool HoldsPork, int? OwnOf) Batch => (Product.Key, Species, HoldsPork, IsPooled ? null : Owner);

    /// <summary>The rule for every tie: the earliest promise, then the lowest number.</summary>
    internal static IEnumerable<WaitingMeat> InTurn(IEnumerable<WaitingMeat> waiting) => waiting.OrderBy(meat => meat.Promise ?? DateOnly.MaxValue).ThenBy(meat => meat.Id);
}
