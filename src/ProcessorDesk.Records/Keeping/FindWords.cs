namespace ProcessorDesk.Records;

/// <summary>What was typed to find somebody by any part of a name or phone, as an index of words is asked for it.</summary>
internal static class FindWords
{
    private const int ShortestIndexed = 3;

    /// <summary>
    /// Every word of three characters and more, each to be found somewhere; null where there is none. Shorter words narrow nothing beside
    /// a longer one.
    /// </summary>
    public static string? Match(string? typed)
    {
        var indexed = Of(typed).Where(word => word.Length >= ShortestIndexed).Select(word => $"\"{word}\"").ToList();
        return indexed.Count == 0 ? null : string.Join(" AND ", indexed);
    }

    /// <summary>The first word; null where nothing was typed.</summary>
    public static string? First(string? typed) => Of(typed).FirstOrDefault();

    /// <summary>Letters and digits alone; a phone by its digits, however it is written.</summary>
    private static IEnumerable<string> Of(string? typed) => LooksLikePhone(typed ?? "")
        ? [Phone(typed!)]
        : (typed ?? "").Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).SelectMany(Word);

    private static IEnumerable<string> Word(string word) => LooksLikePhone(word)
        ? [Phone(word)]
        : string.Concat(word.Select(c => char.IsLetterOrDigit(c) ? c : ' ')).Split(' ', StringSplitOptions.RemoveEmptyEntries);

    private static bool LooksLikePhone(string text) =>
        text.Any(char.IsAsciiDigit) && text.All(c => char.IsAsciiDigit(c) || char.IsWhiteSpace(c) || "()-.+/".Contains(c, StringComparison.Ordinal));

    /// <summary>The country's 1 is left off, since it may not have been kept.</summary>
    private static string Phone(string text) =>
        Owner.DigitsOf(text) is ['1', .. { Length: 10 } rest] ? rest : Owner.DigitsOf(text);
}
