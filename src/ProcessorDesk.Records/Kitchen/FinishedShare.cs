using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>
/// What of the finished weight goes back to one entry of a batch, by green weight: of one load, or of all loads where they were
/// weighed together. Written at the release and never changed; the shares sum to what was weighed, and their pieces to what was counted.
/// </summary>
public sealed class FinishedShare
{
    private FinishedShare()
    {
    }

    public FinishedShare(int entryId, int? loadId, Weight weight, int? pieces) => (EntryId, LoadId, Weight, Pieces) = (entryId, loadId, weight, pieces);

    public int Id { get; private set; }

    public int EntryId { get; private set; }

    public BatchEntry Entry { get; private set; } = null!;

    public int? LoadId { get; private set; }

    public Weight Weight { get; private set; }

    /// <summary>Whole pieces; null where they were not counted.</summary>
    public int? Pieces { get; private set; }
}
