using System.Xml.Linq;
using ProcessorDesk.Paper.Drawing;
using static ProcessorDesk.Paper.SvgPicture;

namespace ProcessorDesk.Paper;

/// <summary>
/// A chart of readings as SVG text for a page, the same drawing as on paper. The table of the readings stands beside it for whoever cannot see it.
/// </summary>
public static class ProbeChartPicture
{
    private const double Width = 640;
    private const double Size = 15;

    /// <summary>The picture; empty where there are no readings.</summary>
    public static string Svg(ProbeChart chart)
    {
        if (chart.Probes.All(probe => probe.Points.Count == 0))
            return "";
        var drawing = ProbeChartDrawing.Of(chart, Width, Size);
        return SvgPicture.Draw(
            "chart", (0, Width, drawing.Height), Size, chart.Title, Described(chart),
            drawing.Gaps.Select(gap => Rectangle(gap, new XAttribute("class", "gap"), new XAttribute("fill-opacity", "0.14"))),
            Lines(drawing.Grid, "grid", "0.8", new XAttribute("stroke-opacity", "0.25")),
            Rectangle(drawing.Plot, new XAttribute("fill", "none"), new XAttribute("stroke", "currentColor"), new XAttribute("stroke-opacity", "0.6")),
            Lines(drawing.Marks, "limit", "1.8", new XAttribute("stroke-dasharray", "7 4")),
            Lines(drawing.Curves, "curve", "1.6", new XAttribute("stroke-linecap", "round")),
            drawing.Dots.Select(dot => Shape(dot, drawing.Radius)),
            drawing.Labels.Select(Text));
    }

    /// <summary>"2 probes from 7:30 AM to 12:00 PM. Gaps: probe 1 from 10:00 AM to 12:00 PM. 145 °F: 4 min asked for. The table has every reading."</summary>
    private static string Described(ProbeChart chart)
    {
        var (from, to) = chart.Span;
        var gaps = chart.Gaps.Select(gap => $"probe {gap.Probe} from {Time(gap.From)} to {Time(gap.To)}").ToList();
        return $"{(chart.Probes.Count == 1 ? "1 probe" : $"{chart.Probes.Count} probes")} from {Time(from)} to {Time(to)}. "
            + (gaps.Count == 0 ? "" : $"Gaps: {string.Join("; ", gaps)}. ")
            + string.Concat(chart.Marks.Select(mark => mark.Words + ". ")) + "The table has every reading.";

        static string Time(DateTimeOffset at) => PrintedDate.Of(TimeOnly.FromDateTime(at.DateTime));
    }

    private static XElement Lines(IReadOnlyList<ProbeChartDrawing.Line> lines, string name, string thickness, XAttribute more) => new(
        Names + "path",
        new XAttribute("class", name),
        new XAttribute("d", string.Concat(lines.Select(line => $"M{Figure(line.X1)} {Figure(line.Y1)}L{Figure(line.X2)} {Figure(line.Y2)}"))),
        new XAttribute("fill", "none"),
        new XAttribute("stroke", "currentColor"),
        new XAttribute("stroke-width", thickness),
        more);

    private static XElement Shape(ProbeChartDrawing.Dot dot, double radius) => dot.Shape switch
    {
        ProbeChartDrawing.Shape.Round => new XElement(Names + "circle", new XAttribute("cx", Figure(dot.X)), new XAttribute("cy", Figure(dot.Y)), new XAttribute("r", Figure(radius))),
        ProbeChartDrawing.Shape.Square => Rectangle(
            new Box(dot.X - radius, dot.Y - radius, 2 * radius, 2 * radius), new XAttribute("fill", "none"), new XAttribute("stroke", "currentColor"), new XAttribute("stroke-width", "1.6")),
        ProbeChartDrawing.Shape.Cross => Lines(
            [new(dot.X - radius, dot.Y - radius, dot.X + radius, dot.Y + radius), new(dot.X - radius, dot.Y + radius, dot.X + radius, dot.Y - radius)],
            "cross", "1.6", new XAttribute("stroke-linecap", "round")),
    };

    private static XElement Text(ProbeChartDrawing.Label label) => new(
        Names + "text",
        new XAttribute("x", Figure(label.X)),
        new XAttribute("y", Figure(label.Baseline)),
        label.Ends ? new XAttribute("text-anchor", "end") : label.Centred ? new XAttribute("text-anchor", "middle") : null,
        label.Text);
}
