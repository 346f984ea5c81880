using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Paper;
using ProcessorDesk.Records;

namespace ProcessorDesk.Web.Pages.Counter;

/// <summary>Holds as a ticket prints them: why, and what may not be done meanwhile, by the shop's own rules.</summary>
internal static class HoldNotices
{
    public static IReadOnlyDictionary<HoldReason, HoldNotice> ByReason(RecordsContext records, IEnumerable<Hold> holds)
    {
        var reasons = holds.Select(hold => hold.Reason).Distinct().ToList();
        if (reasons.Count == 0)
            return new Dictionary<HoldReason, HoldNotice>();
        var rules = records.HoldRules.AsNoTracking().Where(rule => rule.Stops && reasons.Contains(rule.Reason)).ToList();
        return reasons.ToDictionary(reason => reason, reason => new HoldNotice(
            Capital(Wording.Of(reason)),
            "No " + string.Join(", ", rules.Where(rule => rule.Reason == reason).OrderBy(rule => rule.Act).Select(rule => Wording.Of(rule.Act))) + "."));
    }

    private static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];
}
