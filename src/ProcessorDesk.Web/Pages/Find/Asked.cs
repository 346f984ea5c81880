using System.Globalization;
using ProcessorDesk.Records;
using ProcessorDesk.Trade.Tickets;

namespace ProcessorDesk.Web.Pages.Find;

/// <summary>What was typed or scanned into the Find box, read in every way it may be meant.</summary>
/// <param name="Text">A scanned address is stripped to the code at its end.</param>
/// <param name="Code">A ticket code with the right check.</param>
/// <param name="CodeIsWrong">It is written like a ticket code and is none.</param>
/// <param name="MayBeCode">It could be a ticket code or a word of six letters.</param>
/// <param name="Number">A job or lug number; null where it is none.</param>
/// <param name="TagKey">Letters and digits alone; null under three of them.</param>
/// <param name="Batch">The number after the word "batch"; null where it is not said.</param>
public sealed record Asked(string Text, TicketCode? Code, bool CodeIsWrong, bool MayBeCode, int? Number, string? TagKey, int? Batch)
{
    private const int CodeLength = 6;
    private const int ShortestTag = 3;
    private const int LongestNumber = 7;

    public static Asked Of(string? typed)
    {
        var text = Stripped((typed ?? "").Trim());
        var symbols = Texts.Key(text) ?? "";
        var hasShape = symbols.Length == CodeLength && char.IsAsciiLetter(symbols[0])
            && text.All(sign => char.IsAsciiLetterOrDigit(sign) || sign is '-' or ' ');
        var code = hasShape && TicketCode.Parse(text).Try(out var read, out _) ? read : (TicketCode?)null;
        // Six letters and nothing else may be a name; with a digit or a hyphen in the middle it is a code.
        var sure = hasShape && (symbols.Any(char.IsAsciiDigit) || text is [_, _, _, '-', _, _, _]);
        return new Asked(text, code, code is null && sure, hasShape, NumberOf(text), symbols.Length >= ShortestTag ? symbols : null, BatchOf(text));
    }

    private static string Stripped(string text)
    {
        if (!text.Contains("://", StringComparison.Ordinal))
            return text;
        var path = text.Split('?', '#')[0].TrimEnd('/');
        var query = text.Split('?') is [_, var after, ..] ? after.Split('#')[0] : "";
        var asked = query.Split('&').FirstOrDefault(pair => pair.StartsWith("q=", StringComparison.Ordinal));
        var last = path[(path.LastIndexOf('/') + 1)..];
        // The other symbol on a claim ticket is the owner's own link, which begins with the job's number.
        if (asked is null && path.EndsWith($"{OwnerLinks.Folder}/{last}", StringComparison.OrdinalIgnoreCase) && OwnerLinks.JobNumberIn(last) is { } number)
            return number.ToString(CultureInfo.InvariantCulture);
        return Uri.UnescapeDataString(asked is null ? last : asked[2..]).Trim();
    }

    private static int? BatchOf(string text)
    {
        const string word = "batch";
        return text.StartsWith(word, StringComparison.OrdinalIgnoreCase) ? NumberOf(text[word.Length..].Trim()) : null;
    }

    private static int? NumberOf(string text)
    {
        var bare = text.TrimStart('#');
        foreach (var word in (string[])["job", "lug"])
        {
            if (bare.StartsWith(word, StringComparison.OrdinalIgnoreCase))
                bare = bare[word.Length..].Trim().TrimStart('#');
        }

        return bare.Length is > 0 and <= LongestNumber && bare.All(char.IsAsciiDigit)
            ? int.Parse(bare, CultureInfo.InvariantCulture)
            : null;
    }
}
