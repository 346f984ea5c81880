using ProcessorDesk.Paper.Drawing;
using ProcessorDesk.Trade.Yields;

namespace ProcessorDesk.Paper;

/// <summary>The way of the weight on paper: stages filled, losses hatched, additions dotted, what was there already in grey.</summary>
internal static class WayOnSheet
{
    private const double Size = 10;

    /// <summary>At the sheet's cursor; a row is never torn over two pages.</summary>
    public static void Draw(Sheet sheet, IReadOnlyList<WayStep> steps)
    {
        foreach (var row in WayRow.Of(steps, sheet.Width, Size))
        {
            sheet.Need(row.Height);
            Draw(sheet.Canvas, row, sheet.Left, sheet.Y, sheet.Right);
            sheet.Space(row.Height);
        }
    }

    private static void Draw(Canvas canvas, WayRow row, double left, double top, double right)
    {
        var lettering = new Lettering(row.Size, row.IsStage);
        canvas.Text(row.Name, lettering, left, top + row.Baseline);
        canvas.TextEndingAt(row.Figure, lettering, right, top + row.Baseline);
        Box At(Box box) => box with { X = left + box.X, Y = top + box.Y };
        if (row.Rest is { } rest)
            canvas.Fill(At(rest), 0.85);
        var bar = At(row.Bar);
        if (row.IsStage)
        {
            canvas.Fill(bar, 0.25);
            return;
        }

        if (row.Kind == WayKind.Loss)
            canvas.Hatch(bar, row.Step, 0.6);
        else
            canvas.Dots(bar, row.Step);
        canvas.Frame(bar, 0.75);
    }
}
