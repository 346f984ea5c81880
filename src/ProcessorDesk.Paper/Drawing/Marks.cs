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

    /// <summary>A black bar across the sheet for an order that the pig may not touch.</summary>
    public static void NoPork(Sheet sheet)
    {
        sheet.Need(34);
        sheet.Canvas.Fill(new Box(sheet.Left, sheet.Y, sheet.Width, 30));
        sheet.Canvas.Text("NO PORK: no pork fat, casings or gelatin", new Lettering(17, Bold: true, Grey: 1), sheet.Left + 10, sheet.Y + 21);
        sheet.Space(36);
    }

    /// <summary>The symbol with the code in text below it, centred; the square holds its own quiet zone.</summary>
    public static void Code(Canvas canvas, string code, double x, double y, double side, double textSize)
    {
        QrCode.Draw(canvas, code, x, y, side);
        // No wider than the symbol without its quiet zone.
        var lettering = canvas.Fit(code, side * (QrCode.ModulesOfTicketCode - 8) / QrCode.ModulesOfTicketCode, 1, new Lettering(textSize, Bold: true), 6);
        canvas.Text(code, lettering, x + (side - canvas.Measure(code, lettering)) / 2, y + side + lettering.CapHeight + 1);
    }

    /// <summary>Cautions two by two, each with a bar at its left, its heading and its source.</summary>
    public static void Cautions(Sheet sheet, IReadOnlyList<Caution> cautions, double size)
    {
        foreach (var pair in cautions.Chunk(2))
        {
            var height = pair.Max(caution => Caution(sheet.Canvas, caution, 0, 0, (sheet.Width - 24) / 2, size, draw: false));
            sheet.SideBySide(height, [.. pair.Select(caution => (0.5, (Action)(() =>
                sheet.Y += Caution(sheet.Canvas, caution, sheet.Left, sheet.Y, sheet.Width, size))))]);
            sheet.Space(7);
        }
    }

    private static double Caution(Canvas canvas, Caution caution, double x, double y, double width, double size, bool draw = true)
    {
        (string Text, Lettering Lettering)[] parts =
        [
            (caution.Heading, new Lettering(size + 1, Bold: true)), (caution.Text, new Lettering(size)),
            (caution.Source.Length > 0 ? "Source: " + caution.Source : "", new Lettering(7.5, Grey: 0.3)),
        ];
        var height = 0.0;
        foreach (var (text, lettering) in parts.Where(part => part.Text.Length > 0))
        {
            var lines = canvas.Wrap(text, lettering, width - 12);
            height += draw ? canvas.Lines(lines, lettering, x + 12, y + height) : lines.Count * lettering.LineHeight;
        }

        if (draw)
            canvas.Fill(new Box(x, y + 2, 4, height - 2));
        return height;
    }
}
