namespace ProcessorDesk.Records;

/// <summary>What of a job can leave the shop, or has left it.</summary>
/// <param name="Boxes">By their number, with those that were taken apart.</param>
/// <param name="Animals">Each with the parts that go back with this job.</param>
public sealed record JobGoods(IReadOnlyList<JobBox> Boxes, IReadOnlyList<JobAnimal> Animals)
{
    public IEnumerable<JobPart> Parts => Animals.SelectMany(animal => animal.Parts).OrderBy(part => part.Id);

    public IEnumerable<JobBox> BoxesHere => Boxes.Where(box => box.IsHere);

    public IEnumerable<JobPart> PartsHere => Parts.Where(part => part.GivenAt is null);

    /// <summary>The same as it would be once these boxes and parts had left.</summary>
    public JobGoods After(IReadOnlyCollection<int> boxIds, IReadOnlyCollection<int> partIds, DateTime at) => new(
        [.. Boxes.Select(box => box.IsHere && boxIds.Contains(box.Id) ? box with { LeftAt = at } : box)],
        [
            .. Animals.Select(animal => animal with
            {
                Parts = [.. animal.Parts.Select(part => part.GivenAt is null && partIds.Contains(part.Id) ? part with { GivenAt = at } : part)],
            })
        ]);
}
