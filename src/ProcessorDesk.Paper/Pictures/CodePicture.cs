using System.Globalization;
using System.Text;
using System.Xml.Linq;
using ProcessorDesk.Paper.Drawing;

namespace ProcessorDesk.Paper;

/// <summary>A QR symbol as SVG text for a page: the same symbol as on paper, dark on light whatever the page's colours, since readers want it so.</summary>
public static class CodePicture
{
    private static readonly XNamespace s_svg = "http://www.w3.org/2000/svg";

    /// <param name="payload">What the symbol holds.</param>
    /// <param name="title">Its name for a screen reader.</param>
    public static string Svg(string payload, string title)
    {
        var (side, runs) = QrCode.Symbol(payload);
        var path = new StringBuilder();
        foreach (var (row, column, length) in runs)
            path.Append(CultureInfo.InvariantCulture, $"M{column} {row}h{length}v1h-{length}z");
        return new XElement(
            s_svg + "svg",
            new XAttribute("class", "code"),
            new XAttribute("viewBox", string.Create(CultureInfo.InvariantCulture, $"0 0 {side} {side}")),
            new XAttribute("role", "img"),
            new XAttribute("shape-rendering", "crispEdges"),
            new XElement(s_svg + "title", title),
            new XElement(s_svg + "rect", new XAttribute("width", side), new XAttribute("height", side), new XAttribute("fill", "#fff")),
            new XElement(s_svg + "path", new XAttribute("d", path.ToString()), new XAttribute("fill", "#000"))).ToString(SaveOptions.DisableFormatting);
    }
}
