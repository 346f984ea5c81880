namespace ProcessorDesk.Trade.Process;

/// <summary>One row of a cooking table: how long the coldest spot has to be at or above a temperature, in all.</summary>
/// <param name="At">A whole degree Fahrenheit.</param>
/// <param name="Dwell">Zero where reaching it is enough.</param>
public sealed record LethalityRow(Temperature At, TimeSpan Dwell);

/// <summary>A published table of times and temperatures. It is read row by row and never filled in between them.</summary>
/// <param name="Id">Lasting name; a shop's own figure names the one it stands for.</param>
/// <param name="Name">What it is for, as a person reads it.</param>
/// <param name="Rows">From the coolest to the hottest.</param>
/// <param name="Source">Where it is published.</param>
/// <param name="Mark">How the source was read: A, B, C, M, or "–".</param>
public sealed record LethalityTable(string Id, string Name, IReadOnlyList<LethalityRow> Rows, string Source, string Mark);
