using System.Text.RegularExpressions;

namespace ProcessorDesk.Web.Forms;

/// <summary>A field's name as a person would read it: "Input.Asks[1].TagId" is "Asks 2, tag id".</summary>
public static partial class KeptFormWords
{
    public static string Name(string field)
    {
        var parts = field.Split('.').SkipWhile(part => part == "Input").Select(Part).ToList();
        var words = string.Join(", ", parts);
        return words == "" ? field : char.ToUpperInvariant(words[0]) + words[1..];
    }

    private static string Part(string part)
    {
        var words = Humps().Replace(Index().Replace(part, m => " " + (int.Parse(m.Groups[1].ValueSpan, System.Globalization.CultureInfo.InvariantCulture) + 1)), " $1");
        return words.Trim().ToLowerInvariant();
    }

    [GeneratedRegex(@"\[(\d{1,6})\]")]
    private static partial Regex Index();

    [GeneratedRegex("(?<=[a-z0-9])([A-Z])")]
    private static partial Regex Humps();
}
