using ProcessorDesk.Paper.Drawing;

namespace ProcessorDesk.Paper;

/// <summary>The box label on 4 × 2 in: NOT FOR SALE across the top, the code at the right, the contents in what the rest leaves.</summary>
internal static class WideBoxLabel
{
    private const double Margin = 10;

    // 3/8 in and a dot of a 203 dpi label printer more.
    private const double CapHeight = Marks.LeastCapHeight + 0.4;

    // 0.625 mm a module: five dots of a 203 dpi label printer.
    private const double CodeSide = QrCode.ModulesOfTicketCode * 0.625 / 25.4 * 72;
    private const double Quiet = CodeSide * 4 / QrCode.ModulesOfTicketCode;

    private static readonly double Right = PageSize.Strip.Width - Margin;
    private static readonly double Room = PageSize.Strip.Width - 2 * Margin - CodeSide + Quiet - 6;
    private static readonly Lettering Fine = new(8);
    private static readonly Lettering FineBold = new(9, Bold: true);

    public static void Draw(Canvas canvas, BoxLabel label)
    {
        var top = NotForSale(canvas);
        Code(canvas, label, top);
        var bottom = Words(canvas, label);
        if (label.Owner.Length > 0)
        {
            var owner = canvas.Fit(label.Owner, Room, 1, FineBold, 6.5);
            bottom -= owner.LineHeight;
            canvas.Text(canvas.Shorten(label.Owner, owner, Room), owner, Margin, bottom + owner.Ascent);
        }

        bottom -= Fine.LineHeight;
        Pair(canvas, "Packed " + PrintedDate.Of(label.Packed), Fine, label.Place, FineBold, bottom);
        var large = new Lettering(17, Bold: true);
        bottom -= large.LineHeight - 2;
        Pair(canvas, label.NetWeight, large, BoxLabel.KeepFrozen, new Lettering(11, Bold: true), bottom);
        ContentLines.Draw(canvas, label.Contents, new Box(Margin, top + 3, Room, bottom - top - 3), 13, 7);
    }

    /// <summary>Across the whole width, the words as far apart as it allows; returns where the rest begins.</summary>
    private static double NotForSale(Canvas canvas)
    {
        var lettering = Lettering.OfCapHeight(CapHeight);
        var words = Marks.NotForSale.Split(' ');
        var gap = (Right - Margin - words.Sum(word => canvas.Measure(word, lettering))) / (words.Length - 1);
        var x = Margin;
        foreach (var word in words)
        {
            canvas.Text(word, lettering, x, Margin + CapHeight);
            x += canvas.Measure(word, lettering) + gap;
        }

        var line = Margin + CapHeight + 4;
        canvas.Line(Margin, line, Right, line, 1.5);
        return line + 1;
    }

    private static void Code(Canvas canvas, BoxLabel label, double top)
    {
        var x = Right - CodeSide + Quiet;
        QrCode.Draw(canvas, label.Code, x, top, CodeSide);
        var y = top + CodeSide;
        foreach (var (text, largest) in new[] { (label.Code, 11.5), ("Box " + label.Box, 8.5), ("Job " + label.JobNumber, 8.5) })
        {
            var lettering = canvas.Fit(text, CodeSide - Quiet, 1, new Lettering(largest, Bold: true), 5.5);
            canvas.Text(canvas.Shorten(text, lettering, CodeSide - Quiet), lettering, Right - canvas.Measure(text, lettering), y + lettering.CapHeight);
            y += lettering.CapHeight + 3.2;
        }
    }

    /// <summary>What it is and whose shop it came from, along the foot; returns where it begins.</summary>
    private static double Words(Canvas canvas, BoxLabel label)
    {
        var words = canvas.Fit(BoxLabel.Words, Room, 1, Fine, 6.5);
        var baseline = PageSize.Strip.Height - Margin;
        canvas.Text(canvas.Shorten(label.ShopName, Lettering.Label, Right - Margin), Lettering.Label, Margin, baseline);
        canvas.Text(BoxLabel.Words, words, Margin, baseline - 9.5);
        return baseline - 9.5 - words.Ascent - 1;
    }

    /// <summary>One thing at the left of the room, another at its right; either is shortened where both find no room.</summary>
    private static void Pair(Canvas canvas, string left, Lettering leftSet, string right, Lettering rightSet, double top)
    {
        var baseline = top + leftSet.Ascent;
        left = canvas.Shorten(left, leftSet, Room * 0.6);
        canvas.Text(left, leftSet, Margin, baseline);
        var room = Room - canvas.Measure(left, leftSet) - 8;
        var lettering = canvas.Fit(right, room, 1, rightSet, 6.5);
        var shortened = canvas.Shorten(right, lettering, room);
        canvas.TextEndingAt(shortened, lettering, Margin + Room, baseline);
    }
}
