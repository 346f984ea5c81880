using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Xunit;
using ZXing.Common;
using ZXing.QrCode.Internal;

namespace ProcessorDesk.Paper.Tests.Pictures;

public sealed partial class CodePictureTests
{
    private const string Link = "HTTPS://DESK.EXAMPLE.COM/OWNER/1042-7K2M9QXA4RT0BC3D";
    private const int Quiet = 4;

    [Fact]
    public void A_reader_that_shares_no_code_with_the_writer_reads_it()
    {
        var (side, dark) = Modules(CodePicture.Svg(Link, "Code"));
        var symbol = new BitMatrix(side - 2 * Quiet);
        foreach (var (column, row) in dark)
            symbol[column - Quiet, row - Quiet] = true;

        Assert.Equal(Link, new Decoder().decode(symbol, null).Text);
    }

    /// <summary>
    /// 52 signs in alphanumeric mode at level Q fit version 4, 33 modules wide, which holds 67 (ISO/IEC 18004, table 7); as bytes they
    /// would need version 5, which holds 60.
    /// </summary>
    [Fact]
    public void Capitals_make_the_smaller_symbol()
    {
        Assert.Equal(33 + 2 * Quiet, Modules(CodePicture.Svg(Link, "Code")).Side);
        Assert.Equal(37 + 2 * Quiet, Modules(CodePicture.Svg(Link.ToLowerInvariant(), "Code")).Side);
    }

    [Fact]
    public void It_is_an_image_with_a_title_dark_on_light_and_without_style_or_script()
    {
        var svg = XElement.Parse(CodePicture.Svg(Link, "Code of the link of job 1042"));

        Assert.Equal("img", (string?)svg.Attribute("role"));
        Assert.Equal("Code of the link of job 1042", svg.Elements().First().Value);
        Assert.Equal(["title", "rect", "path"], svg.Elements().Select(element => element.Name.LocalName));
        Assert.Equal(["#fff", "#000"], svg.Elements().Skip(1).Select(element => (string?)element.Attribute("fill")));
        Assert.DoesNotContain(svg.DescendantsAndSelf().Attributes(), attribute => attribute.Name.LocalName is "style" or "id");
    }

    private static (int Side, IReadOnlyList<(int Column, int Row)> Dark) Modules(string text)
    {
        var svg = XElement.Parse(text);
        var side = int.Parse(((string)svg.Attribute("viewBox")!).Split(' ')[2], CultureInfo.InvariantCulture);
        var path = (string)svg.Elements().Single(element => element.Name.LocalName == "path").Attribute("d")!;
        int Number(Match match, string group) => int.Parse(match.Groups[group].Value, CultureInfo.InvariantCulture);
        return (side, [.. Run().Matches(path).SelectMany(run => Enumerable.Range(Number(run, "column"), Number(run, "length")).Select(column => (column, Number(run, "row"))))]);
    }

    [GeneratedRegex(@"M(?<column>\d+) (?<row>\d+)h(?<length>\d+)v1h-\k<length>z")]
    private static partial Regex Run();
}
