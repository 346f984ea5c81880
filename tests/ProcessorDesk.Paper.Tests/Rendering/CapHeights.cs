namespace ProcessorDesk.Paper.Tests.Rendering;

/// <summary>Measures letters in pixels, so that what counts is what comes out of the printer and not a font size.</summary>
internal static class CapHeights
{
    private const int Dpi = 300;

    /// <summary>
    /// The lowest letter of a word in capitals, in millimetres. Letters are the runs of ink along the word's direction;
    /// flat letters stand lower than round ones, so the lowest is the true height of the capitals.
    /// </summary>
    public static double LowestLetter(RenderedPdf pdf, PdfPage page, PdfWord word)
    {
        using var bitmap = pdf.Render(page.Number, Dpi);
        var pixels = new Pixels(bitmap);
        var box = word.Letters();
        int Dots(double points) => (int)Math.Round(points / 72 * Dpi);
        // Capitals stand on the baseline; what is below it is not theirs.
        var (below, beside) = (0.17 * (word.Bottom - word.Top), 0.17 * (word.Right - word.Left));
        var (along, across) = word.Upright
            ? ((Dots(box.Top), Dots(box.Bottom)), (Dots(box.Left), Dots(box.Right - beside)))
            : ((Dots(box.Left), Dots(box.Right)), (Dots(box.Top), Dots(box.Bottom - below)));
        bool Inked(int a, int c) => word.Upright ? pixels.Inked(c, a) : pixels.Inked(a, c);

        var letters = Letters(along, across, Inked);
        if (letters.Count < 2)
            throw new InvalidOperationException($"{word.Text}: found {letters.Count} letters.");
        return letters.Min() * 25.4 / Dpi;
    }

    private static List<int> Letters((int From, int To) along, (int From, int To) across, Func<int, int, bool> inked)
    {
        var letters = new List<int>();
        var (first, last) = (int.MaxValue, int.MinValue);
        for (var a = along.From; a <= along.To; a++)
        {
            var line = Enumerable.Range(across.From, across.To - across.From).Where(c => inked(a, c)).ToList();
            if (line.Count > 0 && a < along.To)
            {
                (first, last) = (Math.Min(first, line[0]), Math.Max(last, line[^1]));
                continue;
            }

            if (last >= first)
                letters.Add(last - first + 1);
            (first, last) = (int.MaxValue, int.MinValue);
        }

        return letters;
    }
}
