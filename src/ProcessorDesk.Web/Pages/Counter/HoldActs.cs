using ProcessorDesk.Records;
using ProcessorDesk.Trade;

namespace ProcessorDesk.Web.Pages.Counter;

/// <summary>Lets holds go. Disease detected is the manager's to judge, whoever put it on.</summary>
internal static class HoldActs
{
    public static Outcome Release(RecordsContext records, Act act, int holdId, StaffRole role, string because)
    {
        var hold = records.Holds.SingleOrDefault(one => one.Id == holdId);
        if (hold is null)
            return Outcome.Refused(new Finding("", "This hold is not there."));
        if (hold.ReleasedAt is not null)
            return Outcome.Refused(new Finding("", "This hold was released before."));
        if (hold.Reason == HoldReason.DiseaseDetected && role != StaffRole.Manager)
            return Outcome.Refused(new Finding("", "Only the manager releases an animal in which disease was detected."));
        if (string.IsNullOrWhiteSpace(because))
            return Outcome.Refused(new Finding("Because", "Say why the hold is released."));
        hold.Release(act.Now, act.Hand.Id, because);
        return Outcome.Done(holdId);
    }
}
