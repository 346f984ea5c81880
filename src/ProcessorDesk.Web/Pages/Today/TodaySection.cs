namespace ProcessorDesk.Web.Pages.Today;

/// <summary>One kind of work: how much of it, and what of it comes first.</summary>
/// <param name="Title">What follows the figure: "on hold".</param>
/// <param name="NoneOf">How the lack of it is said in a row of such: "no holds".</param>
/// <param name="Station">The folder where all of it stands; empty where no page lists it.</param>
public sealed record TodaySection(string Id, string Title, string NoneOf, string Station, IReadOnlyList<TodayLine> Lines);

/// <summary>One thing to see to.</summary>
/// <param name="Chip">A word of warning; empty where there is none.</param>
/// <param name="Kind">The chip's kind: hold, warn, good.</param>
public sealed record TodayLine(string Address, string What, string Words, string Chip = "", string Kind = "");
