using System.Globalization;
using System.Xml.Linq;
using ProcessorDesk.Paper.Drawing;

namespace ProcessorDesk.Paper;

/// <summary>
/// What every picture drawn as SVG text for a page stands on. All is in the colour of the text around it, so it stands on light and dark
/// alike; there is no style, no script and no id in it.
/// </summary>
internal static class SvgPicture
{
    public static readonly XNamespace Names = "http://www.w3.org/2000/svg";

    /// <param name="name">Its class, for the page's stylesheet.</param>
    /// <param name="size">In units of its own; it begins left of zero where strokes stick out.</param>
    /// <param name="title">Its name for a screen reader.</param>
    /// <param name="described">The same in words.</param>
    public static string Draw(string name, (double Left, double Width, double Height) size, double letters, string title, string described, params object[] content) => new XElement(
        Names + "svg",
        new XAttribute("class", name),
        new XAttribute("viewBox", $"{Figure(size.Left)} 0 {Figure(size.Width)} {Figure(size.Height)}"),
        new XAttribute("role", "img"),
        new XAttribute("fill", "currentColor"),
        new XAttribute("font-family", "system-ui, sans-serif"),
        new XAttribute("font-size", Figure(letters)),
        new XElement(Names + "title", title),
        new XElement(Names + "desc", described),
        content).ToString(SaveOptions.DisableFormatting);

    public static XElement Rectangle(Box box, params object[] more) => new(
        Names + "rect",
        new XAttribute("x", Figure(box.X)),
        new XAttribute("y", Figure(box.Y)),
        new XAttribute("width", Figure(box.Width)),
        new XAttribute("height", Figure(box.Height)),
        more);

    /// <summary>A length in the picture's own units, to a hundredth.</summary>
    public static string Figure(double length) => length.ToString("0.##", CultureInfo.InvariantCulture);
}
