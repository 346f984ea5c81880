using ProcessorDesk.Paper.Tests.Cast;
using ProcessorDesk.Paper.Tests.Rendering;
using Xunit;

namespace ProcessorDesk.Paper.Tests.CutSheets;

public sealed class CutSheetTests
{
    [Fact]
    public void An_ordinary_order_of_two_deer_fits_on_one_letter_page()
    {
        using var pdf = new RenderedPdf(CutSheet.Draw([LetterSamples.Cut]));

        var page = Assert.Single(pdf.Pages);
        Assert.Equal((8.5 * 72, 11.0 * 72), (page.Width, page.Height));
        PaperChecks.HoldsTheCode(pdf, page, Samples.Code);
    }

    [Fact]
    public void It_says_its_revision_and_when_it_was_printed()
    {
        using var pdf = new RenderedPdf(CutSheet.Draw([LetterSamples.Cut]));

        Assert.Contains("revision 2, printed Sat 28 Nov 2026, 7:05 AM", pdf.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_instruction_has_a_box_to_tick()
    {
        using var pdf = new RenderedPdf(CutSheet.Draw([LetterSamples.Cut]));
        using var bitmap = pdf.Render(0, 150);
        var pixels = new Pixels(bitmap);

        foreach (var first in new[] { "Backstrap", "Tenderloin", "Hind", "Front", "Neck", "Flank", "Glands", "Bloodshot", "Hair", "Bone", "Wound" })
        {
            var word = pdf.Pages[0].Words.First(word => word.Text == first).Letters();
            var y = (int)((word.Top + word.Bottom) / 2 / 72 * 150);
            var (from, to) = ((int)((word.Left - 36) / 72 * 150), (int)((word.Left - 2) / 72 * 150));
            var sides = Enumerable.Range(from, to - from).Count(x => !pixels.Inked(x, y) && pixels.Inked(x + 1, y));
            Assert.Equal(2, sides);
        }
    }

    [Fact]
    public void Instructions_are_in_large_words()
    {
        using var pdf = new RenderedPdf(CutSheet.Draw([LetterSamples.Cut]));

        var word = pdf.Pages[0].Words.First(word => word.Text == "Backstrap");
        // 14 points: the reader's box is 1.34 of the size.
        Assert.True(word.Bottom - word.Top > 18);
    }

    [Fact]
    public void Holds_come_first_and_no_pork_cannot_be_missed()
    {
        using var pdf = new RenderedPdf(CutSheet.Draw([LetterSamples.CutExtreme]));

        var first = pdf.Pages[0].Words;
        Assert.Equal(2, first.Count(word => word.Text == "HOLD:"));
        var cut = first.First(word => word.Text == "Backstrap");
        Assert.All(first.Where(word => word.Text == "HOLD:"), hold => Assert.True(hold.Bottom < cut.Top));
        Assert.Contains("NO PORK", pdf.Text, StringComparison.Ordinal);

        using var plain = new RenderedPdf(CutSheet.Draw([LetterSamples.Cut]));
        Assert.DoesNotContain("NO PORK", plain.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Twelve_asks_three_animals_and_eighteen_lugs_are_all_there()
    {
        using var pdf = new RenderedPdf(CutSheet.Draw([LetterSamples.CutExtreme]));

        var words = pdf.Pages.SelectMany(page => page.Words).Select(word => word.Text).ToList();
        Assert.Equal(12, words.Count(word => word == "Jalapeño"));
        Assert.Equal(18, words.Count(word => word == "Gross"));
        Assert.Equal(18, words.Count(word => word == "Net"));
        Assert.Equal(3, words.Count(word => word == "antlerless,"));
        Assert.Equal(9, LetterSamples.CutExtreme.Checklist.Count);
        Assert.Contains("binSecond", string.Concat(words).Replace("removalbin", "bin", StringComparison.Ordinal), StringComparison.Ordinal);
    }
}
