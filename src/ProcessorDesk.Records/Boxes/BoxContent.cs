namespace ProcessorDesk.Records;

/// <summary>Packs of one kind in a box: of a product, or of cuts.</summary>
public sealed class BoxContent
{
    private BoxContent()
    {
    }

    /// <param name="allotmentId">Of a product; null for cuts.</param>
    /// <param name="name">As the label says it.</param>
    /// <param name="packs">One or more.</param>
    public BoxContent(int position, int? allotmentId, string name, int packs)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(packs, 1);
        (Position, AllotmentId, Name, Packs) = (position, allotmentId, name.Trim(), packs);
    }

    public int BoxId { get; private set; }

    public int Position { get; private set; }

    public int? AllotmentId { get; private set; }

    public string Name { get; private set; } = "";

    public int Packs { get; private set; }
}
