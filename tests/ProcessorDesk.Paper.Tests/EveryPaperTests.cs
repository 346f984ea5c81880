using ProcessorDesk.Paper.Tests.Cast;
using ProcessorDesk.Paper.Tests.Rendering;
using Xunit;

namespace ProcessorDesk.Paper.Tests;

/// <summary>What holds for all papers, with ordinary content and with all a bad day brings.</summary>
public sealed class EveryPaperTests(PaperShelf shelf) : IClassFixture<PaperShelf>
{
    public static TheoryData<string> Papers => EveryPaper.Names;

    [Theory]
    [MemberData(nameof(Papers))]
    public void Everything_stands_inside_the_page_with_a_margin(string name)
    {
        var pdf = shelf[name];

        PaperChecks.EverythingIsInside(pdf, EveryPaper.Margin(name));
    }

    [Theory]
    [MemberData(nameof(Papers))]
    public void No_two_words_stand_on_each_other(string name)
    {
        var pdf = shelf[name];

        PaperChecks.NoWordsOverlap(pdf);
    }

    [Theory]
    [MemberData(nameof(Papers))]
    public void It_has_a_title_and_embeds_its_fonts(string name)
    {
        var pdf = shelf[name];

        Assert.Matches(@"Title:\s+\S", pdf.Info());
        Assert.NotEmpty(pdf.Fonts());
        Assert.All(pdf.Fonts(), font => Assert.Contains("OpenSans", font.Replace(" ", "", StringComparison.Ordinal), StringComparison.Ordinal));
        Assert.All(pdf.Fonts(), font => Assert.Matches(@"\byes yes (yes|no) ", font));
    }

    [Theory]
    [MemberData(nameof(Papers))]
    public void It_says_its_language(string name)
    {
        var text = System.Text.Encoding.Latin1.GetString(EveryPaper.Draw(name));

        Assert.Contains("/Lang(en-US)", text.Replace(" ", "", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Fact]
    public void The_inspected_and_passed_words_are_never_printed()
    {
        Assert.NotEmpty(EveryPaper.Names);
        foreach (var row in (IEnumerable<object[]>)EveryPaper.Names)
        {
            var pdf = shelf[(string)row[0]];
            Assert.DoesNotContain("inspected and passed", pdf.Text, StringComparison.OrdinalIgnoreCase);
            Assert.DoesNotContain("prepared from inspected", pdf.Text, StringComparison.OrdinalIgnoreCase);
        }
    }
}
