using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>What came in at the back door, as its label and its slip say.</summary>
/// <param name="Amount">Weighed goods; zero for casings.</param>
/// <param name="Pieces">Casings; zero for all else.</param>
/// <param name="Nitrite">As this lot's label states it: makers change strengths.</param>
public sealed record LotReceipt(
    int IngredientId, string LotCode, DateOnly ReceivedOn, Weight Amount, int Pieces, Proportion Nitrite, Proportion Nitrate,
    string? Supplier = null, string? Establishment = null, string? Note = null);
