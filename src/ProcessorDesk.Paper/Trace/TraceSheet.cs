namespace ProcessorDesk.Paper;

/// <summary>One trace for an inspector's folder, Letter: what went in, where it went, where it is, who has to be told. Everything as printed.</summary>
/// <param name="What">What was traced: "Batch 12, Ring sausage".</param>
/// <param name="Traced">"Fri 27 Nov 2026, 2:05 PM".</param>
/// <param name="By">Whose hand printed it.</param>
/// <param name="Holds">What is on hold of it.</param>
/// <param name="Facts">The counts at the head.</param>
/// <param name="ToTell">The owners, in the order of their jobs.</param>
/// <param name="Still">What of it is here and in no box, a sentence each.</param>
/// <param name="Boxes">All boxes with it, the unpacked ones too.</param>
/// <param name="BoxSums">"Here, 4 boxes", "36.04 lb".</param>
/// <param name="Animals">Whose meat is in it.</param>
/// <param name="Lugs">With where their meat went.</param>
/// <param name="Lots">Of what was weighed in beside the meat.</param>
/// <param name="Batches">It is in.</param>
/// <param name="Cautions">At the end.</param>
public sealed record TraceSheet(
    ShopHeader Shop,
    string What,
    string Traced,
    string By,
    IReadOnlyList<HoldNotice> Holds,
    IReadOnlyList<Fact> Facts,
    IReadOnlyList<OwnerToTell> ToTell,
    IReadOnlyList<string> Still,
    IReadOnlyList<BoxTraced> Boxes,
    IReadOnlyList<Fact> BoxSums,
    IReadOnlyList<AnimalTraced> Animals,
    IReadOnlyList<LugTraced> Lugs,
    IReadOnlyList<LotTraced> Lots,
    IReadOnlyList<BatchTraced> Batches,
    IReadOnlyList<Caution> Cautions)
{
    /// <summary>One PDF.</summary>
    public static byte[] Draw(TraceSheet sheet) => TraceSheetPaper.Draw(sheet);
}

/// <param name="Called">A line for each call; empty leaves a line to write on.</param>
/// <param name="IsTold">The box before the name is ticked in words.</param>
public sealed record OwnerToTell(string Owner, string Job, string Phone, string Boxes, string Called, bool IsTold);

/// <summary>"Box 2 of job 1042, Ann Pell", its ticket, what is in it, its weight, where it is.</summary>
public sealed record BoxTraced(string Box, string Code, string Contents, string Net, string Where);

public sealed record AnimalTraced(string Animal, string Owners, string CameIn, string DiseaseTest);

/// <param name="Went">A line for each draw, and one for what was not drawn.</param>
public sealed record LugTraced(string Lug, string Whose, string Animals, string Lean, string Went);

/// <param name="From">Supplier, establishment, when it came.</param>
/// <param name="Went">A line for each use, or its account.</param>
public sealed record LotTraced(string Lot, string From, string Went);

/// <param name="State">Whose it is, and how far.</param>
/// <param name="In">What went in: the lugs, the fat, the rest.</param>
/// <param name="Sums">In the mixer, left in the machines, lost on the way, finished.</param>
/// <param name="Back">What went back to whom; the last one is the sum.</param>
public sealed record BatchTraced(string Batch, string State, IReadOnlyList<Fact> In, IReadOnlyList<Fact> Sums, IReadOnlyList<Fact> Back);
