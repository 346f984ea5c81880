namespace ProcessorDesk.Trade.Kitchen.Planning;

/// <summary>One batch of the day.</summary>
/// <param name="OwnOf">The owner's key; null for a pooled batch.</param>
/// <param name="Parts">What goes in, earliest promise first; the pieces of the loads count them from zero.</param>
/// <param name="Division">Its loads. Of an own batch only their number and evenness matter: cuts between one owner's own asks are free.</param>
/// <param name="CleanedBefore">What is cleaned before it starts; empty for nothing.</param>
/// <param name="Warnings">Sentences; empty for none.</param>
public sealed record PlannedBatch(
    KitchenProduct Product, int? OwnOf, CleaningProfile Profile, IReadOnlyList<WaitingMeat> Parts, LoadDivision Division, IReadOnlyList<Cleaning> CleanedBefore, IReadOnlyList<string> Warnings);
