using SkiaSharp;

namespace ProcessorDesk.Paper.Tests.Rendering;

/// <summary>Ink on a rendered page.</summary>
internal sealed class Pixels
{
    private readonly byte[] _grey;

    public Pixels(SKBitmap bitmap)
    {
        (Width, Height) = (bitmap.Width, bitmap.Height);
        using var grey = bitmap.Copy(SKColorType.Gray8);
        var bytes = grey.Bytes;
        _grey = new byte[Width * Height];
        for (var y = 0; y < Height; y++)
            bytes.AsSpan(y * grey.RowBytes, Width).CopyTo(_grey.AsSpan(y * Width));
    }

    public int Width { get; }

    public int Height { get; }

    /// <summary>Darker than half: what a printer puts ink on.</summary>
    public bool Inked(int x, int y) => _grey[y * Width + x] < 128;

    /// <summary>The box around all ink, or null on an empty page.</summary>
    public (int Left, int Top, int Right, int Bottom)? Extent()
    {
        var (left, top, right, bottom) = (Width, Height, -1, -1);
        for (var y = 0; y < Height; y++)
            for (var x = 0; x < Width; x++)
            {
                if (!Inked(x, y))
                    continue;
                (left, right) = (Math.Min(left, x), Math.Max(right, x));
                (top, bottom) = (Math.Min(top, y), Math.Max(bottom, y));
            }

        return right < 0 ? null : (left, top, right, bottom);
    }
}
