using ProcessorDesk.Paper.Drawing;

namespace ProcessorDesk.Paper;

/// <summary>Empty boxes for lug numbers and weights, to be written with a wet hand; at most so many, and no more than the page bears.</summary>
internal static class LugBoxes
{
    private const int Columns = 4;
    private const double Gap = 7;
    private const double Height = 44;

    public static void Draw(Sheet sheet, int count)
    {
        if (count <= 0)
            return;
        sheet.Heading("Lugs", Height);
        var width = (sheet.Width - (Columns - 1) * Gap) / Columns;
        // As many rows as the page still bears: more lugs are written on the back rather than on a page of empty boxes.
        var rows = Math.Max(1, (int)((sheet.Bottom - sheet.Y) / (Height + Gap)));
        for (var i = 0; i < Math.Min(count, rows * Columns); i++)
        {
            if (i % Columns == 0)
                sheet.Need(Height + Gap);
            One(sheet, new Box(sheet.Left + i % Columns * (width + Gap), sheet.Y, width, Height));
            if (i % Columns == Columns - 1 || i == count - 1)
                sheet.Space(Height + Gap);
        }
    }

    private static void One(Sheet sheet, Box box)
    {
        sheet.Canvas.Frame(box, 1);
        var split = box.X + box.Width * 0.32;
        sheet.Canvas.Line(split, box.Y, split, box.Bottom, 0.5, 0.5);
        sheet.Canvas.Text("Lug", Lettering.Label, box.X + 4, box.Y + 10);
        sheet.Canvas.Text("Gross", Lettering.Label, split + 4, box.Y + 10);
        sheet.Canvas.Line(split, box.Y + box.Height / 2, box.Right, box.Y + box.Height / 2, 0.5, 0.5);
        sheet.Canvas.Text("Net", Lettering.Label, split + 4, box.Y + box.Height / 2 + 10);
    }
}
