using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Kitchen;

namespace ProcessorDesk.Records;

/// <summary>What of one entry is planned for one load. The parts of an entry sum to its allotment.</summary>
public sealed class LoadPart
{
    private LoadPart()
    {
    }

    internal LoadPart(BatchEntry entry, LoadPiece piece)
    {
        Entry = entry;
        Lean = piece.Lean;
        AddedFat = piece.AddedFat;
        Green = piece.Green;
    }

    public int LoadId { get; private set; }

    public Load Load { get; private set; } = null!;

    public int EntryId { get; private set; }

    public BatchEntry Entry { get; private set; } = null!;

    public Weight Lean { get; private set; }

    public Weight AddedFat { get; private set; }

    public Weight Green { get; private set; }
}
