using ProcessorDesk.Records;
using ProcessorDesk.Trade;

namespace ProcessorDesk.Web.Pages.Find;

/// <summary>A job that was found, with what tells it from the others.</summary>
/// <param name="Tags">Tags of its animals, as written.</param>
/// <param name="OpenLugs">Numbers of the lugs that hold its meat now.</param>
/// <param name="People">Names around it that fit what was asked.</param>
public sealed record FoundJob(
    int Id, int Number, int OwnerId, string Owner, string Phone, DateTime TakenAt, JobStage Stage,
    IReadOnlyList<Species> Species, IReadOnlyList<string> Tags, IReadOnlyList<int> OpenLugs, IReadOnlyList<string> People, bool HasTag)
{
    public string Animals => string.Join(", ", Species.GroupBy(one => one).Select(group =>
        group.Count() == 1 ? Wording.Of(group.Key) : $"{group.Count()} × {Wording.Of(group.Key)}"));
}
