namespace ProcessorDesk.Paper;

/// <summary>The kitchen's page for one batch, Letter: what goes into each load, and lines to write what was done. Everything as printed.</summary>
/// <param name="ShopName">The shop's name.</param>
/// <param name="Product">"Smoked ring sausage".</param>
/// <param name="BatchNumber">"31".</param>
/// <param name="Code">The batch's ticket code, which the QR symbol holds alone.</param>
/// <param name="IsPooled">Several owners' meat together, each of whom agreed; else it is one owner's meat alone.</param>
/// <param name="IsCured">A cured product: each load has its cure, and the cautions for curing salts are printed.</param>
/// <param name="NoPork">Nothing from the pig may touch this batch.</param>
/// <param name="Owners">Whose meat it is.</param>
/// <param name="PlannedFor">"Mon 7 Dec 2026"; may be empty.</param>
/// <param name="Formula">The version it is made by: "version 3".</param>
/// <param name="PrintedAt">In the shop's zone.</param>
/// <param name="Holds">Open holds; they stand first.</param>
/// <param name="Cautions">Lead, trichinae and what else goes for the meat; those for curing salts are added by the paper.</param>
/// <param name="Allergens">"Milk", "Soybeans"; empty where the formula names none.</param>
/// <param name="Loads">Fillings of the mixer, in order; at least one.</param>
/// <param name="Green">All loads together as planned: "37.14 lb".</param>
/// <param name="After">What is done with the mix: rest, casings, cooking, chilling.</param>
public sealed record BatchSheet(
    string ShopName,
    string Product,
    string BatchNumber,
    string Code,
    bool IsPooled,
    bool IsCured,
    bool NoPork,
    IReadOnlyList<BatchOwner> Owners,
    string PlannedFor,
    string Formula,
    DateTime PrintedAt,
    IReadOnlyList<HoldNotice> Holds,
    IReadOnlyList<Caution> Cautions,
    IReadOnlyList<string> Allergens,
    IReadOnlyList<BatchLoad> Loads,
    string Green,
    BatchAfter After)
{
    /// <summary>One PDF, each sheet from a page of its own.</summary>
    /// <exception cref="ArgumentException">There is no sheet, a sheet has no load, or a load of a cured batch has no cure, or one of another has some.</exception>
    public static byte[] Draw(IReadOnlyList<BatchSheet> sheets) => BatchSheetPaper.Draw(sheets);
}

/// <summary>An owner in the batch: "Rosa Lindqvist", "1042", and the lean planned from all lugs, "25.00 lb".</summary>
public sealed record BatchOwner(string Name, string JobNumber, string Lean);

/// <summary>What happens to the mix after the mixer; what is empty is left out.</summary>
/// <param name="Rest">"At least 4 h at or under 40 °F".</param>
/// <param name="Casings">"Beef rounds, 40 mm: soak 38 ft".</param>
/// <param name="Logs">Readings to be written by hand, in the order of the work; empty for a fresh product.</param>
public sealed record BatchAfter(string Rest, string Casings, IReadOnlyList<BatchLog> Logs);
