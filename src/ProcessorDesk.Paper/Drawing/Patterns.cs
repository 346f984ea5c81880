namespace ProcessorDesk.Paper.Drawing;

/// <summary>Patterns that tell areas apart without colour, worked out once for paper and screen alike.</summary>
internal static class Patterns
{
    /// <summary>Rising lines inside the box, a step apart.</summary>
    public static IEnumerable<(double X1, double Y1, double X2, double Y2)> Hatch(Box box, double step)
    {
        for (var x = box.X - box.Height; x < box.Right; x += step)
        {
            var (from, to) = (Math.Max(x, box.X), Math.Min(x + box.Height, box.Right));
            yield return (from, box.Bottom - (from - x), to, box.Bottom - (to - x));
        }
    }

    /// <summary>Middles of dots in the box, a step apart and centred; one at least, however small it is.</summary>
    public static IEnumerable<(double X, double Y)> Dots(Box box, double step)
    {
        var (columns, rows) = (Count(box.Width, step), Count(box.Height, step));
        var (left, top) = (box.X + (box.Width - (columns - 1) * step) / 2, box.Y + (box.Height - (rows - 1) * step) / 2);
        for (var row = 0; row < rows; row++)
            for (var column = 0; column < columns; column++)
                yield return (left + column * step, top + row * step);
    }

    private static int Count(double length, double step) => Math.Max(1, (int)(length / step));
}
