using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>One use of a lug: its tare then, its job, its animals. A lug has at most one open filling.</summary>
public sealed class Filling
{
    private readonly List<FillingAnimal> _animals = [];

    private Filling()
    {
    }

    /// <param name="animalIds">Every lug names its animals; at least one.</param>
    public Filling(Lug lug, int jobId, IReadOnlyCollection<int> animalIds, DateTime openedAt)
    {
        if (animalIds.Count == 0)
            throw new ArgumentException("A filling names its animals.", nameof(animalIds));
        Lug = lug;
        Tare = lug.Tare;
        JobId = jobId;
        OpenedAt = openedAt;
        _animals.AddRange(animalIds.Select(id => new FillingAnimal(id)));
    }

    public int Id { get; private set; }

    public int LugId { get; private set; }

    public Lug Lug { get; private set; } = null!;

    /// <summary>The lug's tare when it was filled; a later check of the lug does not change it.</summary>
    public Weight Tare { get; private set; }

    public int JobId { get; private set; }

    public Job Job { get; private set; } = null!;

    public DateTime OpenedAt { get; private set; }

    public DateTime? EmptiedAt { get; private set; }

    public IReadOnlyCollection<FillingAnimal> Animals => _animals;

    /// <summary>The same use of the lug under another job or other animals: it was booked wrong. The lug must have been loaded.</summary>
    internal Filling MovedTo(int jobId, IReadOnlyCollection<int> animalIds, DateTime? emptiedAt) =>
        new(Lug, jobId, animalIds, OpenedAt) { Tare = Tare, EmptiedAt = emptiedAt };

    public void Empty(DateTime at) => EmptiedAt ??= at;
}
