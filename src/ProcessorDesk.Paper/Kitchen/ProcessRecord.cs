namespace ProcessorDesk.Paper;

/// <summary>The process record of one batch, Letter: what went in, what was read, what the published rules say of it, who did what. Everything as printed.</summary>
/// <param name="ShopName">The shop's name.</param>
/// <param name="Product">"Smoked ring sausage".</param>
/// <param name="BatchNumber">"31".</param>
/// <param name="Code">The batch's ticket code, which the QR symbol holds alone.</param>
/// <param name="State">"Open", "Released Mon 7 Dec 2026, 4:40 PM, NH".</param>
/// <param name="Formula">"version 3".</param>
/// <param name="PrintedAt">In the shop's zone.</param>
/// <param name="Holds">Open holds; they stand first.</param>
/// <param name="Owners">Whose meat it is, and what goes back.</param>
/// <param name="Loads">Fillings of the mixer as they were mixed.</param>
/// <param name="Parts">Cooking, chilling and what else was held against a published rule.</param>
/// <param name="Rules">What the shop had set when the batch was mixed: "Thermometer: 0.5 °F added above the table".</param>
/// <param name="Programme">The stages of the smokehouse as the shop wrote them; may be empty.</param>
/// <param name="Endings">What was done about a record that does not meet or does not show: an expert's letter, a rework, owners told.</param>
/// <param name="Steps">In the order they were done; an undone one says so.</param>
/// <param name="Balance">Where the weight went, as label and weight.</param>
/// <param name="Cautions">For curing salts and whatever else goes for the product.</param>
public sealed record ProcessRecord(
    string ShopName,
    string Product,
    string BatchNumber,
    string Code,
    string State,
    string Formula,
    DateTime PrintedAt,
    IReadOnlyList<HoldNotice> Holds,
    IReadOnlyList<ProcessOwner> Owners,
    IReadOnlyList<ProcessLoad> Loads,
    IReadOnlyList<ProcessPart> Parts,
    IReadOnlyList<string> Rules,
    IReadOnlyList<string> Programme,
    IReadOnlyList<ProcessEnding> Endings,
    IReadOnlyList<ProcessStep> Steps,
    IReadOnlyList<Fact> Balance,
    IReadOnlyList<Caution> Cautions)
{
    /// <summary>One PDF, each record from a page of its own.</summary>
    /// <exception cref="ArgumentException">There is no record.</exception>
    public static byte[] Draw(IReadOnlyList<ProcessRecord> records) => ProcessRecordPaper.Draw(records);
}

/// <summary>An owner: "Rosa Lindqvist", "1042", the green weight her meat made, what goes back, and in how many pieces where it is made in pieces.</summary>
public sealed record ProcessOwner(string Name, string JobNumber, string Green, string Finished, string Pieces);

/// <summary>A load as mixed: "1", "Mon 7 Dec 9:05, KH", "17.86 lb", "Pink curing salt 20.2 g", "155.8 ppm nitrite: meets", the limit with its source.</summary>
public sealed record ProcessLoad(string Number, string Mixed, string Block, string Cure, string Check, string Limit);

/// <summary>A part of the record and what a published rule says of it.</summary>
/// <param name="Heading">"Cooking: meets the table row".</param>
/// <param name="Facts">What was found and what is asked for, a sentence each.</param>
/// <param name="Source">Who published the rule.</param>
/// <param name="Chart">Null where there is nothing to draw.</param>
/// <param name="Columns">"Probe 1", "pH"; what stands in the table beside the time and the initials.</param>
/// <param name="Rows">Time, a figure for each column, initials.</param>
public sealed record ProcessPart(
    string Heading, IReadOnlyList<string> Facts, string Source, ProbeChart? Chart, IReadOnlyList<string> Columns, IReadOnlyList<IReadOnlyList<string>> Rows);

/// <summary>Something done about a failing record: "Expert's letter, cooking", the name, its date, its reference, who wrote it down and when.</summary>
public sealed record ProcessEnding(string What, string Name, string On, string Reference, string Written);

/// <summary>A step: "Stuffed", when, whose initials, and why it was undone where it was.</summary>
public sealed record ProcessStep(string What, string At, string By, string Note);
