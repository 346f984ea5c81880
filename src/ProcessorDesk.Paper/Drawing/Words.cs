using System.Text;

namespace ProcessorDesk.Paper.Drawing;

/// <summary>Breaking text into lines and fitting it into a width.</summary>
internal static class Words
{
    /// <summary>Lines no wider than the width; line ends in the text are kept, a word longer than a line is broken.</summary>
    public static IReadOnlyList<string> Wrap(this Canvas canvas, string text, Lettering lettering, double width)
    {
        var lines = new List<string>();
        foreach (var paragraph in text.ReplaceLineEndings("\n").Split('\n'))
            canvas.WrapParagraph(paragraph, lettering, width, lines);
        return lines;
    }

    /// <summary>The largest lettering, in half points, in which the text needs at most so many lines of the width without breaking a word.</summary>
    public static Lettering Fit(this Canvas canvas, string text, double width, int lines, Lettering largest, double smallest)
    {
        for (var size = largest.Size; size > smallest; size -= 0.5)
        {
            var lettering = largest with { Size = size };
            if (canvas.Wrap(text, lettering, width).Count <= lines && canvas.LongestWord(text, lettering) <= width)
                return lettering;
        }

        return largest with { Size = smallest };
    }

    /// <summary>One line that fits the width, shortened with three dots where it must be.</summary>
    public static string Shorten(this Canvas canvas, string text, Lettering lettering, double width)
    {
        if (canvas.Measure(text, lettering) <= width)
            return text;
        var runes = text.EnumerateRunes().ToList();
        while (runes.Count > 0 && canvas.Measure(string.Concat(runes) + "…", lettering) > width)
            runes.RemoveAt(runes.Count - 1);
        return string.Concat(runes).TrimEnd() + "…";
    }

    /// <summary>Draws lines downwards and returns the height they took.</summary>
    public static double Lines(this Canvas canvas, IReadOnlyList<string> lines, Lettering lettering, double x, double top)
    {
        for (var i = 0; i < lines.Count; i++)
            canvas.Text(lines[i], lettering, x, top + i * lettering.LineHeight + lettering.Ascent);
        return lines.Count * lettering.LineHeight;
    }

    private static double LongestWord(this Canvas canvas, string text, Lettering lettering) =>
        text.Split(' ', '\n').Max(word => canvas.Measure(word, lettering));

    private static void WrapParagraph(this Canvas canvas, string paragraph, Lettering lettering, double width, List<string> lines)
    {
        var line = new StringBuilder();
        foreach (var word in paragraph.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            var broken = false;
            foreach (var piece in canvas.Pieces(word, lettering, width))
            {
                if (line.Length > 0 && (broken || canvas.Measure($"{line} {piece}", lettering) > width))
                {
                    lines.Add(line.ToString());
                    line.Clear();
                }

                line.Append(line.Length > 0 ? " " : "").Append(piece);
                broken = true;
            }
        }

        lines.Add(line.ToString());
    }

    private static IEnumerable<string> Pieces(this Canvas canvas, string word, Lettering lettering, double width)
    {
        var piece = "";
        foreach (var rune in word.EnumerateRunes())
        {
            if (piece.Length > 0 && canvas.Measure(piece + rune, lettering) > width)
            {
                var hyphen = piece.LastIndexOf('-') + 1;
                var end = hyphen > 1 ? hyphen : piece.Length;
                yield return piece[..end];
                piece = piece[end..];
            }

            piece += rune;
        }

        yield return piece;
    }
}
