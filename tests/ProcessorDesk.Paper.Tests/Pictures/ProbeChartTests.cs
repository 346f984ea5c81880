using System.Globalization;
using System.Xml.Linq;
using ProcessorDesk.Paper.Tests.Cast;
using Xunit;

namespace ProcessorDesk.Paper.Tests.Pictures;

public sealed class ProbeChartTests
{
    private static XElement Svg(ProbeChart chart) => XElement.Parse(ProbeChartPicture.Svg(chart));

    [Fact]
    public void It_is_an_image_with_a_title_and_says_in_words_what_it_shows()
    {
        var svg = Svg(RecordSamples.Cooking);

        Assert.Equal(("svg", "img"), (svg.Name.LocalName, (string?)svg.Attribute("role")));
        Assert.Equal("Cooking, batch 31", svg.Elements().First().Value);
        Assert.Equal("2 probes from 7:30 AM to 11:30 AM. Gaps: probe 2 from 8:45 AM to 10:00 AM. 145 °F: 4 min asked for. The table has every reading.", svg.Elements().ElementAt(1).Value);
        Assert.DoesNotContain(svg.DescendantsAndSelf().Attributes(), attribute => attribute.Name.LocalName is "style" or "id" or "onclick");
    }

    /// <summary>Probe 1 has 17 readings and 16 lines; probe 2 has 13 readings in two runs of 6 and 7, so 5 and 6 lines.</summary>
    [Fact]
    public void Lines_lead_from_reading_to_reading_and_never_over_a_gap()
    {
        var svg = Svg(RecordSamples.Cooking);

        var curve = (string)svg.Elements().Single(element => (string?)element.Attribute("class") == "curve").Attribute("d")!;
        Assert.Equal(16 + 5 + 6, curve.Split('M').Length - 1);
        Assert.Equal(17 + 1, svg.Elements().Count(element => element.Name.LocalName == "circle")); // one more in the legend
        Assert.Single(svg.Elements(), element => (string?)element.Attribute("class") == "gap");
    }

    /// <summary>A reading halfway in time stands halfway between its neighbours, and hotter stands higher.</summary>
    [Fact]
    public void Readings_stand_where_their_time_and_their_temperature_put_them()
    {
        var dots = Svg(RecordSamples.Cooking).Elements().Where(element => element.Name.LocalName == "circle").Take(17)
            .Select(dot => (X: Number(dot, "cx"), Y: Number(dot, "cy"))).ToList();

        for (var i = 1; i < 16; i++)
        {
            AssertNear((dots[i - 1].X + dots[i + 1].X) / 2, dots[i].X);
            AssertNear((dots[i - 1].Y + dots[i + 1].Y) / 2, dots[i].Y);
            Assert.True(dots[i].X > dots[i - 1].X && dots[i].Y < dots[i - 1].Y);
        }
    }

    /// <summary>The shading of an hour and a quarter is as wide as five quarter hours.</summary>
    [Fact]
    public void A_gap_is_shaded_as_long_as_it_was()
    {
        var svg = Svg(RecordSamples.Cooking);
        var dots = svg.Elements().Where(element => element.Name.LocalName == "circle").Take(17).Select(dot => Number(dot, "cx")).ToList();
        var gap = svg.Elements().Single(element => (string?)element.Attribute("class") == "gap");

        AssertNear(dots[5], Number(gap, "x"));
        AssertNear(dots[10] - dots[5], Number(gap, "width"));
    }

    [Fact]
    public void Limits_of_cooling_end_where_the_temperature_has_to_be_reached()
    {
        var svg = Svg(RecordSamples.Chilling);

        var mark = (string)svg.Elements().Single(element => (string?)element.Attribute("class") == "limit").Attribute("d")!;
        Assert.Equal(4, mark.Split('M').Length - 1); // two level lines, each with a bar at its end
        foreach (var words in new[] { "80 °F by 2:30 PM", "40 °F by 7:30 PM" })
            Assert.Contains(svg.Elements(), element => element.Name.LocalName == "text" && element.Value == words);
    }

    /// <summary>Charts from ten minutes to nine days, begun at all times of the day: times and days stand under the plot, at its right edge too.</summary>
    [Fact]
    public void No_label_leaves_the_picture()
    {
        var begun = new DateTimeOffset(2026, 12, 7, 0, 0, 0, TimeSpan.FromHours(-6));
        var atTheEdge = 0;
        foreach (var minutes in new[] { 10, 45, 60, 240, 300, 720, 1440, 4320, 12960 })
        {
            for (var start = 0; start < 1440; start += 60)
            {
                var (from, to) = (begun.AddMinutes(start), begun.AddMinutes(start + minutes));
                var chart = new ProbeChart(
                    "Chilling", [new ProbeChart.Probe(1, [new ProbeChart.Point(from, 215m), new ProbeChart.Point(to, 39m)])], [], [new ProbeChart.Mark(40, "40 °F by 12:00 PM", from, to)]);
                foreach (var label in Svg(chart).Elements().Where(element => element.Name.LocalName == "text"))
                {
                    var (left, right) = LabelWidth.Ends(label);
                    Assert.True(left >= 0 && right <= 640, $"{label.Value} of {minutes} min stands from {left:0.0} to {right:0.0}");
                    atTheEdge += right > 600 ? 1 : 0;
                }
            }
        }

        Assert.True(atTheEdge > 100);
    }

    [Fact]
    public void One_reading_alone_and_none_at_all_are_drawn_without_a_fault()
    {
        var at = new DateTimeOffset(2026, 12, 7, 7, 30, 0, TimeSpan.FromHours(-6));

        Assert.Contains("circle", ProbeChartPicture.Svg(new ProbeChart("Cooking", [new ProbeChart.Probe(1, [new ProbeChart.Point(at, 45m)])], [], [])), StringComparison.Ordinal);
        Assert.Equal("", ProbeChartPicture.Svg(new ProbeChart("Cooking", [new ProbeChart.Probe(1, [])], [], [])));
    }

    /// <summary>Figures are printed to a hundredth of a pixel, so that sums of them are off by a little.</summary>
    private static void AssertNear(decimal expected, decimal found) => Assert.InRange(found, expected - 0.03m, expected + 0.03m);

    private static decimal Number(XElement element, string name) => decimal.Parse((string)element.Attribute(name)!, CultureInfo.InvariantCulture);
}
