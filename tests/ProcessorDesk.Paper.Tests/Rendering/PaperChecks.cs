using Xunit;

namespace ProcessorDesk.Paper.Tests.Rendering;

/// <summary>What must hold for every paper, whatever it says.</summary>
internal static class PaperChecks
{
    /// <summary>9 CFR 316.16 asks for letters of at least 3/8 in.</summary>
    public const double LeastCapMillimetres = 9.525;

    /// <summary>Words stand inside the page, and all ink keeps the margin (in points).</summary>
    public static void EverythingIsInside(RenderedPdf pdf, double margin)
    {
        Assert.NotEmpty(pdf.Pages);
        foreach (var page in pdf.Pages)
        {
            Assert.NotEmpty(page.Words);
            foreach (var word in page.Words.Select(word => word.Letters()))
                Assert.True(
                    word.Left >= margin - 0.5 && word.Top >= margin - 3 && word.Right <= page.Width - margin + 0.5 && word.Bottom <= page.Height - margin + 3,
                    $"Page {page.Number + 1}: {word} is not inside the margin.");

            const int dpi = 100;
            using var bitmap = pdf.Render(page.Number, dpi);
            var extent = new Pixels(bitmap).Extent();
            Assert.NotNull(extent);
            var (left, top, right, bottom) = extent.Value;
            var dots = margin / 72 * dpi - 2;
            Assert.True(
                left >= dots && top >= dots && right <= bitmap.Width - dots && bottom <= bitmap.Height - dots,
                $"Page {page.Number + 1}: ink from {left}, {top} to {right}, {bottom} on {bitmap.Width} × {bitmap.Height} dots.");
        }
    }

    public static void NoWordsOverlap(RenderedPdf pdf)
    {
        foreach (var page in pdf.Pages)
        {
            var words = page.Words.Where(word => word.Text.Trim().Length > 0).Select(word => word.Letters()).ToList();
            for (var i = 0; i < words.Count; i++)
                for (var k = i + 1; k < words.Count; k++)
                    Assert.False(words[i].Overlaps(words[k]), $"Page {page.Number + 1}: {words[i]} overlaps {words[k]}.");
        }
    }

    /// <summary>The page says NOT FOR SALE, in letters of at least 3/8 in as measured from pixels.</summary>
    public static void SaysNotForSale(RenderedPdf pdf, PdfPage page)
    {
        foreach (var text in new[] { "NOT", "FOR", "SALE" })
        {
            var word = page.Words.Where(word => word.Text == text).MaxBy(word => Math.Max(word.Right - word.Left, word.Bottom - word.Top));
            Assert.True(word is not null, $"Page {page.Number + 1} does not say {text}.");
            var height = CapHeights.LowestLetter(pdf, page, word);
            Assert.True(height >= LeastCapMillimetres, $"Page {page.Number + 1}: {text} is {height:0.00} mm high.");
        }
    }

    /// <summary>The page holds one QR symbol with the code alone, readable at label and office resolutions, and the code in text.</summary>
    public static void HoldsTheCode(RenderedPdf pdf, PdfPage page, string code)
    {
        Assert.Contains(page.Words, word => word.Text == code);
        foreach (var dpi in new[] { 150, 203, 300 })
        {
            var reading = Assert.Single(QrReading.On(pdf, page.Number, dpi, every: dpi == 150));
            Assert.Equal(code, reading.Payload);
            Assert.True(reading.ModuleMillimetres >= 0.5, $"A module is {reading.ModuleMillimetres:0.000} mm at {dpi} dpi.");
            Assert.True(dpi < 300 || reading.Quiet, "The quiet zone holds ink.");
        }
    }
}
