using SkiaSharp;
using ZXing;
using ZXing.Common;

namespace ProcessorDesk.Paper.Tests.Rendering;

/// <summary>A QR symbol found on a rendered page by a reader that shares no code with the writer.</summary>
/// <param name="Payload">What it holds.</param>
/// <param name="ModuleMillimetres">Size of a module, taken from the finder patterns of a version 1 symbol.</param>
/// <param name="Quiet">Whether four modules on every side are free of ink.</param>
internal sealed record QrReading(string Payload, double ModuleMillimetres, bool Quiet)
{
    private const int ModulesBetweenFinders = 14;

    /// <summary>Every symbol on the page, or the first one found, which is quicker.</summary>
    /// <param name="from">Where the part of the page begins that is looked at: 0 is its top, 1 its foot.</param>
    /// <param name="to">Where it ends.</param>
    public static IReadOnlyList<QrReading> On(RenderedPdf pdf, int page, int dpi, bool every, double from = 0, double to = 1)
    {
        using var whole = pdf.Render(page, dpi);
        using var bitmap = new SKBitmap();
        whole.ExtractSubset(bitmap, new SKRectI(0, (int)(from * whole.Height), whole.Width, (int)(to * whole.Height)));
        using var colour = bitmap.Copy(SKColorType.Bgra8888);
        var source = new RGBLuminanceSource(colour.Bytes, colour.Width, colour.Height, RGBLuminanceSource.BitmapFormat.BGRA32);
        var reader = new BarcodeReaderGeneric
        {
            Options = new DecodingOptions { TryHarder = true, PossibleFormats = [BarcodeFormat.QR_CODE] },
        };
        var pixels = new Pixels(bitmap);
        var results = every ? reader.DecodeMultiple(source) : reader.Decode(source) is { } one ? [one] : null;
        return [.. (results ?? []).Select(result => Of(result, pixels, dpi))];
    }

    private static QrReading Of(Result result, Pixels pixels, int dpi)
    {
        // The three finder patterns: bottom left, top left, top right.
        var (topLeft, topRight) = (result.ResultPoints[1], result.ResultPoints[2]);
        var module = (topRight.X - topLeft.X) / ModulesBetweenFinders;
        var (left, top) = (topLeft.X - 3.5 * module, topLeft.Y - 3.5 * module);
        return new QrReading(result.Text, module * 25.4 / dpi, IsQuiet(pixels, left, top, 21 * module, 4 * module));
    }

    private static bool IsQuiet(Pixels pixels, double left, double top, double side, double quiet)
    {
        // Two dots of slack at either edge: the reader finds the corners to about a dot.
        const int slack = 2;
        for (var y = (int)(top - quiet) + slack; y < top + side + quiet - slack; y++)
            for (var x = (int)(left - quiet) + slack; x < left + side + quiet - slack; x++)
            {
                var inside = x >= left - slack && x <= left + side + slack && y >= top - slack && y <= top + side + slack;
                if (!inside && (x < 0 || y < 0 || x >= pixels.Width || y >= pixels.Height || pixels.Inked(x, y)))
                    return false;
            }

        return true;
    }
}
