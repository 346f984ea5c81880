using ProcessorDesk.Paper.Drawing;

namespace ProcessorDesk.Paper;

/// <summary>A chart of readings on paper.</summary>
internal static class ProbeChartOnSheet
{
    private const double Size = 9;

    /// <summary>Over the width, at the sheet's cursor; it is never torn over two pages.</summary>
    public static void Draw(Sheet sheet, ProbeChart chart)
    {
        var drawing = ProbeChartDrawing.Of(chart, sheet.Width, Size);
        sheet.Need(drawing.Height);
        Draw(sheet.Canvas, drawing, sheet.Left, sheet.Y);
        sheet.Space(drawing.Height);
    }

    /// <summary>Height in points that a chart takes over such a width.</summary>
    public static double HeightOf(ProbeChart chart, double width) => ProbeChartDrawing.Of(chart, width, Size).Height;

    private static void Draw(Canvas canvas, ProbeChartDrawing drawing, double left, double top)
    {
        Box At(Box box) => box with { X = left + box.X, Y = top + box.Y };
        void Lines(IReadOnlyList<ProbeChartDrawing.Line> lines, double thickness, double grey)
        {
            foreach (var line in lines)
                canvas.Line(left + line.X1, top + line.Y1, left + line.X2, top + line.Y2, thickness, grey);
        }

        foreach (var gap in drawing.Gaps)
            canvas.Fill(At(gap), 0.86);
        Lines(drawing.Grid, 0.4, 0.75);
        canvas.Frame(At(drawing.Plot), 0.6, 0.4);
        Lines(drawing.Marks, 1.6, 0.35);
        Lines(drawing.Curves, 1, 0);
        foreach (var dot in drawing.Dots)
            Draw(canvas, dot, drawing.Radius, left, top);
        var lettering = new Lettering(drawing.Size);
        foreach (var label in drawing.Labels)
        {
            var width = label.Ends ? canvas.Measure(label.Text, lettering) : label.Centred ? canvas.Measure(label.Text, lettering) / 2 : 0;
            canvas.Text(label.Text, lettering, left + label.X - width, top + label.Baseline);
        }
    }

    private static void Draw(Canvas canvas, ProbeChartDrawing.Dot dot, double radius, double left, double top)
    {
        var (x, y) = (left + dot.X, top + dot.Y);
        switch (dot.Shape)
        {
            case ProbeChartDrawing.Shape.Round:
                canvas.Circle(x, y, radius);
                break;
            case ProbeChartDrawing.Shape.Square:
                canvas.Frame(new Box(x - radius, y - radius, 2 * radius, 2 * radius), 0.9);
                break;
            case ProbeChartDrawing.Shape.Cross:
                canvas.Line(x - radius, y - radius, x + radius, y + radius, 0.9);
                canvas.Line(x - radius, y + radius, x + radius, y - radius, 0.9);
                break;
        }
    }
}
