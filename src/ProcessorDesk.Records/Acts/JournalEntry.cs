namespace ProcessorDesk.Records;

/// <summary>One act: who, where, which verb, what changed. Never changed or deleted: the database refuses.</summary>
public sealed class JournalEntry
{
    private JournalEntry()
    {
    }

    internal JournalEntry(DateTime at, Hand hand, string verb, string changes, string previousHash)
    {
        At = at;
        ById = hand.StaffId;
        Station = hand.Station;
        Verb = verb;
        Changes = changes;
        PreviousHash = previousHash;
        Hash = HashOf();
    }

    public int Id { get; private set; }

    public DateTime At { get; private set; }

    public int? ById { get; private set; }

    public string Station { get; private set; } = "";

    public string Verb { get; private set; } = "";

    /// <summary>The rows changed, as JSON: ids and figures before and after; of a text only that it changed.</summary>
    public string Changes { get; private set; } = "";

    public string PreviousHash { get; private set; } = "";

    public string Hash { get; private set; } = "";

    /// <summary>The hash this entry must have; differs from <see cref="Hash"/> where the entry was tampered with.</summary>
    public string HashOf() => JournalHash.Of(PreviousHash, At, ById, Station, Verb, Changes);
}
