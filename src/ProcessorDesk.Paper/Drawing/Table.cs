namespace ProcessorDesk.Paper.Drawing;

/// <summary>A column: its head, its part of the width, whether figures stand to the right, how it is set, and whether it is a box to tick or, where its cell is empty, a line to write on.</summary>
internal sealed record Column(string Head, double Share, bool Figures = false, Lettering? Lettering = null, bool Ticked = false, bool Written = false)
{
    public Lettering Set => Lettering ?? Drawing.Lettering.Body;
}

/// <summary>Tables whose rows stay whole and whose head stands again on every page.</summary>
internal static class Table
{
    private const double Gap = 10;
    private const double Padding = 2.5;
    private const double WriteAbove = 5;

    /// <param name="leastRow">Height of a row in points, or more where its text needs it.</param>
    public static void Draw(Sheet sheet, IReadOnlyList<Column> columns, IReadOnlyList<IReadOnlyList<string>> rows, bool lastStrong = false, double leastRow = 0)
    {
        var widths = Widths(sheet, columns);
        if (rows.Count == 0)
            return;
        var heads = columns.Select((column, i) => sheet.Canvas.Wrap(column.Head, Lettering.Label, widths[i])).ToList();
        var headHeight = heads.Max(lines => lines.Count) * Lettering.Label.LineHeight + 3;
        var set = rows.SelectMany((row, i) => Row.Set(sheet, columns, widths, row, lastStrong && i == rows.Count - 1, sheet.PageHeight - headHeight - 8, leastRow)).ToList();
        sheet.Need(headHeight + set[0].Height);
        Head(sheet, columns, widths, heads, headHeight);
        foreach (var row in set)
        {
            if (sheet.Need(row.Height))
                Head(sheet, columns, widths, heads, headHeight);
            row.Draw(sheet, columns, widths);
        }
    }

    private static double[] Widths(Sheet sheet, IReadOnlyList<Column> columns)
    {
        var all = columns.Sum(column => column.Share);
        var room = sheet.Width - Gap * (columns.Count - 1);
        return [.. columns.Select(column => room * column.Share / all)];
    }

    private static void Head(Sheet sheet, IReadOnlyList<Column> columns, double[] widths, List<IReadOnlyList<string>> heads, double height)
    {
        if (columns.All(column => column.Head.Length == 0))
            return;
        ForEach(sheet, widths, (i, x) => Cell(sheet, columns[i], heads[i], Lettering.Label, x, widths[i], sheet.Y + height - 3 - heads[i].Count * Lettering.Label.LineHeight));
        sheet.Y += height;
        sheet.Canvas.Line(sheet.Left, sheet.Y, sheet.Right, sheet.Y);
    }

    private static void ForEach(Sheet sheet, double[] widths, Action<int, double> draw)
    {
        var x = sheet.Left;
        for (var i = 0; i < widths.Length; i++)
        {
            draw(i, x);
            x += widths[i] + Gap;
        }
    }

    private static void Cell(Sheet sheet, Column column, IReadOnlyList<string> lines, Lettering lettering, double x, double width, double top)
    {
        for (var i = 0; i < lines.Count; i++)
        {
            var baseline = top + i * lettering.LineHeight + lettering.Ascent;
            if (column.Figures)
                sheet.Canvas.TextEndingAt(lines[i], lettering, x + width, baseline);
            else
                sheet.Canvas.Text(lines[i], lettering, x, baseline);
        }
    }

    /// <summary>A row set in lines; one too tall for any page is set as several.</summary>
    private sealed record Row(IReadOnlyList<IReadOnlyList<string>> Cells, bool Strong, double Height, double Above, bool First, bool Last)
    {
        public static IEnumerable<Row> Set(Sheet sheet, IReadOnlyList<Column> columns, double[] widths, IReadOnlyList<string> texts, bool strong, double tallest, double least)
        {
            var line = columns.Max(column => column.Set.LineHeight);
            var most = (int)((tallest - 2 * Padding) / line);
            var cells = texts.Select((text, i) =>
                columns[i].Ticked ? [] : sheet.Canvas.Wrap(text, Of(columns[i], strong), widths[i])).ToList();
            var count = Math.Max(1, cells.Max(cell => cell.Count));
            for (var start = 0; start < count; start += most)
            {
                var part = cells.Select(IReadOnlyList<string> (cell) => [.. cell.Skip(start).Take(most)]).ToList();
                var height = part.Select((cell, i) => Math.Max(1, cell.Count) * columns[i].Set.LineHeight).Max() + 2 * Padding;
                var above = Math.Max(0, least - height);
                yield return new Row(part, strong, height + above, above, start == 0, start + most >= count);
            }
        }

        public void Draw(Sheet sheet, IReadOnlyList<Column> columns, double[] widths)
        {
            // Cells of different sizes stand on one baseline.
            var ascent = columns.Max(column => column.Set.Ascent);
            var top = sheet.Y + Above + Padding;
            ForEach(sheet, widths, (i, x) =>
            {
                var lettering = Of(columns[i], Strong);
                if (columns[i].Ticked && First)
                    sheet.TickBox(x, top + ascent, columns.MaxBy(column => column.Set.Size)!.Set);
                else if (columns[i].Written && Last && Cells[i].All(line => line.Length == 0))
                    sheet.Canvas.Line(x, sheet.Y + Height - WriteAbove, x + widths[i], sheet.Y + Height - WriteAbove, 0.9);
                else
                    Cell(sheet, columns[i], Cells[i], lettering, x, widths[i], top + ascent - lettering.Ascent);
            });
            sheet.Y += Height;
            if (Last && !columns.All(column => column.Written))
                sheet.Canvas.Line(sheet.Left, sheet.Y, sheet.Right, sheet.Y, 0.5, 0.6);
        }

        private static Lettering Of(Column column, bool strong) => strong ? column.Set with { Bold = true } : column.Set;
    }
}
