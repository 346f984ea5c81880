using ProcessorDesk.Paper.Drawing;

namespace ProcessorDesk.Paper;

/// <summary>What the 4 × 6 in tickets share: NOT FOR SALE up the left side, the code at the foot, one page a ticket.</summary>
internal sealed class TicketFrame
{
    private const double Margin = 14;
    private const double Strip = 58;
    private const double Left = Margin + Strip + 12;

    // 1.25 mm a module, 10 dots of a 203 dpi label printer.
    private const double CodeSide = QrCode.ModulesOfTicketCode * 1.25 / 25.4 * 72;

    private TicketFrame(Canvas canvas) => Canvas = canvas;

    public Canvas Canvas { get; }

    public double Width => Canvas.Size.Width - Margin - Left;

    public double Y { get; set; } = Margin;

    public static byte[] Draw<T>(string title, IReadOnlyList<T> tickets, Action<TicketFrame, T> draw)
    {
        if (tickets.Count == 0)
            throw new ArgumentException("There is no ticket to print.", nameof(tickets));
        using var canvas = new Canvas(title, PageSize.Ticket);
        foreach (var ticket in tickets)
        {
            canvas.NewPage();
            var frame = new TicketFrame(canvas);
            frame.NotForSale();
            draw(frame, ticket);
        }

        return canvas.Save();
    }

    /// <summary>A label and a value that takes at most so many lines, as large as fits.</summary>
    public void Value(string label, string value, double largest, double smallest, int lines = 1)
    {
        if (value.Length == 0)
            return;
        if (label.Length > 0)
        {
            Canvas.Text(label, Lettering.Label, Left, Y + Lettering.Label.Ascent);
            Y += Lettering.Label.LineHeight;
        }

        Y += Large(value, Left, Width, largest, smallest, lines) + 4;
    }

    /// <summary>Two facts side by side.</summary>
    public void Pair(Fact first, Fact second, double largest, double smallest)
    {
        var half = (Width - 10) / 2;
        Canvas.Text(first.Label, Lettering.Label, Left, Y + Lettering.Label.Ascent);
        Canvas.Text(second.Label, Lettering.Label, Left + half + 10, Y + Lettering.Label.Ascent);
        Y += Lettering.Label.LineHeight;
        Y += Math.Max(
            Large(first.Value, Left, half, largest, smallest, 2),
            Large(second.Value, Left + half + 10, half, largest, smallest, 2)) + 4;
    }

    public void Rule()
    {
        Canvas.Line(Left, Y + 1, Left + Width, Y + 1);
        Y += 6;
    }

    /// <summary>Holds in the room above the code; what does not fit is counted, never dropped in silence.</summary>
    public void Holds(IReadOnlyList<HoldNotice> holds)
    {
        for (var i = 0; i < holds.Count; i++)
        {
            var height = Marks.Hold(Canvas, holds[i], Left, Y, Width, 11, draw: false);
            var room = FootTop - Y - (i < holds.Count - 1 ? 14 : 0);
            if (height > room)
            {
                var more = i == 0 ? $"HOLD: {holds[0].Reason}" : $"and {holds.Count - i} more on hold: see the job";
                Canvas.Text(Canvas.Shorten(more, Lettering.Strong, Width), Lettering.Strong, Left, Y + Lettering.Strong.Ascent);
                return;
            }

            Y += Marks.Hold(Canvas, holds[i], Left, Y, Width, 11) + 4;
        }
    }

    /// <summary>The code at the foot, and beside it what else must be found by hand.</summary>
    public void Foot(string code, IReadOnlyList<Fact> beside)
    {
        var x = Left - 6;
        QrCode.Draw(Canvas, code, x, FootTop, CodeSide);
        var (right, room) = (x + CodeSide + 2, Canvas.Size.Width - Margin - x - CodeSide - 2);
        var y = FootTop + 8;
        var lettering = Canvas.Fit(code, room, 1, new Lettering(24, Bold: true), 9);
        Canvas.Text(code, lettering, right, y + lettering.Ascent);
        y += lettering.LineHeight + 4;
        foreach (var fact in beside.Where(fact => fact.Value.Length > 0))
        {
            Canvas.Text(fact.Label, Lettering.Label, right, y + Lettering.Label.Ascent);
            y += fact.Label.Length > 0 ? Lettering.Label.LineHeight : 0;
            var value = Canvas.Fit(fact.Value, room, 1, new Lettering(11, Bold: true), 8);
            Canvas.Text(Canvas.Shorten(fact.Value, value, room), value, right, y + value.Ascent);
            y += value.LineHeight + 2;
        }
    }

    private double FootTop => Canvas.Size.Height - Margin - CodeSide + 6;

    private double Large(string value, double x, double width, double largest, double smallest, int lines)
    {
        var lettering = Canvas.Fit(value, width, lines, new Lettering(largest, Bold: true), smallest);
        var wrapped = Canvas.Wrap(value, lettering, width);
        if (wrapped.Count > lines)
            wrapped = [.. wrapped.Take(lines - 1), Canvas.Shorten(string.Join(' ', wrapped.Skip(lines - 1)), lettering, width)];
        return Canvas.Lines(wrapped, lettering, x, Y);
    }

    private void NotForSale()
    {
        var height = Canvas.Size.Height - 2 * Margin;
        var lettering = Canvas.Fit(Marks.NotForSale, height, 1, new Lettering(60, Bold: true), Lettering.OfCapHeight(Marks.LeastCapHeight).Size);
        var length = Canvas.Measure(Marks.NotForSale, lettering);
        var baseline = Margin + (Strip + lettering.CapHeight) / 2;
        Canvas.TextUpwards(Marks.NotForSale, lettering, baseline, Canvas.Size.Height - Margin - (height - length) / 2);
        Canvas.Line(Margin + Strip, Margin, Margin + Strip, Canvas.Size.Height - Margin, 2);
    }
}
