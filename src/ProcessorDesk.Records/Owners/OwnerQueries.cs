using Microsoft.EntityFrameworkCore;

namespace ProcessorDesk.Records;

/// <summary>Finding owners by what people remember of them.</summary>
public static class OwnerQueries
{
    /// <summary>A letter or two begin a great many names, and their owners' jobs grow with the seasons.</summary>
    private const int MostByBeginning = 40;

    /// <summary>
    /// Owners whose name or phone holds every word typed, in any part of it; accents and case do not matter. Words under three
    /// characters narrow nothing beside a longer one; alone, the first finds the first few names that begin with it.
    /// </summary>
    public static IQueryable<Owner> Found(this DbSet<Owner> owners, string? typed)
    {
        if (FindWords.Match(typed) is { } match)
        {
            return owners.FromSql(
                $"SELECT o.* FROM \"OwnerFind\" f CROSS JOIN \"Owners\" o ON o.Id = f.rowid WHERE f.\"OwnerFind\" MATCH {match}");
        }

        var beginning = FindWords.First(typed);
        return beginning is null
            ? owners.Where(owner => false)
            : owners.Where(owner => EF.Functions.Like(owner.Name, beginning + "%")).OrderBy(owner => owner.Name).Take(MostByBeginning);
    }
}
