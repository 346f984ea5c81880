namespace ProcessorDesk.Records;

/// <summary>The thing a trace is asked by.</summary>
/// <param name="Id">Of the animal, job, filling, batch, box or lot.</param>
public readonly record struct TraceStart(TracedKind Kind, int Id);
