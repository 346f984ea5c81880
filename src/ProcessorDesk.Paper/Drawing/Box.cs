namespace ProcessorDesk.Paper.Drawing;

/// <summary>A rectangle on the page in points, from the top left corner.</summary>
internal readonly record struct Box(double X, double Y, double Width, double Height)
{
    public double Right => X + Width;

    public double Bottom => Y + Height;

    public Box Inside(double margin) => new(X + margin, Y + margin, Width - 2 * margin, Height - 2 * margin);
}
