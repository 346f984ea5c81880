using System.Globalization;
using PdfSharp.Drawing;
using PdfSharp.Fonts;
using PdfSharp.Pdf;

namespace ProcessorDesk.Paper.Drawing;

/// <summary>Pages to draw on, in points from the top left. The only file that knows the PDF library.</summary>
internal sealed class Canvas : IDisposable
{
    private readonly PdfDocument _document = new();
    private readonly List<XGraphics> _pages = [];
    private XGraphics? _page;

    static Canvas() => GlobalFontSettings.FontResolver = new EmbeddedFonts();

    public Canvas(string title, PageSize size)
    {
        Size = size;
        _document.Info.Title = Printable.Text(title);
        _document.Info.Creator = "ProcessorDesk";
        _document.Language = "en-US";
        // Strict readers stumble over the library's compressed streams; the papers are small without.
        _document.Options.CompressContentStreams = false;
    }

    public PageSize Size { get; }

    public int PageCount => _pages.Count;

    private XGraphics Page => _page ?? throw new InvalidOperationException("There is no page yet.");

    public void NewPage()
    {
        var page = _document.AddPage();
        (page.Width, page.Height) = (XUnit.FromPoint(Size.Width), XUnit.FromPoint(Size.Height));
        _page = XGraphics.FromPdfPage(page);
        _pages.Add(_page);
    }

    /// <summary>Goes back to a page, counted from zero.</summary>
    public void GoTo(int page) => _page = _pages[page];

    /// <summary>Width in points of a text that is printable already or made so.</summary>
    public double Measure(string text, Lettering lettering) =>
        text.Length == 0 ? 0 : Page.MeasureString(Printable.Text(text), Font(lettering), XStringFormats.BaseLineLeft).Width;

    public void Text(string text, Lettering lettering, double x, double baseline)
    {
        if (text.Length > 0)
            Page.DrawString(Printable.Text(text), Font(lettering), Brush(lettering.Grey), x, baseline, XStringFormats.BaseLineLeft);
    }

    public void TextEndingAt(string text, Lettering lettering, double right, double baseline) =>
        Text(text, lettering, right - Measure(text, lettering), baseline);

    /// <summary>Text that reads upwards: it starts at the bottom and its baseline is the vertical line at x.</summary>
    public void TextUpwards(string text, Lettering lettering, double baselineX, double startY)
    {
        var state = Page.Save();
        Page.RotateAtTransform(-90, new XPoint(baselineX, startY));
        Text(text, lettering, baselineX, startY);
        Page.Restore(state);
    }

    public void Line(double x1, double y1, double x2, double y2, double thickness = 0.75, double grey = 0) =>
        Page.DrawLine(Pen(thickness, grey), x1, y1, x2, y2);

    public void Frame(Box box, double thickness = 0.75, double grey = 0) =>
        Page.DrawRectangle(Pen(thickness, grey), box.X, box.Y, box.Width, box.Height);

    /// <summary>Fills boxes as one path, so that no hair lines show between them.</summary>
    public void Fill(IEnumerable<Box> boxes, double grey = 0)
    {
        var path = new XGraphicsPath { FillMode = XFillMode.Winding };
        foreach (var box in boxes)
            path.AddRectangle(box.X, box.Y, box.Width, box.Height);
        Page.DrawPath(Brush(grey), path);
    }

    public void Fill(Box box, double grey = 0) => Fill([box], grey);

    public void Circle(double x, double y, double radius, double grey = 0) =>
        Page.DrawEllipse(Brush(grey), x - radius, y - radius, 2 * radius, 2 * radius);

    /// <summary>Hatches a box with rising lines.</summary>
    public void Hatch(Box box, double step = 5, double thickness = 0.9)
    {
        foreach (var (x1, y1, x2, y2) in Patterns.Hatch(box, step))
            Line(x1, y1, x2, y2, thickness);
    }

    /// <summary>Dots a box: the pattern of what was added.</summary>
    public void Dots(Box box, double step = 4, double radius = 0.9)
    {
        foreach (var (x, y) in Patterns.Dots(box, step))
            Circle(x, y, radius);
    }

    public byte[] Save()
    {
        foreach (var page in _pages)
            page.Dispose();
        using var stream = new MemoryStream();
        _document.Save(stream, closeStream: false);
        return stream.ToArray();
    }

    public void Dispose() => _document.Dispose();

    private static XFont Font(Lettering lettering) =>
        new(EmbeddedFonts.Family, lettering.Size, lettering.Bold ? XFontStyleEx.Bold : XFontStyleEx.Regular);

    private static XSolidBrush Brush(double grey) => new(XColor.FromGrayScale(grey));

    private static XPen Pen(double thickness, double grey) => new(XColor.FromGrayScale(grey), thickness);

    private sealed class EmbeddedFonts : IFontResolver
    {
        public const string Family = "Open Sans";

        public FontResolverInfo ResolveTypeface(string familyName, bool bold, bool italic) =>
            new(string.Create(CultureInfo.InvariantCulture, $"{Family}{(bold ? " Bold" : "")}"));

        public byte[] GetFont(string faceName) =>
            (faceName.EndsWith(" Bold", StringComparison.Ordinal) ? FontFile.Bold : FontFile.Regular).Bytes;
    }
}
