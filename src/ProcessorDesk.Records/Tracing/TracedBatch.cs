using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>A batch of a trace.</summary>
/// <param name="Fat">Added fat weighed in, of all its loads.</param>
/// <param name="Added">All else weighed in beside the meat.</param>
/// <param name="Left">Stayed in grinder and stuffer, as weighed and not struck; it went to nobody.</param>
/// <param name="Finished">Weighed at the end and not struck; null where nothing was.</param>
/// <param name="IsWeighed">Of every mixed load the finished weight is there, so that what is lacking is lost.</param>
/// <param name="Holds">Those that stand, with their notes.</param>
/// <param name="Places">Whose allotments it was planned for, those taken off the plan left out.</param>
public sealed record TracedBatch(
    int Id, int Number, string Product, Pooling Pooling, DateTime PlannedAt, DateTime? MixedAt, DateTime? ReleasedAt, DateTime? EndedAt, string? EndedBecause,
    Weight Fat, Weight Added, Weight Left, Weight? Finished, bool IsWeighed, IReadOnlyList<TracedHold> Holds, IReadOnlyList<TracedPlace> Places)
{
    public BatchStage Stage => Batch.StageOf(MixedAt, ReleasedAt, EndedAt);
}

public sealed record TracedHold(HoldReason Reason, string? Note);

/// <summary>An allotment's place in a batch.</summary>
/// <param name="Back">What of the finished weight went back to it; null before the release.</param>
public sealed record TracedPlace(int EntryId, int JobId, int AllotmentId, Weight? Back);
