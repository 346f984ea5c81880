namespace ProcessorDesk.Trade.Kitchen.Planning;

/// <summary>What is made: one version of one formula.</summary>
/// <param name="Key">Two with the same key are the same; a batch is of one.</param>
/// <param name="Name">As people call it.</param>
/// <param name="Allergens">Of all its ingredients, as the shop names them; empty for none.</param>
/// <param name="IsSmoked">Needs the smokehouse.</param>
public sealed record KitchenProduct(int Key, string Name, IReadOnlyList<string> Allergens, bool IsCured, bool IsSmoked);
