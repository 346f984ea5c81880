using ProcessorDesk.Paper.Drawing;
using ProcessorDesk.Trade.Yields;

namespace ProcessorDesk.Paper;

/// <summary>
/// A row of the way of the weight: its name and figure, and below them what was there already and what this step is. The shapes are
/// made here once; paper and screen only draw them. Lengths are in points or pixels, from the row's top left corner.
/// </summary>
/// <param name="Name">Of a length that leaves room for the figure.</param>
/// <param name="Figure">As printed, with its sign for a loss or an addition.</param>
/// <param name="Rest">What is neither lost nor added here; null for a stage.</param>
/// <param name="Bar">The stage, the loss or the addition; never too narrow to be seen.</param>
/// <param name="Size">Of the letters; all else is in proportion to it.</param>
internal sealed record WayRow(WayKind Kind, string Name, string Figure, Box? Rest, Box Bar, double Size)
{
    /// <summary>A letter's width is at most this part of its size, on the average of a name.</summary>
    private const double LetterWidth = 0.6;

    public bool IsStage => Kind == WayKind.Stage;

    public double Baseline => 1.05 * Size;

    public double Height => HeightOf(Size);

    /// <summary>From line to line of a pattern.</summary>
    public double Step => Kind == WayKind.Added ? 0.4 * Size : 0.5 * Size;

    public static double HeightOf(double size) => 2.8 * size;

    public static IReadOnlyList<WayRow> Of(IReadOnlyList<WayStep> steps, double width, double size) =>
        [.. WayOfWeight.Bars(steps).Select(bar => Of(bar, width, size))];

    private static WayRow Of(WayBar bar, double width, double size)
    {
        var figure = Sign(bar.Step.Kind) + bar.Step.Printed;
        var letters = (int)(width / (LetterWidth * size)) - figure.Length - 1;
        var (top, height, thinnest) = (1.45 * size, 0.95 * size, 0.1 * size);
        return new WayRow(
            bar.Step.Kind,
            Shorten(bar.Step.Name, Math.Max(1, letters)),
            figure,
            bar.Step.Kind == WayKind.Stage ? null : new Box(0, top, bar.From * width, height),
            new Box(bar.From * width, top, Math.Max(thinnest, (bar.To - bar.From) * width), height),
            size);
    }

    private static string Shorten(string name, int letters) => name.Length <= letters ? name : name[..(letters - 1)].TrimEnd() + "…";

    private static string Sign(WayKind kind) => kind switch
    {
        WayKind.Stage => "",
        WayKind.Loss => "− ",
        WayKind.Added => "+ ",
    };
}
