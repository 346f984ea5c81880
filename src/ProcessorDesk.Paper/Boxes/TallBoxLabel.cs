using ProcessorDesk.Paper.Drawing;

namespace ProcessorDesk.Paper;

/// <summary>The box label on 4 × 6 in, on the plan of the tickets; the contents take what the rest leaves.</summary>
internal static class TallBoxLabel
{
    private static readonly Lettering Words = new(9);
    private static readonly Lettering Cold = new(15, Bold: true);

    public static void Draw(Canvas canvas, BoxLabel label)
    {
        TicketFrame.NotForSale(canvas);
        TicketFrame.Foot(canvas, label.Code, label.JobNumber, "Packed", label.Packed);
        var top = TicketFrame.Shop(canvas, label.ShopName);
        top += Line(canvas, "", "Box " + label.Box, new Lettering(36, Bold: true), 14, top);
        canvas.Line(TicketFrame.Left, top, TicketFrame.Left + TicketFrame.Width, top, 1.5);
        top += 5;

        var bottom = TicketFrame.FootTop - 6;
        var words = canvas.Wrap(BoxLabel.Words, Words, TicketFrame.Width);
        bottom -= words.Count * Words.LineHeight;
        canvas.Lines(words, Words, TicketFrame.Left, bottom);
        bottom -= Cold.LineHeight;
        canvas.Text(BoxLabel.KeepFrozen, Cold, TicketFrame.Left, bottom + Cold.Ascent);
        bottom -= 4;
        canvas.Line(TicketFrame.Left, bottom, TicketFrame.Left + TicketFrame.Width, bottom);
        bottom = Above(canvas, "Place", label.Place, new Lettering(17, Bold: true), 8, bottom - 3);
        bottom = Above(canvas, "Owner", label.Owner, new Lettering(15, Bold: true), 8, bottom);
        bottom = Above(canvas, "Net weight", label.NetWeight, new Lettering(34, Bold: true), 14, bottom);
        ContentLines.Draw(canvas, label.Contents, new Box(TicketFrame.Left, top, TicketFrame.Width, bottom - top - 4), 17, 8.5);
    }

    /// <summary>A label and its value in at most two lines; returns where it begins.</summary>
    private static double Above(Canvas canvas, string label, string value, Lettering largest, double smallest, double bottom)
    {
        if (value.Length == 0)
            return bottom;
        var top = bottom - Line(canvas, label, value, largest, smallest, 0, draw: false);
        Line(canvas, label, value, largest, smallest, top);
        return top;
    }

    private static double Line(Canvas canvas, string label, string value, Lettering largest, double smallest, double top, bool draw = true)
    {
        // One line while it is still large, two before it gets small.
        var lettering = canvas.Fit(value, TicketFrame.Width, 1, largest, Math.Min(largest.Size, 13));
        lettering = canvas.Fit(value, TicketFrame.Width, 2, lettering, smallest);
        var lines = canvas.Wrap(value, lettering, TicketFrame.Width);
        if (lines.Count > 2)
            lines = [lines[0], canvas.Shorten(string.Join(' ', lines.Skip(1)), lettering, TicketFrame.Width)];
        var below = label.Length > 0 ? Lettering.Label.LineHeight : 0;
        if (draw)
        {
            canvas.Text(label, Lettering.Label, TicketFrame.Left, top + Lettering.Label.Ascent);
            canvas.Lines(lines, lettering, TicketFrame.Left, top + below);
        }

        return below + lines.Count * lettering.LineHeight + 3;
    }
}
