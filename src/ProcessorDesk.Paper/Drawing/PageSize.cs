namespace ProcessorDesk.Paper.Drawing;

/// <summary>A stock the shop prints on, in points (1/72 in).</summary>
internal readonly record struct PageSize(double Width, double Height)
{
    /// <summary>4 × 6 in, the common stock of a label printer.</summary>
    public static PageSize Ticket { get; } = new(4 * 72, 6 * 72);

    /// <summary>4 × 2 in, lying.</summary>
    public static PageSize Strip { get; } = new(4 * 72, 2 * 72);

    /// <summary>5.5 × 8.5 in.</summary>
    public static PageSize HalfLetter { get; } = new(5.5 * 72, 8.5 * 72);

    public static PageSize Letter { get; } = new(8.5 * 72, 11 * 72);
}
