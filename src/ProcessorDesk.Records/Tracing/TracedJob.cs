namespace ProcessorDesk.Records;

/// <summary>A job of a trace, with its owner.</summary>
/// <param name="AnimalIds">Of which it has a share.</param>
/// <param name="Holds">Reasons of the holds that stand on the whole job.</param>
/// <param name="Calls">About what the trace was asked by, the oldest first.</param>
public sealed record TracedJob(
    int Id, int Number, string Owner, string Phone, IReadOnlyList<int> AnimalIds, IReadOnlyList<HoldReason> Holds, IReadOnlyList<TracedCall> Calls)
{
    public bool IsTold => Calls.Any(call => call.Outcome == CallOutcome.Told);
}

/// <param name="By">Initials.</param>
public sealed record TracedCall(int Id, CallOutcome Outcome, string Words, DateTime At, string By);
