using ProcessorDesk.Paper.Tests.Cast;
using ProcessorDesk.Paper.Tests.Rendering;
using ProcessorDesk.Trade.Curing;
using Xunit;

namespace ProcessorDesk.Paper.Tests.Kitchen;

public sealed class BatchSheetTests
{
    [Fact]
    public void It_says_whose_meat_it_is_how_it_is_made_and_holds_the_code_alone()
    {
        using var pdf = new RenderedPdf(BatchSheet.Draw([KitchenSamples.Ring]));

        PaperChecks.HoldsTheCode(pdf, pdf.Pages[0], Samples.Code);
        foreach (var said in new[]
        {
            "Cold Fork Custom Meats", "Smoked ring sausage", "Mon 7 Dec 2026", "version 3", "Sun 6 Dec 2026, 4:40 PM", "Own batch: one owner's meat alone", "Allergens: Soybeans",
            "At least 4 h at or under 40 °F", "Beef rounds, 40 mm", "Smoking and cooking", "Until both probes show 152 °F", "Chilling", "Finished weight", $"Page {pdf.Pages.Count} of {pdf.Pages.Count}",
        })
            Assert.Contains(said, pdf.Text, StringComparison.Ordinal);
        Assert.Contains(pdf.Text.Split('\n'), line => Has(line, "Rosa Lindqvist", "1042", "25.00 lb"));
        Assert.Contains("Together 37.14 lb green", pdf.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("Pooled", pdf.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("NO PORK", pdf.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Each_line_of_a_load_has_its_figures_a_box_and_two_lines_to_write_on()
    {
        using var pdf = new RenderedPdf(BatchSheet.Draw([KitchenSamples.Ring]));

        var page = PageOf(pdf, "CURE", "1");
        using var bitmap = pdf.Render(page.Number, 150);
        var pixels = new Pixels(bitmap);
        var load = KitchenSamples.Ring.Loads[0];
        (string First, string[] Figures)[] lines =
        [
            .. load.Meat.Select(meat => (meat.Owner.Split(' ')[0], new[] { meat.Lug, meat.Planned, meat.Then })),
            .. load.Ingredients.Select(line => (line.Name.Split(' ')[0], new[] { line.PoundsAndOunces, line.Grams, line.Then })),
        ];
        foreach (var (first, figures) in lines)
        {
            Assert.Contains(pdf.Text.Split('\n'), line => line.TrimStart().StartsWith(first, StringComparison.Ordinal) && Has(line, figures));
            var word = page.Words.First(word => word.Text == first).Letters();
            Assert.Equal(2, Edges(pixels, word, (word.Left - 30, word.Left - 2)));
            var initials = page.Words.First(word => word.Text == "Initials");
            Assert.True(IsLine(pixels, initials.Left, word.Bottom), $"{first}: there is no line for the initials.");
            var weighed = page.Words.First(word => word.Text == "Weighed");
            Assert.True(IsLine(pixels, weighed.Left, word.Bottom), $"{first}: there is no line for the weight.");
        }
    }

    [Fact]
    public void Where_the_lug_is_not_known_there_is_a_line_to_write_it_on()
    {
        using var known = new RenderedPdf(BatchSheet.Draw([KitchenSamples.Ring]));
        using var open = new RenderedPdf(BatchSheet.Draw([KitchenSamples.Fresh]));

        foreach (var (pdf, page, line) in new[] { (known, PageOf(known, "CURE", "1"), false), (open, open.Pages[0], true) })
        {
            var heads = page.Words.Single(word => word.Text == "Lug");
            var owner = page.Words.Last(word => word.Text == "Rosa").Letters();
            using var bitmap = pdf.Render(page.Number, 150);
            Assert.Equal(line, IsLine(new Pixels(bitmap), heads.Right - 24, owner.Bottom));
        }
    }

    /// <summary>9 CFR 424.21(c): 1/4 oz to 100 lb, which is 156.25 ppm.</summary>
    [Fact]
    public void The_cure_stands_in_a_frame_of_its_own_with_its_limit_the_source_and_a_second_weighing()
    {
        using var pdf = new RenderedPdf(BatchSheet.Draw([KitchenSamples.Ring]));

        foreach (var load in new[] { "1", "2" })
        {
            var page = PageOf(pdf, "CURE", load);
            var text = string.Join(' ', page.Words.Select(word => word.Text));
            foreach (var said in new[]
            {
                $"CURE · Load {load} of 2", "for 17.86 lb of meat and fat", "Pink curing salt", "6.25 % nitrite",
                "155.84 ppm of nitrite", "The limit is 156.25 ppm (1/4 oz per 100 lb)", "Source: 9 CFR 424.21(c), 2015 edition", "Never use a spoon", "Weighed again by",
            })
                Assert.Contains(said, text, StringComparison.Ordinal);

            Assert.Equal(2, pdf.Text.Split('\n').Count(line => Has(line, "Pink curing salt", "0.71 oz", "20.2 g", "18.57 lb")));
            var inside = Framed(pdf, page);
            Assert.Contains(inside, word => word.Text == "Pink");
            Assert.Contains(inside, word => word.Text == "spoon");
            Assert.DoesNotContain(inside, word => word.Text is "Salt" or "Water," or "Mixed");
        }
    }

    [Fact]
    public void The_amount_of_cure_is_the_largest_figure_of_a_load()
    {
        using var pdf = new RenderedPdf(BatchSheet.Draw([KitchenSamples.Ring]));

        var figures = PageOf(pdf, "CURE", "1").Words.Where(word => char.IsAsciiDigit(word.Text[0])).ToList();
        Assert.True(figures.Count > 20);
        Assert.Equal("20.2", figures.MaxBy(word => word.Bottom - word.Top)!.Text);
    }

    [Fact]
    public void Every_caution_for_curing_salts_is_on_a_cured_batch_and_none_on_another()
    {
        using var cured = new RenderedPdf(BatchSheet.Draw([KitchenSamples.Ring]));
        using var fresh = new RenderedPdf(BatchSheet.Draw([KitchenSamples.Fresh]));

        Assert.NotEmpty(CuringCautions.All);
        // The cautions stand in two columns, so they are looked for by the words of one column.
        var words = string.Join(' ', cured.Pages[0].Words.OrderBy(word => word.Left > cured.Pages[0].Width / 2).ThenBy(word => Math.Round(word.Top / 4)).ThenBy(word => word.Left).Select(word => word.Text));
        Assert.All(CuringCautions.All, caution => Assert.Contains(caution.Text, words, StringComparison.Ordinal));
        Assert.Contains("21 CFR 170.60", words, StringComparison.Ordinal);
        Assert.DoesNotContain("cure", fresh.Text, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("Allergens: none named in this formula.", fresh.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_cured_batch_without_its_cure_is_not_printed()
    {
        var ring = KitchenSamples.Ring;

        Assert.Throws<ArgumentException>(() => BatchSheet.Draw([ring with { Loads = [ring.Loads[0], ring.Loads[1] with { Cure = null }] }]));
        Assert.Throws<ArgumentException>(() => BatchSheet.Draw([ring with { Loads = [ring.Loads[0] with { Cure = new BatchCure([], []) }] }]));
        Assert.Throws<ArgumentException>(() => BatchSheet.Draw([ring with { IsCured = false }]));
        Assert.Throws<ArgumentException>(() => BatchSheet.Draw([ring with { Loads = [] }]));
        Assert.Throws<ArgumentException>(() => BatchSheet.Draw([]));
    }

    [Fact]
    public void A_load_that_fits_a_page_is_not_torn_over_two()
    {
        using var pdf = new RenderedPdf(BatchSheet.Draw([KitchenSamples.Ring]));

        for (var load = 1; load <= 2; load++)
        {
            var page = PageOf(pdf, "CURE", $"{load}");
            Assert.Contains(page.Words, word => word.Text == "Salt");
            Assert.Contains(page.Words, word => word.Text == "Rosa");
            Assert.Contains(page.Words, word => word.Text == "Mixed");
        }
    }

    [Fact]
    public void Rows_stay_whole_and_heads_stand_again_however_many_there_are()
    {
        using var pdf = new RenderedPdf(BatchSheet.Draw([KitchenSamples.Extreme]));

        var words = pdf.Pages.SelectMany(page => page.Words).ToList();
        Assert.Equal(2 * 13, words.Count(word => word.Text == "mikhailovnaovskaya-Kiss,"));
        Assert.Equal(2 * 16, words.Count(word => word.Text == "Ingredient"));
        foreach (var page in pdf.Pages)
        {
            Assert.Equal(page.Words.Count(word => word.Text == "Ingredient"), page.Words.Count(word => word.Text == "diced"));
            Assert.True(page.Words.All(word => word.Text != "Ingredient") || page.Words.Any(word => word.Text == "Grams"), $"Page {page.Number + 1} has no heads.");
        }

        Assert.Contains("Pooled batch: each of these owners agreed", pdf.Text, StringComparison.Ordinal);
        Assert.Contains("NO PORK", pdf.Text, StringComparison.Ordinal);
        Assert.Equal(2, pdf.Pages[0].Words.Count(word => word.Text == "HOLD:"));
    }

    [Fact]
    public void A_log_has_as_many_lines_as_it_asks_for()
    {
        using var pdf = new RenderedPdf(BatchSheet.Draw([KitchenSamples.Ring]));

        var page = pdf.Pages.Single(page => page.Words.Any(word => word.Text == "Chamber,"));
        using var bitmap = pdf.Render(page.Number, 150);
        var pixels = new Pixels(bitmap);
        var head = page.Words.First(word => word.Text == "Chamber,");
        var next = page.Words.Single(word => word.Text == "Chilling");
        var x = (int)((head.Left + 30) / 72 * 150);
        var (from, to) = ((int)((head.Bottom + 6) / 72 * 150), (int)((next.Top - 2) / 72 * 150));
        Assert.Equal(KitchenSamples.Ring.After.Logs[0].Lines, Enumerable.Range(from, to - from).Count(y => !pixels.Inked(x, y) && pixels.Inked(x, y + 1)));
    }

    private static bool Has(string line, params string[] all) => all.All(part => line.Contains(part, StringComparison.Ordinal));

    private static PdfPage PageOf(RenderedPdf pdf, string word, string load) =>
        pdf.Pages.Single(page => string.Join(' ', page.Words.Select(one => one.Text)).Contains($"{word} · Load {load} of", StringComparison.Ordinal));

    private static int Edges(Pixels pixels, PdfWord word, (double From, double To) across)
    {
        var y = (int)((word.Top + word.Bottom) / 2 / 72 * 150);
        var (from, to) = ((int)(across.From / 72 * 150), (int)(across.To / 72 * 150));
        return Enumerable.Range(from, to - from).Count(x => !pixels.Inked(x, y) && pixels.Inked(x + 1, y));
    }

    /// <summary>Twenty points of unbroken ink at most four points above or six below the baseline.</summary>
    private static bool IsLine(Pixels pixels, double left, double baseline)
    {
        var (from, length) = ((int)(left / 72 * 150) + 2, (int)(20.0 / 72 * 150));
        return Enumerable.Range((int)((baseline - 6) / 72 * 150), 20).Any(y => Enumerable.Range(from, length).All(x => pixels.Inked(x, y)));
    }

    /// <summary>The words between the frame that begins with the black bar and the next line across the page.</summary>
    private static List<PdfWord> Framed(RenderedPdf pdf, PdfPage page)
    {
        using var bitmap = pdf.Render(page.Number, 150);
        var pixels = new Pixels(bitmap);
        var (left, right) = ((int)(30.0 / 72 * 150) + 3, (int)((page.Width - 30) / 72 * 150) - 3);
        var top = page.Words.Single(word => word.Text == "CURE").Top;
        bool Across(int y) => Enumerable.Range(left, right - left).All(x => pixels.Inked(x, y));
        var below = Enumerable.Range((int)((top + 26) / 72 * 150), bitmap.Height).First(Across);
        var sides = Enumerable.Range((int)((top + 26) / 72 * 150), below - (int)((top + 26) / 72 * 150)).ToList();
        Assert.All(sides, y => Assert.True(pixels.Inked((int)(30.0 / 72 * 150), y) && pixels.Inked((int)((page.Width - 30) / 72 * 150), y), "The frame is open."));
        return [.. page.Words.Where(word => word.Top >= top - 1 && word.Bottom <= below / 150.0 * 72)];
    }
}
