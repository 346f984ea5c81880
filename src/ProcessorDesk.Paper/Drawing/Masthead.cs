namespace ProcessorDesk.Paper.Drawing;

/// <summary>The head of a paper: the shop at the left, what the paper is at the right or below, a thick rule.</summary>
internal static class Masthead
{
    /// <summary>With the title and its facts at the right.</summary>
    public static void Draw(Sheet sheet, ShopHeader shop, string title, IReadOnlyList<string> below)
    {
        var half = sheet.Width / 2 - 10;
        var bottom = Shop(sheet, shop, half);
        var large = sheet.Canvas.Fit(title, half, 2, new Lettering(26, Bold: true), 14);
        var y = sheet.Y;
        foreach (var line in sheet.Canvas.Wrap(title, large, half))
        {
            sheet.Canvas.TextEndingAt(line, large, sheet.Right, y + large.Ascent);
            y += large.LineHeight;
        }

        foreach (var line in below.SelectMany(text => sheet.Canvas.Wrap(text, Lettering.Body, half)))
        {
            sheet.Canvas.TextEndingAt(line, Lettering.Body, sheet.Right, y + Lettering.Body.Ascent);
            y += Lettering.Body.LineHeight;
        }

        Close(sheet, Math.Max(y, bottom));
    }

    /// <summary>With the code at the right and the title under the shop.</summary>
    public static void DrawWithCode(Sheet sheet, ShopHeader shop, string title, string code, double side)
    {
        var room = sheet.Width - side - 12;
        var large = new Lettering(22, Bold: true);
        var top = sheet.Y;
        var y = sheet.Canvas.Lines(sheet.Canvas.Wrap(title, large, room), large, sheet.Left, top) + top + 4;
        sheet.Y = y;
        y = Shop(sheet, shop, room);
        // The quiet zone may reach into the margin, so that the symbol stands flush with the rule.
        var quiet = side * 4 / QrCode.ModulesOfTicketCode;
        Marks.Code(sheet.Canvas, code, sheet.Right - side + quiet, top - quiet, side, 13);
        Close(sheet, Math.Max(y, top - quiet + side + 14));
    }

    private static double Shop(Sheet sheet, ShopHeader shop, double width)
    {
        var name = sheet.Canvas.Fit(shop.Name, width, 2, new Lettering(14, Bold: true), 10);
        var y = sheet.Y + sheet.Canvas.Lines(sheet.Canvas.Wrap(shop.Name, name, width), name, sheet.Left, sheet.Y);
        foreach (var line in shop.Lines)
            y += sheet.Canvas.Lines(sheet.Canvas.Wrap(line, Lettering.Small, width), Lettering.Small, sheet.Left, y);
        return y;
    }

    private static void Close(Sheet sheet, double bottom)
    {
        sheet.Y = bottom + 6;
        sheet.Canvas.Fill(new Box(sheet.Left, sheet.Y, sheet.Width, 2.25));
        sheet.Space(11);
    }
}
