using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>A filling of a lug, and where its meat went.</summary>
/// <param name="Lean">Net of its standing lean weigh-in.</param>
/// <param name="HasCuts">Cuts were weighed in it.</param>
/// <param name="Draws">All, struck ones too, into whatever batch.</param>
public sealed record TracedLug(
    int Id, int Number, int JobId, DateTime OpenedAt, DateTime? EmptiedAt, Weight Lean, bool HasCuts, IReadOnlyList<int> AnimalIds, IReadOnlyList<TracedDraw> Draws)
{
    /// <summary>Drawn and not struck, added up as printed.</summary>
    public Weight Drawn(ScaleDivision division) => division.Sum(Draws.Where(draw => draw.Stands).Select(draw => draw.Weighed));

    /// <summary>Its lean less what was drawn: still in it, or thaw, drip and the difference of two scales where it is empty. Below zero where more was drawn.</summary>
    public Weight Rest(ScaleDivision division) => division.Round(Lean) - Drawn(division);
}

/// <summary>Meat out of a lug into a load.</summary>
/// <param name="EntryId">Whose place it fills; null for meat without a place in that batch.</param>
public sealed record TracedDraw(
    int Id, int LugId, int BatchId, int BatchNumber, int LoadNumber, int? EntryId, Weight Weighed, DateTime At, string? AlreadyInBecause, DateTime? StruckAt, string? StruckBecause)
{
    public bool Stands => StruckAt is null;
}
