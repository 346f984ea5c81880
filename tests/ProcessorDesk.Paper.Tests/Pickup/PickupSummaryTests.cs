using ProcessorDesk.Paper.Tests.Cast;
using ProcessorDesk.Paper.Tests.Rendering;
using Xunit;

namespace ProcessorDesk.Paper.Tests.Pickup;

public sealed class PickupSummaryTests
{
    [Fact]
    public void It_says_not_for_sale_high_enough_and_why()
    {
        using var pdf = new RenderedPdf(PickupSummary.Draw([LetterSamples.Pickup]));

        PaperChecks.SaysNotForSale(pdf, pdf.Pages[0]);
        var text = string.Join(' ', pdf.Pages[0].Words.Select(word => word.Text));
        foreach (var said in new[] { "Custom processed for its owner", "not inspected", "Keep frozen", "Cook thoroughly" })
            Assert.Contains(said, text, StringComparison.Ordinal);
    }

    /// <summary>The letters are set 29 points high (29/72 × 25.4 = 10.23 mm): the measure by pixels agrees to a dot or two of 300 to the inch.</summary>
    [Fact]
    public void The_measured_height_is_the_height_that_was_set()
    {
        using var pdf = new RenderedPdf(PickupSummary.Draw([LetterSamples.Pickup]));

        var word = pdf.Pages[0].Words.Single(word => word.Text == "SALE");
        Assert.InRange(CapHeights.LowestLetter(pdf, pdf.Pages[0], word), 10.23 - 0.17, 10.23 + 0.17);
    }

    [Fact]
    public void It_lists_what_was_handed_over_and_what_is_still_to_come()
    {
        using var pdf = new RenderedPdf(PickupSummary.Draw([LetterSamples.Pickup]));

        PaperChecks.HoldsTheCode(pdf, pdf.Pages[0], Samples.Code);
        foreach (var said in new[] { "34 packs", "33.40 lb", "Antlers", "Plain ground, 38.5 lb, about Mon 21 Dec 2026", "Received: Rosa Lindqvist" })
            Assert.Contains(said, pdf.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void With_nothing_to_come_it_says_so()
    {
        using var pdf = new RenderedPdf(PickupSummary.Draw([LetterSamples.Pickup with { StillToCome = [] }]));

        Assert.Contains("Nothing: this is everything.", pdf.Text, StringComparison.Ordinal);
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
        using var pdf = new RenderedPdf(PickupSummary.Draw([LetterSamples.Pickup]));

        Assert.Contains(pdf.Text.Split('\n'), line =>
            line.TrimStart().StartsWith(what, StringComparison.Ordinal) && line.Contains(first, StringComparison.Ordinal) && line.TrimEnd().EndsWith(second, StringComparison.Ordinal));
    }

    [Fact]
    public void Only_game_is_told_to_cook_all_of_it_hotter()
    {
        using var game = new RenderedPdf(PickupSummary.Draw([LetterSamples.Pickup]));
        using var hog = new RenderedPdf(PickupSummary.Draw([LetterSamples.Pickup with { IsGame = false }]));

        Assert.Contains("Yours is game: all of it to 160 °F", game.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("Yours is game", hog.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Forty_boxes_and_another_collector_are_all_there()
    {
        using var pdf = new RenderedPdf(PickupSummary.Draw([LetterSamples.PickupExtreme]));

        for (var i = 1; i <= 40; i++)
            Assert.Contains($"Box {i}:", pdf.Text, StringComparison.Ordinal);
        Assert.Contains($"Received: {Samples.LongWord}", pdf.Text, StringComparison.Ordinal);
        var page = Assert.Single(pdf.Pages, page => page.Words.Any(word => word.Text == "SALE"));
        PaperChecks.SaysNotForSale(pdf, page);
    }
}
