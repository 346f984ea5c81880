using System.Globalization;
using System.Xml.Linq;
using SkiaSharp;

namespace ProcessorDesk.Paper.Tests.Pictures;

/// <summary>Where words of a picture begin and end, measured in the papers' own letters; a screen may have wider ones, so a tenth is added.</summary>
internal static class LabelWidth
{
    private const float Wider = 1.1f;

    private static readonly SKTypeface s_letters = Letters();

    public static (float Left, float Right) Ends(XElement label)
    {
        var size = Figure(label.Parent!, "font-size");
        using var font = new SKFont(s_letters, size);
        var (x, width) = (Figure(label, "x"), font.MeasureText(label.Value) * Wider);
        return (string?)label.Attribute("text-anchor") switch
        {
            "end" => (x - width, x),
            "middle" => (x - width / 2, x + width / 2),
            _ => (x, x + width),
        };
    }

    private static float Figure(XElement element, string name) => float.Parse((string)element.Attribute(name)!, CultureInfo.InvariantCulture);

    private static SKTypeface Letters()
    {
        var assembly = typeof(ProbeChartPicture).Assembly;
        using var font = assembly.GetManifestResourceStream(assembly.GetManifestResourceNames().Single(name => name.EndsWith("OpenSans-Regular.ttf", StringComparison.Ordinal)))!;
        return SKTypeface.FromStream(font);
    }
}
