using ProcessorDesk.Records;
using ProcessorDesk.Trade;

namespace ProcessorDesk.Web.Pages.Find;

/// <summary>A job that was found, with what tells it from the others.</summary>
/// <param name="OpenLugs">Numbers of the lugs that hold its meat now.</param>
public sealed record FoundJob(
    int Id, int Number, int OwnerId, string Owner, string Phone, DateTime TakenAt, JobStage Stage,
    IReadOnlyList<FoundJob.Animal> Each, IReadOnlyList<int> OpenLugs)
{
    /// <summary>Names around it that fit what was asked.</summary>
    public IReadOnlyList<string> People { get; init; } = [];

    public string Animals => string.Join(", ", Each.OrderBy(one => one.Id).GroupBy(one => one.Species).Select(group =>
        group.Count() == 1 ? Wording.Of(group.Key) : $"{group.Count()} × {Wording.Of(group.Key)}"));

    /// <summary>Tags of its animals, as written.</summary>
    public IReadOnlyList<string> Tags => [.. Each.Select(one => one.Tag).OfType<string>()];

    /// <summary>Whether the tag of one of its animals begins like this.</summary>
    public bool HasTag(string? key) => key is not null && Tags.Any(tag => Texts.Key(tag)?.StartsWith(key, StringComparison.Ordinal) is true);

    public sealed record Animal(int Id, Species Species, string? Tag);
}
