using ProcessorDesk.Paper.Drawing;

namespace ProcessorDesk.Paper;

/// <summary>The contents of a box on its label: a line each, as large as all fit, the count never cut off, what finds no room counted.</summary>
internal static class ContentLines
{
    /// <summary>Draws them into the box from its top and returns the height they took.</summary>
    public static double Draw(Canvas canvas, IReadOnlyList<ContentLine> contents, Box room, double largest, double smallest)
    {
        var lettering = new Lettering(largest, Bold: true);
        while (lettering.Size > smallest && !Fits(canvas, contents, lettering, room))
            lettering = lettering with { Size = lettering.Size - 0.5 };
        var most = Math.Max(1, (int)(room.Height / lettering.LineHeight));
        var lines = contents.Select(content => Line(canvas, content, lettering, room.Width)).ToList();
        if (lines.Count > most)
            lines = [.. lines.Take(most - 1), $"and {lines.Count - most + 1} more"];
        return canvas.Lines(lines, lettering, room.X, room.Y);
    }

    private static bool Fits(Canvas canvas, IReadOnlyList<ContentLine> contents, Lettering lettering, Box room) =>
        contents.Count * lettering.LineHeight <= room.Height && contents.All(content => canvas.Measure(content.Words, lettering) <= room.Width);

    private static string Line(Canvas canvas, ContentLine content, Lettering lettering, double width)
    {
        if (canvas.Measure(content.Words, lettering) <= width || content.Count.Length == 0)
            return canvas.Shorten(content.Words, lettering, width);
        var count = canvas.Shorten($", {content.Count}", lettering, width / 2);
        return canvas.Shorten(content.What, lettering, width - canvas.Measure(count, lettering)) + count;
    }
}
