using Microsoft.EntityFrameworkCore;

namespace ProcessorDesk.Records;

/// <summary>Finding the people around jobs.</summary>
public static class JobPersonQueries
{
    /// <summary>
    /// People whose name or phone holds every word typed, as owners are found; nobody where no word has three characters.
    /// </summary>
    public static IQueryable<JobPerson> Found(this DbSet<JobPerson> people, string? typed) => FindWords.Match(typed) is { } match
        ? people.FromSql($"SELECT p.* FROM \"PersonFind\" f CROSS JOIN \"JobPeople\" p ON p.Id = f.rowid WHERE f.\"PersonFind\" MATCH {match}")
        : people.Where(person => person.Id == 0);
}
