using System.Globalization;
using System.Text;
using System.Xml.Linq;
using ProcessorDesk.Paper.Tests.Cast;
using ProcessorDesk.Paper.Tests.Rendering;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Yields;
using Xunit;

namespace ProcessorDesk.Paper.Tests.Pictures;

public sealed class WayPictureTests
{
    private const string Title = "Where the weight went";

    private static readonly IReadOnlyList<WayStep> s_way = InvoiceSamples.Ordinary.Yield!.Way;

    [Fact]
    public void It_is_an_image_with_a_title_and_the_whole_way_in_words()
    {
        var svg = Read(s_way);

        Assert.Equal(("svg", "img"), (svg.Name.LocalName, (string?)svg.Attribute("role")));
        Assert.Equal(["title", "desc"], svg.Elements().Take(2).Select(element => element.Name.LocalName));
        Assert.Equal(Title, svg.Elements().First().Value);
        var described = svg.Elements().ElementAt(1).Value;
        Assert.StartsWith("Field-dressed: 224.5 lb; less Hide, head and feet: 56.0 lb; Hanging: 168.5 lb", described, StringComparison.Ordinal);
        Assert.EndsWith("plus Pork: 18.94 lb; plus Spices, cure and water: 2.51 lb; less Cooking and smoking: 6.12 lb; In the boxes: 108.08 lb.", described, StringComparison.Ordinal);
    }

    /// <summary>The widest point is the arrival, 224.5 lb; what is left after each step is added up in the test.</summary>
    [Fact]
    public void Bars_are_as_long_as_their_weights_and_hang_where_the_weight_before_ends()
    {
        var bars = Bars(Read(s_way));

        Assert.Equal(s_way.Count, bars.Count);
        var scale = bars[0].Width / 224.5m;
        var at = 0m;
        foreach (var (step, bar) in s_way.Zip(bars))
        {
            var pounds = step.Weight.Pounds;
            var (left, right, name) = step.Kind switch
            {
                WayKind.Stage => (0m, pounds, "own"),
                WayKind.Loss => (at - pounds, at, "lost"),
                WayKind.Added => (at, at + pounds, "gained"),
            };
            Assert.Equal(name, bar.Name);
            Assert.InRange(bar.X, left * scale - 0.02m, left * scale + 0.02m);
            Assert.InRange(bar.Width, (right - left) * scale - 0.02m, (right - left) * scale + 0.02m);
            at = step.Kind == WayKind.Loss ? left : right;
        }
    }

    [Fact]
    public void What_was_added_has_dots_and_what_was_lost_has_lines()
    {
        var rows = Read(s_way).Elements().Where(element => element.Name.LocalName == "g").ToList();

        Assert.Equal(s_way.Count, rows.Count);
        foreach (var (step, row) in s_way.Zip(rows))
        {
            var path = (string?)row.Elements().SingleOrDefault(element => element.Name.LocalName == "path")?.Attribute("d");
            switch (step.Kind)
            {
                case WayKind.Stage:
                    Assert.Null(path);
                    break;
                case WayKind.Loss:
                    Assert.Matches(@"^(M[\d.]+ [\d.]+L[\d.]+ [\d.]+)+$", path);
                    break;
                case WayKind.Added:
                    Assert.Matches(@"^(M[\d.]+ [\d.]+h\.01)+$", path);
                    break;
            }
        }
    }

    [Fact]
    public void A_page_that_forbids_styles_and_scripts_can_show_it_on_light_and_on_dark()
    {
        var all = Read(s_way).DescendantsAndSelf().ToList();

        Assert.DoesNotContain(all, element => element.Name.LocalName is "style" or "script");
        var attributes = all.SelectMany(element => element.Attributes()).Where(attribute => !attribute.IsNamespaceDeclaration).ToList();
        Assert.DoesNotContain(attributes, attribute => attribute.Name.LocalName is "style" or "id" or "href" || attribute.Name.LocalName.StartsWith("on", StringComparison.Ordinal));
        Assert.All(attributes.Where(attribute => attribute.Name.LocalName is "fill" or "stroke"), attribute => Assert.Contains(attribute.Value, new[] { "currentColor", "none" }));
    }

    [Fact]
    public void It_says_the_same_as_the_paper_and_in_the_same_lengths()
    {
        using var pdf = new RenderedPdf(Invoice.Draw([InvoiceSamples.Ordinary]));
        var svg = Read(s_way);
        var page = pdf.Pages.Single(page => page.Words.Any(word => word.Text == "went"));

        var rows = svg.Elements().Where(element => element.Name.LocalName == "g").Select(row => row.Elements().Where(element => element.Name.LocalName == "text").Select(text => text.Value).ToList()).ToList();
        Assert.Equal(s_way.Select(step => step.Name), rows.Select(row => row[0]));
        Assert.All(s_way.Zip(rows), pair => Assert.EndsWith(pair.First.Printed, pair.Second[1], StringComparison.Ordinal));
        foreach (var row in rows)
            Assert.Contains(pdf.Text.Split('\n'), line => line.TrimStart().StartsWith(row[0], StringComparison.Ordinal) && line.TrimEnd().EndsWith(row[1], StringComparison.Ordinal));

        using var bitmap = pdf.Render(page.Number, 150);
        var pixels = new Pixels(bitmap);
        var heading = page.Words.Single(word => word.Text == "went").Bottom;
        var drawn = new[] { "Field-dressed", "Hanging", "Lean", "In" }
            .Select(name => Run(pixels, page.Words.First(word => word.Text == name && word.Top > heading)))
            .ToList();
        var stages = Bars(svg).Where(bar => bar.Name == "own").Select(bar => bar.Width).ToList();
        foreach (var (printed, shown) in drawn.Zip(stages))
            Assert.InRange((double)printed / drawn[0], (double)(shown / stages[0]) - 0.003, (double)(shown / stages[0]) + 0.003);
    }

    /// <summary>Nearly all is lost in four steps, as much comes in again, and nearly all of that is lost too: as much pattern as a way can have.</summary>
    [Fact]
    public void The_fullest_way_is_under_twelve_thousand_bytes()
    {
        const string name = "Lost on the way through the shop for one reason or another";
        WayStep[] way =
        [
            Step(WayKind.Stage, "As it came in", 1000m), .. Enumerable.Repeat(Step(WayKind.Loss, name, 245m), 4), Step(WayKind.Stage, "Boneless", 20m),
            Step(WayKind.Added, "Pork or fat added", 600m), Step(WayKind.Added, "Spices, cure, water", 380m), Step(WayKind.Loss, name, 980m), Step(WayKind.Stage, "In the boxes", 20m),
        ];

        var svg = WayPicture.Svg(way, Title);

        Assert.InRange(Encoding.UTF8.GetByteCount(svg), 5_000, 11_999);
        Assert.Contains("Lost on the way through the shop…", svg, StringComparison.Ordinal);
    }

    [Fact]
    public void Names_are_kept_from_being_read_as_markup()
    {
        var svg = XDocument.Parse(WayPicture.Svg([Step(WayKind.Stage, "Hanging <b> & \"cut\"\u0001", 10m)], "A & B")).Root!;

        Assert.Equal("A & B", svg.Elements().First().Value);
        Assert.Contains(svg.Descendants(), element => element.Name.LocalName == "text" && element.Value == "Hanging <b> & \"cut\"");
        Assert.DoesNotContain(svg.Descendants(), element => element.Name.LocalName == "b");
    }

    [Fact]
    public void Without_steps_there_is_no_picture() => Assert.Equal("", WayPicture.Svg([], Title));

    private static XElement Read(IReadOnlyList<WayStep> way) => XDocument.Parse(WayPicture.Svg(way, Title)).Root!;

    private static WayStep Step(WayKind kind, string name, decimal pounds) => new(kind, name, Weight.FromPounds(pounds), $"{pounds} lb");

    private static List<(string Name, decimal X, decimal Width)> Bars(XElement svg) =>
        [.. svg.Descendants().Where(element => element.Name.LocalName == "rect" && (string?)element.Attribute("class") != "rest")
            .Select(bar => ((string)bar.Attribute("class")!, Figure(bar, "x"), Figure(bar, "width")))];

    private static decimal Figure(XElement element, string name) => decimal.Parse(element.Attribute(name)!.Value, CultureInfo.InvariantCulture);

    /// <summary>Dots of ink without a break to the right of the row's left edge, on the bar below the name.</summary>
    private static int Run(Pixels pixels, PdfWord name)
    {
        var (x, y) = ((int)(name.Left / 72 * 150) + 2, (int)((name.Bottom + 5) / 72 * 150));
        return Enumerable.Range(x, pixels.Width - x).TakeWhile(at => pixels.Inked(at, y)).Count();
    }
}
