using System.Text;
using System.Xml.Linq;
using ProcessorDesk.Paper.Drawing;
using ProcessorDesk.Trade.Yields;
using static ProcessorDesk.Paper.SvgPicture;

namespace ProcessorDesk.Paper;

/// <summary>
/// The way of the weight as SVG text for a page, the same drawing as on paper. The patterns tell the parts apart in grey. Where the page's
/// stylesheet knows them, its classes take colours: own, rest, lost, gained.
/// </summary>
public static class WayPicture
{
    private const double Width = 360;
    private const double Size = 14;

    /// <summary>The picture; empty where there are no steps.</summary>
    /// <param name="title">Its name for a screen reader: "Where the weight went".</param>
    public static string Svg(IReadOnlyList<WayStep> steps, string title)
    {
        if (steps.Count == 0)
            return "";
        var rows = WayRow.Of(steps, Width, Size);
        var height = rows.Sum(row => row.Height);
        return SvgPicture.Draw(
            "way", (-1, Width + 2, height), Size, Plain(title), Plain(Described(steps)),
            rows.Select((row, i) => Row(row, i * row.Height)));
    }

    /// <summary>The whole way in words: "Field-dressed: 224.5 lb; less Hide, head and feet: 56.0 lb; Hanging: 168.5 lb."</summary>
    private static string Described(IReadOnlyList<WayStep> steps) =>
        string.Join("; ", steps.Select(step => step.Kind switch
        {
            WayKind.Stage => $"{step.Name}: {step.Printed}",
            WayKind.Loss => $"less {step.Name}: {step.Printed}",
            WayKind.Added => $"plus {step.Name}: {step.Printed}",
        })) + ".";

    private static XElement Row(WayRow row, double top) => new(
        Names + "g",
        row.IsStage ? new XAttribute("font-weight", "700") : null,
        new XElement(Names + "text", new XAttribute("x", "0"), new XAttribute("y", Figure(top + row.Baseline)), Plain(row.Name)),
        new XElement(Names + "text", new XAttribute("x", Figure(Width)), new XAttribute("y", Figure(top + row.Baseline)), new XAttribute("text-anchor", "end"), Plain(row.Figure)),
        row.Rest is { Width: > 0 } rest ? Rectangle(rest with { Y = top + rest.Y }, "rest", new XAttribute("fill-opacity", "0.15")) : null,
        Bar(row, row.Bar with { Y = top + row.Bar.Y }));

    private static object Bar(WayRow row, Box bar) => row.Kind switch
    {
        WayKind.Stage => Rectangle(bar, "own"),
        WayKind.Loss => Patterned(bar, "lost", "0.8", Patterns.Hatch(bar, row.Step).Select(line => $"M{Figure(line.X1)} {Figure(line.Y1)}L{Figure(line.X2)} {Figure(line.Y2)}")),
        WayKind.Added => Patterned(bar, "gained", "2.6", Patterns.Dots(bar, row.Step).Select(dot => $"M{Figure(dot.X)} {Figure(dot.Y)}h.01")),
    };

    private static XElement[] Patterned(Box bar, string name, string thickness, IEnumerable<string> path) =>
    [
        new(Names + "path", new XAttribute("d", string.Concat(path)), new XAttribute("stroke", "currentColor"), new XAttribute("stroke-width", thickness), new XAttribute("stroke-linecap", "round")),
        Rectangle(bar, name, new XAttribute("fill", "none"), new XAttribute("stroke", "currentColor")),
    ];

    private static XElement Rectangle(Box box, string name, params object[] more) => SvgPicture.Rectangle(box, [new XAttribute("class", name), .. more]);

    private static string Plain(string text) =>
        string.Concat(text.EnumerateRunes().Where(letter => !Rune.IsControl(letter) && letter.Value is not (0xFFFE or 0xFFFF)));
}
