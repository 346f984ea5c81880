using ProcessorDesk.Paper.Drawing;

namespace ProcessorDesk.Paper;

/// <summary>The plan of the 4 × 6 in tickets: NOT FOR SALE up the left side, holds first, facts as large as fits, the code at the foot.</summary>
internal static class TicketFrame
{
    private const double Margin = 14;
    private const double Strip = 58;
    private const double Tight = 0.3;

    /// <summary>Where what stands beside the strip begins, in points.</summary>
    public const double Left = Margin + Strip + 12;

    // 1.25 mm a module: ten dots of a 203 dpi label printer.
    private const double CodeSide = QrCode.ModulesOfTicketCode * 1.25 / 25.4 * 72;

    /// <summary>Width of what stands beside the strip, in points.</summary>
    public static double Width { get; } = PageSize.Ticket.Width - Margin - Left;

    /// <summary>Where the code at the foot begins; what is above ends here.</summary>
    public static double FootTop { get; } = PageSize.Ticket.Height - Margin - CodeSide + 6;

    public static byte[] Draw<T>(string title, IReadOnlyList<T> tickets, Action<Canvas, T> draw)
    {
        if (tickets.Count == 0)
            throw new ArgumentException("There is no ticket to print.", nameof(tickets));
        using var canvas = new Canvas(title, PageSize.Ticket);
        foreach (var ticket in tickets)
        {
            canvas.NewPage();
            NotForSale(canvas);
            draw(canvas, ticket);
        }

        return canvas.Save();
    }

    /// <summary>The words that must stand on custom-exempt meat, up the left side.</summary>
    public static void NotForSale(Canvas canvas)
    {
        var height = canvas.Size.Height - 2 * Margin;
        var lettering = canvas.Fit(Marks.NotForSale, height, 1, new Lettering(60, Bold: true), Lettering.OfCapHeight(Marks.LeastCapHeight).Size);
        var length = canvas.Measure(Marks.NotForSale, lettering);
        var baseline = Margin + (Strip + lettering.CapHeight) / 2;
        canvas.TextUpwards(Marks.NotForSale, lettering, baseline, canvas.Size.Height - Margin - (height - length) / 2);
        canvas.Line(Margin + Strip, Margin, Margin + Strip, canvas.Size.Height - Margin, 2);
    }

    /// <summary>Everything beside the strip.</summary>
    public static void Fill(Canvas canvas, string shopName, IReadOnlyList<HoldNotice> holds, IReadOnlyList<TicketBlock> blocks)
    {
        var top = Shop(canvas, shopName);
        var given = blocks.Where(block => block.Value.Length > 0).ToList();
        var (holdHeight, scale) = Plan(canvas, holds, given, top);
        Holds(canvas, holds, top, holdHeight);
        top += Holds(canvas, holds, top, holdHeight, draw: false);
        foreach (var block in given)
            top += Block(canvas, block, scale, top);
    }

    /// <summary>The shop's name; returns where the rest begins.</summary>
    public static double Shop(Canvas canvas, string shopName)
    {
        canvas.Text(canvas.Shorten(shopName, Lettering.Label, Width), Lettering.Label, Left, Margin + Lettering.Label.Ascent);
        return Margin + Lettering.Label.LineHeight + 3;
    }

    /// <summary>The code, in a symbol and in text, the job number and a day.</summary>
    public static void Foot(Canvas canvas, string code, string number, string dayLabel, DateOnly day, string numberLabel = "Job")
    {
        const double x = Left - 6, right = x + CodeSide + 2;
        QrCode.Draw(canvas, code, x, FootTop, CodeSide);
        var room = canvas.Size.Width - Margin - right;
        var y = FootTop + 8;
        foreach (var (label, value, largest) in new[] { ("", code, 24.0), (numberLabel, number, 20), (dayLabel, PrintedDate.Of(day), 10.5) })
        {
            if (label.Length > 0)
            {
                canvas.Text(label, Lettering.Label, right, y + Lettering.Label.Ascent);
                y += Lettering.Label.LineHeight;
            }

            var lettering = canvas.Fit(value, room, 1, new Lettering(largest, Bold: true), 7);
            canvas.Text(canvas.Shorten(value, lettering, room), lettering, right, y + lettering.Ascent);
            y += lettering.LineHeight + 3;
        }
    }

    /// <summary>Holds get nearly half of the room, less where the facts need it; the facts are as large as what is left allows.</summary>
    private static (double HoldRoom, double Scale) Plan(Canvas canvas, IReadOnlyList<HoldNotice> holds, IReadOnlyList<TicketBlock> blocks, double top)
    {
        double[] shares = holds.Count == 0 ? [0] : [0.45, 0.36, 0.28];
        foreach (var holdRoom in shares.Select(share => share * (FootTop - top)))
        {
            var room = FootTop - top - Holds(canvas, holds, top, holdRoom, draw: false);
            for (var scale = 1.0; scale > Tight; scale -= 0.05)
                if (blocks.Sum(block => Block(canvas, block, scale, top, draw: false)) <= room)
                    return (holdRoom, scale);
        }

        return (shares[^1] * (FootTop - top), Tight);
    }

    private static double Block(Canvas canvas, TicketBlock block, double scale, double top, bool draw = true)
    {
        var largest = new Lettering(Math.Max(block.Smallest, block.Largest * scale), Bold: true);
        var lines = block.Lines;
        var lettering = canvas.Fit(block.Value, Width, lines, largest, Math.Clamp(16, block.Smallest, largest.Size));
        if (canvas.Wrap(block.Value, lettering, Width).Count > lines && scale > Tight)
            lettering = canvas.Fit(block.Value, Width, ++lines, lettering, block.Smallest);
        else if (scale <= Tight)
            lettering = lettering with { Size = block.Smallest };
        var wrapped = canvas.Wrap(block.Value, lettering, Width);
        if (wrapped.Count > lines)
            wrapped = [.. wrapped.Take(lines - 1), canvas.Shorten(string.Join(' ', wrapped.Skip(lines - 1)), lettering, Width)];

        var label = block.Label.Length > 0 ? Lettering.Label.LineHeight : 0;
        var height = label + wrapped.Count * lettering.LineHeight + (block.Ruled ? 9 : 4);
        if (!draw)
            return height;
        canvas.Text(canvas.Shorten(block.Label, Lettering.Label, Width), Lettering.Label, Left, top + Lettering.Label.Ascent);
        canvas.Lines(wrapped, lettering, Left, top + label);
        if (block.Ruled)
            canvas.Line(Left, top + height - 4, Left + Width, top + height - 4);
        return height;
    }

    /// <summary>Holds as large as the room allows; what does not fit is counted, never dropped in silence.</summary>
    private static double Holds(Canvas canvas, IReadOnlyList<HoldNotice> holds, double top, double room, bool draw = true)
    {
        const double largest = 15, smallest = 9.5, gap = 5;
        double Height(HoldNotice hold, double size) => Marks.Hold(canvas, hold, Left, top, Width, size, draw: false) + gap;
        var size = largest;
        while (size > smallest && holds.Sum(hold => Height(hold, size)) > room)
            size -= 0.5;
        var all = holds.Sum(hold => Height(hold, size)) <= room;
        var y = top;
        for (var i = 0; i < holds.Count; i++)
        {
            var hold = holds[i];
            var after = all || i == holds.Count - 1 ? 0 : Lettering.Strong.LineHeight;
            var fits = y - top + Height(hold, size) + after <= room;
            // The first always stands in its box, in its reason alone where its words are too many.
            if (i == 0 && !fits)
                hold = new HoldNotice(canvas.Shorten(hold.Reason, new Lettering(size, Bold: true), Width - 90), "See the job.");
            if (i > 0 && !fits)
            {
                if (draw)
                    canvas.Text($"and {holds.Count - i} more on hold: see the job", Lettering.Strong, Left, y + Lettering.Strong.Ascent);
                return y - top + Lettering.Strong.LineHeight + gap;
            }

            y += Marks.Hold(canvas, hold, Left, y, Width, size, draw) + gap;
        }

        return y - top;
    }
}
