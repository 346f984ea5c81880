using System.Globalization;
using System.Xml;
using System.Xml.Linq;
using SkiaSharp;

namespace ProcessorDesk.Paper.Tests.Rendering;

/// <summary>A PDF as independent tools see it: its text, the boxes of its words, its pages as pixels.</summary>
internal sealed class RenderedPdf : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("rendered-pdf-").FullName;
    private readonly string _file;

    public RenderedPdf(byte[] pdf)
    {
        _file = Path.Combine(_folder, "paper.pdf");
        File.WriteAllBytes(_file, pdf);
        Text = ReadText();
        Pages = ReadPages();
    }

    /// <summary>All text, lines as they stand on the page.</summary>
    public string Text { get; }

    public IReadOnlyList<PdfPage> Pages { get; }

    /// <summary>What pdfinfo says: title, page size, whether it is encrypted.</summary>
    public string Info() => Poppler.Ask("pdfinfo", _file);

    /// <summary>A line for each font: name, type, encoding, embedded, subset, mapped to Unicode.</summary>
    public IReadOnlyList<string> Fonts() =>
        [.. Poppler.Ask("pdffonts", _file).Split('\n', StringSplitOptions.RemoveEmptyEntries).Skip(2)];

    /// <summary>A page, counted from zero, in grey at so many dots per inch. The caller disposes of it.</summary>
    public SKBitmap Render(int page, int dpi)
    {
        var name = Path.Combine(_folder, $"page-{page}-{dpi}");
        var number = (page + 1).ToString(CultureInfo.InvariantCulture);
        Poppler.Run("pdftoppm", "-gray", "-png", "-singlefile", "-r", dpi.ToString(CultureInfo.InvariantCulture), "-f", number, "-l", number, _file, name);
        return SKBitmap.Decode(name + ".png");
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private string ReadText()
    {
        var output = Path.Combine(_folder, "text.txt");
        Poppler.Run("pdftotext", "-layout", "-enc", "UTF-8", _file, output);
        return File.ReadAllText(output);
    }

    private List<PdfPage> ReadPages()
    {
        var output = Path.Combine(_folder, "words.html");
        Poppler.Run("pdftotext", "-bbox", "-enc", "UTF-8", _file, output);
        using var reader = XmlReader.Create(output, new XmlReaderSettings { DtdProcessing = DtdProcessing.Ignore });
        var pages = XDocument.Load(reader).Descendants().Where(element => element.Name.LocalName == "page");
        return [.. pages.Select((page, number) => new PdfPage(
            number,
            Figure(page, "width"),
            Figure(page, "height"),
            [.. page.Elements().Select(word => new PdfWord(
                word.Value, Figure(word, "xMin"), Figure(word, "yMin"), Figure(word, "xMax"), Figure(word, "yMax")))]))];
    }

    private static double Figure(XElement element, string name) =>
        double.Parse(element.Attribute(name)!.Value, CultureInfo.InvariantCulture);
}

/// <summary>A page, its number counted from zero, its size in points and its words.</summary>
internal sealed record PdfPage(int Number, double Width, double Height, IReadOnlyList<PdfWord> Words);
