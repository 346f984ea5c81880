namespace ProcessorDesk.Paper.Tests.Rendering;

/// <summary>A word and its box in points from the top left, as pdftotext -bbox gives it.</summary>
internal sealed record PdfWord(string Text, double Left, double Top, double Right, double Bottom)
{
    /// <summary>
    /// Text that runs up the page: capitals that, were they level, would be narrower than capitals are. Only words in
    /// capitals stand upright on the papers.
    /// </summary>
    public bool Upright => Text.Length > 2 && Text.All(char.IsAsciiLetterUpper) && (Right - Left) / Text.Length < 0.3 * (Bottom - Top);

    /// <summary>
    /// The part of the box in which letters stand. The reader's box is the font's whole ascent and descent (1.34 of the
    /// size for Open Sans); letters reach from 0.8 above the baseline to 0.24 below.
    /// </summary>
    public PdfWord Letters()
    {
        var (height, width) = (Bottom - Top, Right - Left);
        return Upright
            ? this with { Left = Left + 0.2 * width, Right = Right - 0.04 * width }
            : this with { Top = Top + 0.2 * height, Bottom = Bottom - 0.04 * height };
    }

    public bool Overlaps(PdfWord other) =>
        Math.Min(Right, other.Right) - Math.Max(Left, other.Left) > 0.3
        && Math.Min(Bottom, other.Bottom) - Math.Max(Top, other.Top) > 0.3;
}
