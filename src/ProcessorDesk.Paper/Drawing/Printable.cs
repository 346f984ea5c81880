using System.Globalization;
using System.Text;

namespace ProcessorDesk.Paper.Drawing;

/// <summary>What of a text can be printed. A character the font lacks would leave no trace on the paper, so it is replaced.</summary>
internal static class Printable
{
    /// <summary>The replacement character: a black diamond with a question mark, which the font has.</summary>
    public const char Substitute = '\uFFFD';

    public static string Text(string text)
    {
        var printed = new StringBuilder(text.Length);
        foreach (var character in text.EnumerateRunes())
            printed.Append(Of(character));
        return printed.ToString();
    }

    private static string Of(Rune character)
    {
        if (Rune.IsWhiteSpace(character))
            return character.Value == '\u00A0' ? "\u00A0" : " ";
        if (Rune.GetUnicodeCategory(character) is UnicodeCategory.Control or UnicodeCategory.Format)
            return "";
        if (Has(character))
            return character.ToString();
        var simpler = Simpler(character);
        return simpler.EnumerateRunes().All(Has) ? simpler : Substitute.ToString();
    }

    private static bool Has(Rune character) => FontFile.Regular.Has(character) && FontFile.Bold.Has(character);

    private static string Simpler(Rune character) => character.Value switch
    {
        0x2010 or 0x2011 => "-",
        0x2153 => "1/3",
        0x2154 => "2/3",
        _ => character.ToString(),
    };
}
