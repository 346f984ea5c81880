namespace ProcessorDesk.Paper;

/// <summary>The cutter's page, Letter. Everything as printed.</summary>
/// <param name="ShopName">The shop's name.</param>
/// <param name="Revision">Counts up with every change of the order.</param>
/// <param name="PrintedAt">In the shop's zone.</param>
/// <param name="Owner">The owner's name.</param>
/// <param name="JobNumber">"1042".</param>
/// <param name="Code">The job's ticket code, which the QR symbol holds alone.</param>
/// <param name="Promise">"Fri 11 Dec 2026"; may be empty.</param>
/// <param name="NoPork">Nothing from the pig may touch this order.</param>
/// <param name="Animals">What hangs for this job.</param>
/// <param name="Holds">Open holds; they stand first.</param>
/// <param name="Cuts">Each muscle group with its instruction.</param>
/// <param name="Checklist">What is ticked while cutting: "Glands out".</param>
/// <param name="Asks">Grind asks in order.</param>
/// <param name="Lugs">Empty boxes to write lug numbers and weights in.</param>
/// <param name="Cautions">Lead, disease, and what else can hurt someone.</param>
/// <param name="Note">The owner's or the clerk's words; may be empty.</param>
public sealed record CutSheet(
    string ShopName,
    int Revision,
    DateTime PrintedAt,
    string Owner,
    string JobNumber,
    string Code,
    string Promise,
    bool NoPork,
    IReadOnlyList<CutSheetAnimal> Animals,
    IReadOnlyList<HoldNotice> Holds,
    IReadOnlyList<CutSheetLine> Cuts,
    IReadOnlyList<string> Checklist,
    IReadOnlyList<CutSheetAsk> Asks,
    int Lugs,
    IReadOnlyList<Caution> Cautions,
    string Note)
{
    /// <summary>One PDF, each sheet from a page of its own.</summary>
    public static byte[] Draw(IReadOnlyList<CutSheet> sheets) => CutSheetPaper.Draw(sheets);
}

/// <summary>An animal on the cut sheet.</summary>
/// <param name="What">"White-tail deer, buck".</param>
/// <param name="Tag">The official tag.</param>
/// <param name="Share">"whole", "1/2": what of it belongs to this job.</param>
/// <param name="Weight">The latest weight with its kind: "71.5 lb hanging".</param>
/// <param name="GiveBack">Parts to keep: "Antlers, cape"; may be empty.</param>
public sealed record CutSheetAnimal(string What, string Tag, string Share, string Weight, string GiveBack);

/// <summary>What becomes of a muscle group: "Backstrap", "Butterfly steaks, 1 in", "4 to a pack".</summary>
public sealed record CutSheetLine(string MuscleGroup, string Instruction, string Pack = "");

/// <summary>A grind ask: "Smoked ring sausage", "25 lb of own meat", "70 : 30 with pork".</summary>
public sealed record CutSheetAsk(string Product, string Wanted, string Blend = "");
