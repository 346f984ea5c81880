using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>A product of a job's agreed split and how far it is.</summary>
/// <param name="Batch">The batch it stands in; null where none is planned.</param>
/// <param name="Finished">What came back; null before the release.</param>
/// <param name="IsInvoiced">A standing invoice charges it.</param>
public sealed record MadeProduct(
    int AllotmentId, int ProductId, string Name, Weight Lean, Weight AddedFat, Weight Green, Weight Expected, MadeProduct.InBatch? Batch, Weight? Finished, bool IsInvoiced)
{
    public int? BatchId => Batch?.Id;

    public int? BatchNumber => Batch?.Number;

    public bool IsReleased => Batch?.ReleasedAt is not null;

    /// <summary>Why its batch was thrown out; null where it was not.</summary>
    public string? DiscardedBecause => Batch?.EndedBecause;

    public bool WasReleasedAt(DateTime moment) => Batch?.ReleasedAt <= moment;

    /// <summary>Where it was at a moment, in words; whoever asks has seen that it was not released.</summary>
    public string WhereAt(DateTime moment) => Batch switch
    {
        null => "not begun",
        { EndedAt: { } ended } when ended <= moment => $"thrown out: {Batch.EndedBecause}",
        { PlannedAt: var planned } when planned > moment => "not begun",
        { MixedAt: null } => $"to be mixed in batch {Batch.Number}",
        { MixedAt: { } mixed } when mixed > moment => $"to be mixed in batch {Batch.Number}",
        _ => $"{Batch.LastStepAt(moment)} batch {Batch.Number}",
    };

    /// <summary>The batch it stands in, with what was done to it and when.</summary>
    public sealed record InBatch(
        int Id, int Number, DateTime PlannedAt, DateTime? MixedAt, DateTime? ReleasedAt, DateTime? EndedAt, string? EndedBecause, IReadOnlyList<Step> Steps)
    {
        internal string LastStepAt(DateTime moment) =>
            Steps.Where(step => step.At <= moment && !(step.UndoneAt <= moment)).MaxBy(step => (step.At, step.Kind)) is { } last ? Words(last.Kind) : "mixed in";

        private static string Words(BatchStepKind kind) => kind switch
        {
            BatchStepKind.RestStarted => "resting in",
            BatchStepKind.Stuffed => "stuffed in",
            BatchStepKind.HeatStarted => "in the heat with",
            BatchStepKind.ChillStarted => "in the chill with",
            BatchStepKind.Packed => "packed, waits for the release of",
        };
    }

    public sealed record Step(BatchStepKind Kind, DateTime At, DateTime? UndoneAt);
}
