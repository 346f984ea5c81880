namespace ProcessorDesk.Paper.Drawing;

/// <summary>A flow of pages for one paper: a cursor that moves down in points, and a new page when what comes next does not fit.</summary>
internal sealed class Sheet
{
    private readonly double _margin;
    private readonly string _running;
    private readonly int _firstPage;
    private (double X, double Width)? _column;

    /// <param name="canvas">Where to draw; a sheet starts on a page of its own.</param>
    /// <param name="margin">On all four sides; the foot line stands at its lower edge.</param>
    /// <param name="running">What the paper is, for the head of its further pages and its foot line.</param>
    public Sheet(Canvas canvas, double margin, string running)
    {
        (Canvas, _margin, _running, _firstPage) = (canvas, margin, running, canvas.PageCount);
        NewPage();
    }

    public Canvas Canvas { get; }

    /// <summary>The cursor, in points from the top of the page.</summary>
    public double Y { get; set; }

    public double Left => _column?.X ?? _margin;

    public double Width => _column?.Width ?? Canvas.Size.Width - 2 * _margin;

    public double Right => Left + Width;

    private double Top => _margin + (Canvas.PageCount - _firstPage > 1 ? 26 : 0);

    /// <summary>Where content ends; the foot line stands below.</summary>
    public double Bottom => Canvas.Size.Height - _margin - 14;

    /// <summary>The tallest thing a further page can hold.</summary>
    public double PageHeight => Bottom - _margin - 26;

    /// <summary>Starts a new page unless so many points are left on this one. True if it did.</summary>
    public bool Need(double height)
    {
        if (Y + height <= Bottom)
            return false;
        NewPage();
        return true;
    }

    /// <summary>Goes to a new page even where there is room.</summary>
    public void NewPage()
    {
        Canvas.NewPage();
        Y = Top;
        if (Canvas.PageCount - _firstPage == 1)
            return;
        const string continued = ", continued";
        var running = Canvas.Shorten(_running, Lettering.Small, Width - Canvas.Measure(continued, Lettering.Small));
        Canvas.Text(running + continued, Lettering.Small, Left, _margin + 10);
        Canvas.Line(Left, _margin + 16, Right, _margin + 16);
    }

    public void Space(double height) => Y += height;

    /// <summary>Draws side by side, by shares of the width, what together is no higher than the height; the cursor ends below the highest.</summary>
    public void SideBySide(double height, params (double Share, Action Draw)[] columns)
    {
        const double gap = 24;
        Need(height);
        var (top, bottom, left) = (Y, Y, Left);
        var room = Width - gap * (columns.Length - 1);
        foreach (var (share, draw) in columns)
        {
            _column = (left, room * share);
            draw();
            (bottom, left, Y) = (Math.Max(bottom, Y), left + room * share + gap, top);
        }

        (_column, Y) = (null, bottom);
    }

    /// <summary>Wrapped text over the width; a short one stays whole, a long one may go on on the next page.</summary>
    public void Paragraph(string text, Lettering lettering, double indent = 0, double? width = null)
    {
        var lines = Canvas.Wrap(text, lettering, width ?? Width - indent);
        if (lines.Count <= 5)
            Need(lines.Count * lettering.LineHeight);
        foreach (var line in lines)
        {
            Need(lettering.LineHeight);
            Canvas.Text(line, lettering, Left + indent, Y + lettering.Ascent);
            Y += lettering.LineHeight;
        }
    }

    /// <summary>A heading on a rule; it takes at least so much of what follows along to the next page.</summary>
    public void Heading(string text, double follows = 40)
    {
        var lettering = new Lettering(12, Bold: true);
        Need(lettering.LineHeight + 16 + follows);
        Space(9);
        Canvas.Text(text, lettering, Left, Y + lettering.Ascent);
        Y += lettering.LineHeight + 1;
        Canvas.Line(Left, Y, Right, Y, 1.25);
        Space(5);
    }

    /// <summary>Facts in columns: a small label and its value below.</summary>
    public void Facts(IReadOnlyList<Fact> facts, int columns, Lettering? value = null)
    {
        var lettering = value ?? Lettering.Strong;
        var width = (Width - (columns - 1) * 14) / columns;
        foreach (var row in facts.Chunk(columns))
        {
            var cells = row.Select(fact => Canvas.Wrap(fact.Value, lettering, width)).ToList();
            var height = Lettering.Label.LineHeight + cells.Max(cell => cell.Count) * lettering.LineHeight + 4;
            Need(height);
            for (var i = 0; i < row.Length; i++)
            {
                var x = Left + i * (width + 14);
                Canvas.Text(Canvas.Shorten(row[i].Label, Lettering.Label, width), Lettering.Label, x, Y + Lettering.Label.Ascent);
                Canvas.Lines(cells[i], lettering, x, Y + Lettering.Label.LineHeight);
            }

            Y += height;
        }
    }

    /// <summary>An empty box to tick, with its text beside it.</summary>
    public void Tick(string text, Lettering lettering, double indent = 0, double? width = null)
    {
        var side = lettering.Size * 1.05;
        var lines = Canvas.Wrap(text, lettering, (width ?? Width - indent) - side - 8);
        var height = lines.Count * lettering.LineHeight + 3;
        Need(height);
        TickBox(Left + indent, Y + lettering.Ascent, lettering);
        Canvas.Lines(lines, lettering, Left + indent + side + 8, Y);
        Y += height;
    }

    /// <summary>The box alone, standing on a baseline.</summary>
    public void TickBox(double x, double baseline, Lettering lettering)
    {
        var side = lettering.Size * 1.05;
        Canvas.Frame(new Box(x, baseline - (side + lettering.CapHeight) / 2, side, side), 1.1);
    }

    /// <summary>Draws the foot lines; the last thing done to a sheet.</summary>
    public void Finish()
    {
        var (last, count) = (Canvas.PageCount, Canvas.PageCount - _firstPage);
        for (var page = _firstPage; page < last; page++)
        {
            Canvas.GoTo(page);
            var baseline = Canvas.Size.Height - _margin;
            var number = $"Page {page - _firstPage + 1} of {count}";
            var room = Width - Canvas.Measure(number, Lettering.Label) - 12;
            if (page == _firstPage)
                Canvas.Text(Canvas.Shorten(_running, Lettering.Label, room), Lettering.Label, Left, baseline);
            Canvas.TextEndingAt(number, Lettering.Label, Right, baseline);
        }
    }
}
