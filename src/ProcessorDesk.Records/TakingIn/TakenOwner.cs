namespace ProcessorDesk.Records;

/// <summary>Whose meat it is, at a drop-off: an owner found, or somebody new.</summary>
/// <param name="Id">The owner found; null for a new one, whom the rest describes.</param>
public sealed record TakenOwner(int? Id, string Name, string Phone, string? PostalAddress, string? Email, bool NameOnPacks)
{
    /// <summary>The owner found, or a new one added; null where the one found is not there any more.</summary>
    public Owner? Of(RecordsContext records)
    {
        if (Id is { } id)
            return records.Owners.SingleOrDefault(owner => owner.Id == id);
        var added = new Owner(Name, Phone);
        added.Describe(Name, Phone, PostalAddress, Email, NameOnPacks);
        records.Owners.Add(added);
        return added;
    }
}
