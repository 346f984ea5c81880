using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>Packs of one job with a net weight, a place and a ticket. Never changed once packed, but its place; a wrong one is unpacked.</summary>
public sealed class Box
{
    private readonly List<BoxContent> _contents = [];

    private Box()
    {
    }

    /// <param name="number">Its place among the job's boxes, from one; unpacked ones keep theirs.</param>
    /// <param name="contents">At least one.</param>
    public Box(int number, WeighIn weighed, string? place, IEnumerable<BoxContent> contents, DateTime at, int byId)
    {
        Number = number;
        JobId = weighed.JobId ?? throw new ArgumentException("A box is a job's.", nameof(weighed));
        Weighed = weighed;
        Place = Texts.OrNull(place);
        _contents.AddRange(contents);
        PackedAt = at;
        PackedById = byId;
    }

    public int Id { get; private set; }

    public int JobId { get; private set; }

    public Job Job { get; private set; } = null!;

    public int Number { get; private set; }

    public int WeighedId { get; private set; }

    public WeighIn Weighed { get; private set; } = null!;

    /// <summary>Where in the freezer; null where nobody noted it.</summary>
    public string? Place { get; private set; }

    public DateTime PackedAt { get; private set; }

    public int PackedById { get; private set; }

    public DateTime? UnpackedAt { get; private set; }

    public int? UnpackedById { get; private set; }

    public string? UnpackedBecause { get; private set; }

    /// <summary>The hand-over it left with; null while it is here.</summary>
    public int? HandOverId { get; private set; }

    public HandOver? HandOver { get; private set; }

    public IReadOnlyCollection<BoxContent> Contents => _contents;

    internal void MoveTo(string? place) => Place = Texts.OrNull(place);

    /// <summary>Strikes its weight out with it, which must have been loaded with its strike.</summary>
    internal void Unpack(string because, DateTime at, int byId)
    {
        (UnpackedBecause, UnpackedAt, UnpackedById) = (because.Trim(), at, byId);
        Weighed.StrikeWithBox($"box unpacked: {because.Trim()}", at, byId);
    }

    internal void Leave(HandOver with) => HandOver = with;
}
