namespace ProcessorDesk.Records;

/// <summary>Something of an animal to be given back as itself, signed for by whoever takes it.</summary>
public sealed class Part
{
    private Part()
    {
    }

    internal Part(PartKind kind, string? note) => (Kind, Note) = (kind, Texts.OrNull(note));

    public int Id { get; private set; }

    public int AnimalId { get; private set; }

    public Animal Animal { get; private set; } = null!;

    public PartKind Kind { get; private set; }

    public string? Note { get; private set; }

    public DateTime? GivenAt { get; private set; }

    public int? GivenById { get; private set; }

    public string? GivenTo { get; private set; }

    public int? HandOverId { get; private set; }

    public HandOver? HandOver { get; private set; }

    /// <param name="with">The hand-over it left with; null where it left alone.</param>
    public void Give(string to, DateTime at, int byId, HandOver? with = null)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(to);
        if (GivenAt is not null)
            throw new InvalidOperationException("This part was given back before.");
        (GivenTo, GivenAt, GivenById, HandOver) = (to.Trim(), at, byId, with);
    }
}
