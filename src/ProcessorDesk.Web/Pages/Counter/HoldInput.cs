using ProcessorDesk.Records;

namespace ProcessorDesk.Web.Pages.Counter;

/// <summary>A hold to be put on, or the reason for letting one go, as typed.</summary>
public sealed class HoldInput
{
    public HoldReason Reason { get; set; } = HoldReason.Dispute;

    public string Note { get; set; } = "";

    public string Because { get; set; } = "";
}

/// <summary>The holds of an animal or of a job, those that stand first.</summary>
public sealed record HoldList(IReadOnlyList<Hold> Holds, bool MayReleaseDetected, HoldInput Input, string Whose)
{
    public IEnumerable<Hold> Standing => Holds.Where(hold => hold.ReleasedAt is null).OrderBy(hold => hold.PlacedAt);

    public IEnumerable<Hold> Released => Holds.Where(hold => hold.ReleasedAt is not null).OrderByDescending(hold => hold.ReleasedAt);
}
