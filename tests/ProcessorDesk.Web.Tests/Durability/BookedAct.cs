using System.Text.Json;
using ProcessorDesk.Records;

namespace ProcessorDesk.Web.Tests.Durability;

/// <summary>One entry of the journal: whose, which verb, and the rows it says were added, as "Job 17".</summary>
internal sealed record BookedAct(int Id, int? By, string Verb, IReadOnlyList<string> Added)
{
    public static BookedAct Of(JournalEntry entry)
    {
        using var changes = JsonDocument.Parse(entry.Changes);
        return new BookedAct(entry.Id, entry.ById, entry.Verb,
        [
            .. changes.RootElement.EnumerateArray()
                .Where(change => change.GetProperty("act").GetString() == "Added")
                .Select(change => $"{change.GetProperty("what").GetString()} {change.GetProperty("key").GetString()}")
        ]);
    }
}
