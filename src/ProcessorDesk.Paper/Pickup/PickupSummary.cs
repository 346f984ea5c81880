namespace ProcessorDesk.Paper;

/// <summary>What the owner takes home with the boxes, Letter. Everything as printed.</summary>
/// <param name="Shop">The head.</param>
/// <param name="Owner">The owner's name.</param>
/// <param name="JobNumber">"1042".</param>
/// <param name="Code">The job's ticket code, which the QR symbol holds alone.</param>
/// <param name="HandedOver">The day of the hand-over.</param>
/// <param name="Items">What was handed over.</param>
/// <param name="StillToCome">What is not ready yet: "Summer sausage, about Fri 18 Dec".</param>
/// <param name="IsGame">Game is cooked to the higher temperature throughout.</param>
/// <param name="Cautions">Lead, disease and what else the owner should know.</param>
/// <param name="Collector">Who signs, where another than the owner; may be empty.</param>
public sealed record PickupSummary(
    ShopHeader Shop,
    string Owner,
    string JobNumber,
    string Code,
    DateOnly HandedOver,
    IReadOnlyList<PickupItem> Items,
    IReadOnlyList<string> StillToCome,
    bool IsGame,
    IReadOnlyList<Caution> Cautions,
    string Collector)
{
    /// <summary>One PDF, each summary from a page of its own.</summary>
    public static byte[] Draw(IReadOnlyList<PickupSummary> summaries) => PickupSummaryPaper.Draw(summaries);
}

/// <summary>"Backstrap steaks", "8 packs", "9.40 lb"; a part without a weight leaves it empty.</summary>
public sealed record PickupItem(string What, string Count, string Weight);
