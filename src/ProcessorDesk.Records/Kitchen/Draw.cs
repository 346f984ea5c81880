using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>Meat from one lug into one load, as weighed at the mixer. Never changed; a wrong one is struck.</summary>
public sealed class Draw
{
    private Draw()
    {
    }

    /// <param name="entryId">Whose place in the batch it fills; null for meat that has no place there.</param>
    /// <param name="planned">What the load still wanted of that owner when it was drawn.</param>
    public Draw(int loadId, int fillingId, int? entryId, Weight planned, Weight weighed, ScaleDivision division, string? alreadyInBecause, DateTime at, int byId)
    {
        LoadId = loadId;
        FillingId = fillingId;
        EntryId = entryId;
        Planned = planned;
        Weighed = weighed;
        KeyedDivision = division;
        AlreadyInBecause = Texts.OrNull(alreadyInBecause);
        At = at;
        ById = byId;
    }

    public int Id { get; private set; }

    public int LoadId { get; private set; }

    public Load Load { get; private set; } = null!;

    public int FillingId { get; private set; }

    public Filling Filling { get; private set; } = null!;

    public int? EntryId { get; private set; }

    public BatchEntry? Entry { get; private set; }

    public Weight Planned { get; private set; }

    public Weight Weighed { get; private set; }

    public ScaleDivision KeyedDivision { get; private set; }

    /// <summary>What was wrong with meat that was in before anybody could stop it; null where nothing was.</summary>
    public string? AlreadyInBecause { get; private set; }

    public DateTime At { get; private set; }

    public int ById { get; private set; }

    public DateTime? StruckAt { get; private set; }

    public int? StruckById { get; private set; }

    public string? StruckBecause { get; private set; }

    internal void StrikeOut(string because, DateTime at, int byId) => (StruckBecause, StruckAt, StruckById) = (because.Trim(), at, byId);
}
