using Microsoft.EntityFrameworkCore;

namespace ProcessorDesk.Records;

/// <summary>Finding owners by what people remember of them.</summary>
public static class OwnerQueries
{
    private const int ShortestIndexed = 3;

    /// <summary>
    /// Owners whose name or phone holds every word typed, in any part of it; accents and case do not matter. Words under three
    /// characters narrow nothing beside a longer one; alone, the first finds names that begin with it.
    /// </summary>
    public static IQueryable<Owner> Found(this DbSet<Owner> owners, string? typed)
    {
        var words = Words(typed ?? "").ToList();
        if (Match(words) is { } match)
        {
            return owners.FromSql(
                $"SELECT o.* FROM \"OwnerFind\" f CROSS JOIN \"Owners\" o ON o.Id = f.rowid WHERE f.\"OwnerFind\" MATCH {match}");
        }

        var beginning = words.FirstOrDefault();
        return beginning is null
            ? owners.Where(owner => false)
            : owners.Where(owner => EF.Functions.Like(owner.Name, beginning + "%"));
    }

    /// <summary>People around a job, found in the same way; by longer words alone.</summary>
    public static IQueryable<JobPerson> Found(this DbSet<JobPerson> people, string? typed) =>
        Match(Words(typed ?? "")) is { } match
            ? people.FromSql($"SELECT p.* FROM \"PersonFind\" f CROSS JOIN \"JobPeople\" p ON p.Id = f.rowid WHERE f.\"PersonFind\" MATCH {match}")
            : people.Where(person => false);

    /// <summary>Null where every word is too short to be indexed.</summary>
    private static string? Match(IEnumerable<string> words)
    {
        var indexed = words.Where(word => word.Length >= ShortestIndexed).Select(word => $"\"{word}\"").ToList();
        return indexed.Count > 0 ? string.Join(" AND ", indexed) : null;
    }

    /// <summary>What the index is asked for: letters and digits alone; a phone by its digits, however it is written.</summary>
    private static IEnumerable<string> Words(string typed) =>
        LooksLikePhone(typed) ? [Phone(typed)] : typed.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).SelectMany(Word);

    private static IEnumerable<string> Word(string word) => LooksLikePhone(word)
        ? [Phone(word)]
        : string.Concat(word.Select(c => char.IsLetterOrDigit(c) ? c : ' ')).Split(' ', StringSplitOptions.RemoveEmptyEntries);

    private static bool LooksLikePhone(string text) =>
        text.Any(char.IsAsciiDigit) && text.All(c => char.IsAsciiDigit(c) || char.IsWhiteSpace(c) || "()-.+/".Contains(c, StringComparison.Ordinal));

    /// <summary>The country's 1 is left off, since it may not have been kept.</summary>
    private static string Phone(string text) =>
        Owner.DigitsOf(text) is ['1', .. { Length: 10 } rest] ? rest : Owner.DigitsOf(text);
}
