using Microsoft.EntityFrameworkCore;

namespace ProcessorDesk.Records;

/// <summary>Whether the journal is whole: every entry there, each as it was written, each after the one before.</summary>
public static class JournalChain
{
    /// <summary>
    /// The id of the first entry that is missing, altered or out of its place; null where the journal is whole. The database keeps
    /// the last id it gave, so that an entry taken off the end shows as well.
    /// </summary>
    public static int? FirstBroken(this RecordsContext records)
    {
        var (id, hash) = (0, "");
        foreach (var entry in records.Journal.AsNoTracking().OrderBy(entry => entry.Id).AsEnumerable())
        {
            id++;
            if (entry.Id != id || entry.PreviousHash != hash || entry.HashOf() != entry.Hash)
                return id;
            hash = entry.Hash;
        }

        var lastGiven = records.Database.SqlQuery<long>($"SELECT seq AS Value FROM sqlite_sequence WHERE name = 'Journal'").AsEnumerable().SingleOrDefault();
        return lastGiven > id ? id + 1 : null;
    }
}
