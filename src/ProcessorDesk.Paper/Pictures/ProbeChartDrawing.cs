using System.Globalization;
using ProcessorDesk.Paper.Drawing;

namespace ProcessorDesk.Paper;

/// <summary>
/// The shapes of a chart. They are made here once; paper and screen only draw them. Lengths are in points or pixels, from the top left
/// corner. The probes are told apart by the shape of their points, so that the chart is read in grey.
/// </summary>
internal sealed record ProbeChartDrawing(
    double Height,
    double Size,
    Box Plot,
    IReadOnlyList<Box> Gaps,
    IReadOnlyList<ProbeChartDrawing.Line> Grid,
    IReadOnlyList<ProbeChartDrawing.Line> Marks,
    IReadOnlyList<ProbeChartDrawing.Line> Curves,
    IReadOnlyList<ProbeChartDrawing.Dot> Dots,
    IReadOnlyList<ProbeChartDrawing.Label> Labels)
{
    /// <summary>Half the width of a point's shape, as a part of the letters' size.</summary>
    private const double DotPart = 0.24;

    /// <summary>How a probe's points look.</summary>
    public enum Shape
    {
        Round,
        Square,
        Cross,
    }

    public double Radius => DotPart * Size;

    /// <summary>The left margin has room for three figures, the right one for half of "12:00 PM".</summary>
    /// <param name="width">Of all of it.</param>
    /// <param name="size">Of the letters; all else is in proportion to it.</param>
    public static ProbeChartDrawing Of(ProbeChart chart, double width, double size)
    {
        var plot = new Box(3 * size, 2 * size, width - 5.5 * size, Math.Max(10 * size, 0.34 * width));
        var scale = new ProbeChartScale(chart, plot);
        List<Line> grid =
        [
            .. scale.Degrees.Select(one => new Line(plot.X, scale.Y(one), plot.Right, scale.Y(one))),
            .. scale.Moments.Select(one => new Line(scale.X(one), plot.Y, scale.X(one), plot.Bottom)),
        ];
        return new ProbeChartDrawing(
            plot.Bottom + 1.9 * size, size, plot,
            [.. chart.Gaps.Select(gap => new Box(scale.X(gap.From), plot.Y, scale.X(gap.To) - scale.X(gap.From), plot.Height))],
            grid,
            [.. chart.Marks.SelectMany(mark => Level(mark, scale, plot, size))],
            [.. chart.Probes.SelectMany(probe => Curve(probe, chart.Gaps, scale))],
            [.. chart.Probes.SelectMany((probe, i) => probe.Points.Select(point => new Dot(scale.X(point.At), scale.Y(point.Degrees), ShapeOf(i)))), .. chart.Probes.Select((_, i) => new Dot(LegendX(i, plot, size), 0.7 * size, ShapeOf(i)))],
            [.. Axes(scale, plot, size), .. chart.Probes.Select((probe, i) => new Label(LegendX(i, plot, size) + 0.6 * size, 1.05 * size, $"probe {probe.Number}")), .. chart.Marks.Select(mark => Said(mark, scale, plot, size))]);
    }

    private static Shape ShapeOf(int probe) => (Shape)(probe % Enum.GetValues<Shape>().Length);

    private static double LegendX(int probe, Box plot, double size) => plot.X + 0.5 * size + probe * 6 * size;

    /// <summary>From reading to reading, but not over a gap.</summary>
    private static IEnumerable<Line> Curve(ProbeChart.Probe probe, IReadOnlyList<ProbeChart.Gap> gaps, ProbeChartScale scale) =>
        from step in probe.Points.Zip(probe.Points.Skip(1))
        where !gaps.Any(gap => gap.Probe == probe.Number && gap.From <= step.First.At && gap.To >= step.Second.At)
        select new Line(scale.X(step.First.At), scale.Y(step.First.Degrees), scale.X(step.Second.At), scale.Y(step.Second.Degrees));

    private static IEnumerable<Line> Level(ProbeChart.Mark mark, ProbeChartScale scale, Box plot, double size)
    {
        var (left, right, y) = (mark.From is { } from ? scale.X(from) : plot.X, mark.To is { } to ? scale.X(to) : plot.Right, scale.Y(mark.Degrees));
        yield return new Line(left, y, right, y);
        if (mark.To is not null)
            yield return new Line(right, y - 0.5 * size, right, y + 0.5 * size);
    }

    /// <summary>Above its line, at the end of a limit or at the left of the plot; never out of the plot.</summary>
    private static Label Said(ProbeChart.Mark mark, ProbeChartScale scale, Box plot, double size)
    {
        var y = scale.Y(mark.Degrees) - 0.35 * size;
        if (mark.To is not { } to)
            return new Label(plot.X + 0.4 * size, y, mark.Words);
        var x = scale.X(to);
        return x - plot.X > plot.Width / 2 ? new Label(x - 0.4 * size, y, mark.Words, Ends: true) : new Label(x + 0.4 * size, y, mark.Words);
    }

    private static IEnumerable<Label> Axes(ProbeChartScale scale, Box plot, double size)
    {
        foreach (var degrees in scale.Degrees)
            yield return new Label(plot.X - 0.4 * size, scale.Y(degrees) + 0.35 * size, degrees.ToString("0", CultureInfo.InvariantCulture), Ends: true);
        yield return new Label(plot.X - 0.4 * size, 1.05 * size, "°F", Ends: true);
        var days = scale.Moments.Count > 1 && scale.Moments[1] - scale.Moments[0] >= TimeSpan.FromDays(1);
        foreach (var at in scale.Moments)
            yield return new Label(scale.X(at), plot.Bottom + 1.3 * size, days ? at.ToString("d MMM", CultureInfo.InvariantCulture) : PrintedDate.Of(TimeOnly.FromDateTime(at.DateTime)), Centred: true);
    }

    /// <summary>A straight line.</summary>
    public sealed record Line(double X1, double Y1, double X2, double Y2);

    /// <summary>A reading.</summary>
    public sealed record Dot(double X, double Y, Shape Shape);

    /// <summary>Words on a baseline, which begin at x unless they end there or have their middle there.</summary>
    public sealed record Label(double X, double Baseline, string Text, bool Ends = false, bool Centred = false);
}
