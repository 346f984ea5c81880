using Microsoft.EntityFrameworkCore;

namespace ProcessorDesk.Records;

/// <summary>Finding owners by what people remember of them.</summary>
public static class OwnerQueries
{
    private const int ShortestIndexed = 3;

    /// <summary>
    /// Owners whose name or phone holds every word typed, in any part of it; accents and case do not matter. A text under three
    /// characters finds names that begin with it.
    /// </summary>
    public static IQueryable<Owner> Found(this DbSet<Owner> owners, string? typed)
    {
        var words = (typed ?? "").Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(Word).Where(word => word.Length > 0).ToList();
        var indexed = words.Where(word => word.Length >= ShortestIndexed).Select(word => $"\"{word}\"").ToList();
        if (indexed.Count > 0)
        {
            var match = string.Join(" AND ", indexed);
            return owners.FromSql(
                $"SELECT o.* FROM \"OwnerFind\" f CROSS JOIN \"Owners\" o ON o.Id = f.rowid WHERE f.\"OwnerFind\" MATCH {match}");
        }

        var beginning = words.FirstOrDefault();
        return beginning is null
            ? owners.Where(owner => false)
            : owners.Where(owner => EF.Functions.Like(owner.Name, beginning + "%"));
    }

    /// <summary>A word as the index holds it: a phone by its digits alone, a name without quotes and wildcards.</summary>
    private static string Word(string word)
    {
        var looksLikePhone = word.Any(char.IsAsciiDigit) && word.All(c => char.IsAsciiDigit(c) || "()-.+/".Contains(c, StringComparison.Ordinal));
        return looksLikePhone ? Owner.DigitsOf(word) : string.Concat(word.Where(c => char.IsLetterOrDigit(c) || c is '\'' or '-'));
    }
}
