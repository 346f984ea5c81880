namespace ProcessorDesk.Paper.Drawing;

/// <summary>How text is set: size in points, weight, and its grey (0 black, 1 white).</summary>
internal readonly record struct Lettering(double Size, bool Bold = false, double Grey = 0)
{
    public static Lettering Body { get; } = new(10);

    public static Lettering Strong { get; } = new(10, Bold: true);

    public static Lettering Small { get; } = new(8.5);

    /// <summary>A label above or beside a figure.</summary>
    public static Lettering Label { get; } = new(8, Grey: 0.3);

    /// <summary>Height of a capital, in points.</summary>
    public double CapHeight => Size * (Bold ? FontFile.Bold : FontFile.Regular).CapHeight;

    /// <summary>From one baseline to the next, in points; large letters stand closer.</summary>
    public double LineHeight => Size * (Size > 18 ? 1.16 : 1.36);

    /// <summary>From the top of a line to its baseline, in points.</summary>
    public double Ascent => Size * (Size > 18 ? 0.9 : 1.02);

    /// <summary>The lettering whose capitals are so high, in points.</summary>
    public static Lettering OfCapHeight(double points) => new(points / FontFile.Bold.CapHeight, Bold: true);
}
