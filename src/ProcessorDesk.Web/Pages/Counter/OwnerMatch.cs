using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;

namespace ProcessorDesk.Web.Pages.Counter;

/// <summary>An owner as the counter tells one from another.</summary>
public sealed record OwnerMatch(int Id, string Name, string Phone, string? Address, int Jobs)
{
    private const int Most = 8;

    public static IReadOnlyList<OwnerMatch> Find(RecordsContext records, string? typed) =>
        [.. Shown(records, records.Owners.Found(typed).AsNoTracking().OrderBy(owner => owner.Name).Take(Most))];

    public static OwnerMatch? Of(RecordsContext records, int id) =>
        Shown(records, records.Owners.AsNoTracking().Where(owner => owner.Id == id)).SingleOrDefault();

    private static IQueryable<OwnerMatch> Shown(RecordsContext records, IQueryable<Owner> owners) =>
        owners.Select(owner => new OwnerMatch(
            owner.Id, owner.Name, owner.Phone, owner.PostalAddress, records.Jobs.Count(job => job.OwnerId == owner.Id)));
}

/// <summary>What the owner search shows: what was typed, and who it may be.</summary>
public sealed record OwnerMatches(string Typed, IReadOnlyList<OwnerMatch> Found);
