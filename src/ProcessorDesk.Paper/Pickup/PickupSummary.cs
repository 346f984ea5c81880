namespace ProcessorDesk.Paper;

/// <summary>
/// What an owner takes home at one of a job's hand-overs, Letter: the owner's copy with how to keep and cook it, then the shop's copy.
/// Both are signed, and both say what is still to come. Everything as printed.
/// </summary>
/// <param name="Shop">The head.</param>
/// <param name="Owner">The owner's name.</param>
/// <param name="JobNumber">"1042".</param>
/// <param name="Code">The job's ticket code, which the QR symbol holds alone.</param>
/// <param name="HandedOver">The day of this hand-over.</param>
/// <param name="Boxes">The boxes that leave now.</param>
/// <param name="Items">What else leaves now: parts, and meat in no box.</param>
/// <param name="Together">"3 boxes, 71.20 lb"; may be empty.</param>
/// <param name="Before">What left at earlier hand-overs, the first one first.</param>
/// <param name="StillToCome">What is missing and why; empty where this is everything.</param>
/// <param name="IsGame">Game is cooked to the higher temperature throughout.</param>
/// <param name="Cautions">Lead, disease and what else the owner should know.</param>
/// <param name="Collector">Who took it and signs, where another than the owner; may be empty.</param>
public sealed record PickupSummary(
    ShopHeader Shop,
    string Owner,
    string JobNumber,
    string Code,
    DateOnly HandedOver,
    IReadOnlyList<PickupBox> Boxes,
    IReadOnlyList<PickupItem> Items,
    string Together,
    IReadOnlyList<EarlierHandOver> Before,
    IReadOnlyList<StillToCome> StillToCome,
    bool IsGame,
    IReadOnlyList<Caution> Cautions,
    string Collector)
{
    /// <summary>One PDF: for each summary the owner's copy and the shop's, each from a page of its own.</summary>
    /// <exception cref="ArgumentException">There is no summary.</exception>
    public static byte[] Draw(IReadOnlyList<PickupSummary> summaries) => PickupSummaryPaper.Draw(summaries);
}

/// <summary>A box: which one, "2 of 4", its ticket code, what is in it, and its net weight, "24.10 lb".</summary>
public sealed record PickupBox(string Box, string Code, IReadOnlyList<ContentLine> Contents, string NetWeight);

/// <summary>"Backstrap steaks", "8 packs", "9.40 lb", and its ticket code where it has one; a part without a weight leaves it empty.</summary>
public sealed record PickupItem(string What, string Count, string Weight, string Code = "");

/// <summary>What left before: the day, who took it, and what it was.</summary>
public sealed record EarlierHandOver(DateOnly HandedOver, string TakenBy, IReadOnlyList<PickupBox> Boxes, IReadOnlyList<PickupItem> Items);

/// <summary>What is missing: "Summer sausage, about 20 lb", and why: "In the smokehouse; about Fri 18 Dec 2026".</summary>
public sealed record StillToCome(string What, string Why);
