namespace ProcessorDesk.Paper.Drawing;

/// <summary>The marks that look alike on every paper: the hold, the code, the words that must stand on custom-exempt meat.</summary>
internal static class Marks
{
    public const string NotForSale = "NOT FOR SALE";

    /// <summary>The least height of the letters: 3/8 in (9 CFR 316.16), in points.</summary>
    public const double LeastCapHeight = 27;

    private const double HatchWidth = 26;

    /// <summary>A hold: hatched at the left, framed, in words. Returns the height it took or, undrawn, would take.</summary>
    public static double Hold(Canvas canvas, HoldNotice hold, double x, double y, double width, double size, bool draw = true)
    {
        var strong = new Lettering(size, Bold: true);
        var plain = new Lettering(size * 0.8);
        var room = width - HatchWidth - 14;
        var reason = canvas.Wrap("HOLD: " + hold.Reason, strong, room);
        var words = canvas.Wrap(hold.Words, plain, room);
        var height = 10 + reason.Count * strong.LineHeight + words.Count * plain.LineHeight;
        if (!draw)
            return height;
        canvas.Hatch(new Box(x, y, HatchWidth, height), 6, 1.6);
        canvas.Frame(new Box(x, y, width, height), 1.5);
        canvas.Line(x + HatchWidth, y, x + HatchWidth, y + height, 1.5);
        var top = y + 5 + canvas.Lines(reason, strong, x + HatchWidth + 7, y + 5);
        canvas.Lines(words, plain, x + HatchWidth + 7, top);
        return height;
    }

    /// <summary>The holds of a paper, one below the other, at the sheet's cursor.</summary>
    public static void Holds(Sheet sheet, IReadOnlyList<HoldNotice> holds, double size = 13)
    {
        foreach (var hold in holds)
        {
            sheet.Need(Hold(sheet.Canvas, hold, sheet.Left, sheet.Y, sheet.Width, size, draw: false));
            sheet.Y += Hold(sheet.Canvas, hold, sheet.Left, sheet.Y, sheet.Width, size) + 6;
        }
    }

    /// <summary>The symbol with the code in text below it, centred; the square holds its own quiet zone.</summary>
    public static void Code(Canvas canvas, string code, double x, double y, double side, double textSize)
    {
        QrCode.Draw(canvas, code, x, y, side);
        var lettering = new Lettering(textSize, Bold: true);
        canvas.Text(code, lettering, x + (side - canvas.Measure(code, lettering)) / 2, y + side + lettering.CapHeight + 1);
    }

    /// <summary>Cautions, each with its heading and source.</summary>
    public static void Cautions(Sheet sheet, IReadOnlyList<Caution> cautions, double size = 10)
    {
        foreach (var caution in cautions)
        {
            sheet.Need(3 * size * 1.36);
            var top = sheet.Y;
            var page = sheet.Canvas.PageCount;
            sheet.Paragraph(caution.Heading, new Lettering(size + 1, Bold: true), 12);
            sheet.Paragraph(caution.Text, new Lettering(size), 12);
            if (caution.Source.Length > 0)
                sheet.Paragraph("Source: " + caution.Source, Lettering.Label, 12);
            if (page == sheet.Canvas.PageCount)
                sheet.Canvas.Fill(new Box(sheet.Left, top + 2, 4, sheet.Y - top - 2));
            sheet.Space(6);
        }
    }
}
