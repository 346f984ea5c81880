using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>A call as it is written down.</summary>
/// <param name="Outcome">Null where nobody said what came of it.</param>
public sealed record CallNote(int JobId, TraceStart About, CallOutcome? Outcome, string? Words);

/// <summary>Writing down calls to owners.</summary>
public static class CallLogging
{
    /// <summary>What happened is always recordable: it asks only what came of the call, and what was said. Its result is the call's id.</summary>
    public static Outcome LogCall(this RecordsContext records, CallNote note, Act act)
    {
        List<Finding> findings = [];
        if (note.Outcome is null)
            findings.Add(new Finding("Outcome", "Say what came of the call."));
        if (string.IsNullOrWhiteSpace(note.Words))
            findings.Add(new Finding("Words", "Write who was spoken to and what was said, or that nobody answered."));
        if (findings.Count > 0)
            return Outcome.Refused(findings);
        var call = new OwnerCall(note.JobId, note.About, note.Outcome!.Value, note.Words!, act.Now, act.Hand.Id);
        records.OwnerCalls.Add(call);
        records.SaveChanges();
        return Outcome.Done(call.Id);
    }
}
