using ProcessorDesk.Paper.Tests.Cast;
using ProcessorDesk.Paper.Tests.Rendering;
using Xunit;

namespace ProcessorDesk.Paper.Tests.Pickup;

public sealed class PickupSummaryTests
{
    [Fact]
    public void It_says_not_for_sale_high_enough_and_why()
    {
        using var pdf = new RenderedPdf(PickupSummary.Draw([PickupSamples.Ordinary]));

        PaperChecks.SaysNotForSale(pdf, pdf.Pages[0]);
        var text = string.Join(' ', pdf.Pages[0].Words.Select(word => word.Text));
        foreach (var said in new[] { "Custom processed for its owner", "not inspected", "Keep frozen", "Cook thoroughly" })
            Assert.Contains(said, text, StringComparison.Ordinal);
    }

    /// <summary>The letters are set 29 points high (29/72 × 25.4 = 10.23 mm): the measure by pixels agrees to a dot or two of 300 to the inch.</summary>
    [Fact]
    public void The_measured_height_is_the_height_that_was_set()
    {
        using var pdf = new RenderedPdf(PickupSummary.Draw([PickupSamples.Ordinary]));

        var word = pdf.Pages[0].Words.Single(word => word.Text == "SALE");
        Assert.InRange(CapHeights.LowestLetter(pdf, pdf.Pages[0], word), 10.23 - 0.17, 10.23 + 0.17);
    }

    [Fact]
    public void It_lists_what_was_handed_over_and_holds_the_code()
    {
        using var pdf = new RenderedPdf(PickupSummary.Draw([PickupSamples.Ordinary]));

        PaperChecks.HoldsTheCode(pdf, pdf.Pages[0], Samples.Code);
        foreach (var said in new[] { "34 packs", "33.40 lb", "Antlers", "D3Z-55K", "Together 68.50 lb", "Received: Rosa Lindqvist", "Nothing: this is everything." })
            Assert.Contains(said, pdf.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("not handed over yet", pdf.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("Handed over before", pdf.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Owner_and_shop_have_a_copy_each_and_only_the_owners_says_how_to_cook()
    {
        using var pdf = new RenderedPdf(PickupSummary.Draw([PickupSamples.Second]));

        var (owners, shops) = Copies(pdf);
        Assert.Equal((2, 1), (owners.Count, shops.Count));
        Assert.Contains("Keeping it", Said(owners), StringComparison.Ordinal);
        Assert.DoesNotContain("Keeping it", Said(shops), StringComparison.Ordinal);
        PaperChecks.HoldsTheCode(pdf, shops[0], Samples.Code);
    }

    [Fact]
    public void Both_copies_say_what_left_now_what_left_before_and_what_is_still_to_come_and_why()
    {
        using var pdf = new RenderedPdf(PickupSummary.Draw([PickupSamples.Second]));

        var (owners, shops) = Copies(pdf);
        foreach (var copy in new[] { Said(owners), Said(shops) })
        {
            var order = new[]
            {
                "Ivo Lindqvist", "number 2", "Handed over now", "Box 2 of 4", "Smoked ring sausage, 34 packs", "B1X-94T", "33.40 lb", "Box 3 of 4", "Summer sausage, 12 pieces", "C2Y-31W", "Antlers, 1",
                "Together 2 boxes, 53.50 lb", "Still to come: not handed over yet", "Box 4 of 4: dried sausage, about 6 lb", "Drying; about Fri 22 Jan 2027", "Hide", "At the tannery",
                "Handed over before", "Fri 4 Dec 2026, taken by Ivo Lindqvist", "Backstrap steaks, 8 packs", "E4A-60M", "9.40 lb", "Heart, 1", "was told what is still to come", "Received: Ivo Lindqvist for Rosa Lindqvist",
            };
            var at = 0;
            foreach (var said in order)
            {
                var found = copy.IndexOf(said, at, StringComparison.Ordinal);
                Assert.True(found >= 0, $"{said} is missing or out of its place.");
                at = found;
            }
        }
    }

    /// <summary>White letters on black: what is missing cannot be overlooked on either copy.</summary>
    [Fact]
    public void What_is_still_to_come_stands_under_a_black_bar_on_both_copies()
    {
        using var pdf = new RenderedPdf(PickupSummary.Draw([PickupSamples.Second]));

        var pages = pdf.Pages.Where(page => page.Words.Any(word => word.Text == "yet")).ToList();
        Assert.Equal(2, pages.Count);
        foreach (var page in pages)
        {
            var word = page.Words.Single(word => word.Text == "yet").Letters();
            using var bitmap = pdf.Render(page.Number, 150);
            var pixels = new Pixels(bitmap);
            var y = (int)((word.Top + word.Bottom) / 2 / 72 * 150);
            Assert.All(Enumerable.Range((int)((word.Right + 4) / 72 * 150), 300), x => Assert.True(pixels.Inked(x, y)));
        }
    }

    /// <summary>USDA cold food storage chart; USDA FSIS safe minimum internal temperatures.</summary>
    [Theory]
    [InlineData("Ground meat", "3–4 months", "1–2 days")]
    [InlineData("Steaks", "6–12 months", "3–5 days")]
    [InlineData("Chops", "4–6 months", "3–5 days")]
    [InlineData("Roasts", "4–12 months", "3–5 days")]
    [InlineData("Raw sausage", "1–2 months", "1–2 days")]
    [InlineData("Smoked links", "1–2 months", "7 days")]
    [InlineData("Jerky and hard sausage", "1–2 months", "2–3 weeks")]
    [InlineData("Bacon", "1 month", "7 days")]
    [InlineData("Ground meat and sausage, and all game", "", "160 °F")]
    [InlineData("Steaks, chops and roasts of beef, pork, lamb", "145 °F", "3 minutes of rest")]
    [InlineData("Anything with poultry in it", "", "165 °F")]
    public void Storage_times_and_cooking_temperatures_are_the_published_ones(string what, string first, string second)
    {
        using var pdf = new RenderedPdf(PickupSummary.Draw([PickupSamples.Ordinary]));

        Assert.Contains(pdf.Text.Split('\n'), line =>
            line.TrimStart().StartsWith(what, StringComparison.Ordinal) && line.Contains(first, StringComparison.Ordinal) && line.TrimEnd().EndsWith(second, StringComparison.Ordinal));
    }

    [Fact]
    public void Only_game_is_told_to_cook_all_of_it_hotter()
    {
        using var game = new RenderedPdf(PickupSummary.Draw([PickupSamples.Ordinary]));
        using var hog = new RenderedPdf(PickupSummary.Draw([PickupSamples.Ordinary with { IsGame = false }]));

        Assert.Contains("Yours is game: all of it to 160 °F", game.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("Yours is game", hog.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Sixteen_boxes_six_hand_overs_and_another_collector_are_all_on_both_copies()
    {
        using var pdf = new RenderedPdf(PickupSummary.Draw([PickupSamples.Extreme]));

        var (owners, shops) = Copies(pdf);
        foreach (var copy in new[] { Said(owners), Said(shops) })
        {
            for (var i = 1; i <= 16; i++)
                Assert.Contains($"Box {i} of 118", copy, StringComparison.Ordinal);
            for (var i = 1; i <= 12; i++)
                Assert.Contains($"Dried sausage {i},", copy, StringComparison.Ordinal);
            Assert.Equal(6, copy.Split("Fri 4 Dec 2026").Length - 1);
            Assert.Contains($"Received: {Samples.LongWord}", copy, StringComparison.Ordinal);
        }

        var page = Assert.Single(pdf.Pages, page => page.Words.Any(word => word.Text == "SALE"));
        PaperChecks.SaysNotForSale(pdf, page);
    }

    private static (IReadOnlyList<PdfPage> Owners, IReadOnlyList<PdfPage> Shops) Copies(RenderedPdf pdf)
    {
        var shops = pdf.Pages.ToList().FindIndex(page => Said([page]).Contains("shop's copy", StringComparison.Ordinal));
        Assert.True(shops > 0, "There is no shop's copy behind the owner's.");
        Assert.Contains("owner's copy", Said([pdf.Pages[0]]), StringComparison.Ordinal);
        return ([.. pdf.Pages.Take(shops)], [.. pdf.Pages.Skip(shops)]);
    }

    private static string Said(IReadOnlyList<PdfPage> pages) => string.Join(' ', pages.SelectMany(page => page.Words).Select(word => word.Text));
}
