namespace ProcessorDesk.Paper.Drawing;

/// <summary>Lines to write on, side by side, each with its label below.</summary>
internal static class Blanks
{
    private const double Gap = 14;

    /// <summary>Height a row of lines takes, in points: room for a hand above, the label below.</summary>
    public static double Height { get; } = 24 + Lettering.Label.LineHeight + 2;

    /// <summary>A row at the sheet's cursor, by shares of the width.</summary>
    public static void Draw(Sheet sheet, params (string Label, double Share)[] blanks)
    {
        sheet.Need(Height);
        Draw(sheet.Canvas, sheet.Left, sheet.Y, sheet.Width, blanks);
        sheet.Y += Height;
    }

    /// <summary>A row at a place of its own.</summary>
    public static void Draw(Canvas canvas, double x, double top, double width, params (string Label, double Share)[] blanks)
    {
        var room = width - Gap * (blanks.Length - 1);
        var all = blanks.Sum(blank => blank.Share);
        var line = top + 24;
        foreach (var (label, share) in blanks)
        {
            var part = room * share / all;
            canvas.Line(x, line, x + part, line, 0.9);
            canvas.Text(canvas.Shorten(label, Lettering.Label, part), Lettering.Label, x, line + 1 + Lettering.Label.Ascent);
            x += part + Gap;
        }
    }
}
