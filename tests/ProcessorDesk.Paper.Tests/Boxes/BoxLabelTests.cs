using ProcessorDesk.Paper.Tests.Cast;
using ProcessorDesk.Paper.Tests.Rendering;
using Xunit;

namespace ProcessorDesk.Paper.Tests.Boxes;

public sealed class BoxLabelTests
{
    private static readonly BoxLabel[] s_all = [BoxSamples.Ordinary, BoxSamples.Named, BoxSamples.Extreme];

    public static TheoryData<LabelStock> Stocks => [.. Enum.GetValues<LabelStock>()];

    [Theory]
    [InlineData(LabelStock.FourBySix, 4.0, 6.0)]
    [InlineData(LabelStock.FourByTwo, 4.0, 2.0)]
    public void Each_label_has_a_page_of_its_stock(LabelStock stock, double wide, double high)
    {
        using var pdf = new RenderedPdf(BoxLabel.Draw(s_all, stock));

        Assert.Equal(s_all.Length, pdf.Pages.Count);
        Assert.All(pdf.Pages, page => Assert.Equal((wide * 72, high * 72), (page.Width, page.Height)));
    }

    /// <summary>9 CFR 316.16: letters of at least 3/8 in.</summary>
    [Theory]
    [MemberData(nameof(Stocks))]
    public void Not_for_sale_is_at_least_three_eighths_of_an_inch_high(LabelStock stock)
    {
        using var pdf = new RenderedPdf(BoxLabel.Draw(s_all, stock));

        Assert.All(pdf.Pages, page => PaperChecks.SaysNotForSale(pdf, page));
    }

    [Theory]
    [MemberData(nameof(Stocks))]
    public void The_symbol_holds_the_code_alone_with_a_quiet_zone_of_four(LabelStock stock)
    {
        using var pdf = new RenderedPdf(BoxLabel.Draw(s_all, stock));

        for (var i = 0; i < s_all.Length; i++)
            PaperChecks.HoldsTheCode(pdf, pdf.Pages[i], s_all[i].Code);
    }

    [Theory]
    [MemberData(nameof(Stocks))]
    public void It_says_what_is_in_the_box_and_what_to_do_with_it(LabelStock stock)
    {
        using var pdf = new RenderedPdf(BoxLabel.Draw([BoxSamples.Ordinary], stock));

        var text = string.Join(' ', pdf.Pages[0].Words.Select(word => word.Text));
        foreach (var said in new[]
        {
            "Smoked ring sausage, 12 packs", "Backstrap steaks, 4 packs", "24.10 lb", "Wed 9 Dec 2026", "Keep frozen", "Freezer 2, shelf B", "Box 2 of 4", "1042", "Cold Fork Custom Meats",
            "Custom processed for its owner, not inspected. Cook thoroughly.",
        })
            Assert.Contains(said, text, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Stocks))]
    public void The_owner_is_named_only_where_the_label_carries_the_name(LabelStock stock)
    {
        using var named = new RenderedPdf(BoxLabel.Draw([BoxSamples.Named], stock));
        using var unnamed = new RenderedPdf(BoxLabel.Draw([BoxSamples.Named with { Owner = "" }], stock));

        Assert.Contains("Rosa Lindqvist", named.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("Rosa", unnamed.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("Owner", unnamed.Text, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Stocks))]
    public void What_finds_no_room_is_counted_and_no_count_is_cut_off(LabelStock stock)
    {
        using var pdf = new RenderedPdf(BoxLabel.Draw([BoxSamples.Extreme], stock));

        var words = pdf.Pages[0].Words.Select(word => word.Text).ToList();
        var named = words.Count(word => word == "Kind");
        Assert.InRange(named, 2, 11);
        Assert.Contains($"and {12 - named} more", string.Join(' ', words), StringComparison.Ordinal);
        // "11 packs of 1/2 lb", "22 packs of 1/2 lb" and so on, each behind its name.
        for (var i = 1; i <= named; i++)
            Assert.Contains($"{i * 11} packs of 1/2 lb", string.Join(' ', words), StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Stocks))]
    public void Fields_that_are_all_far_too_long_stay_apart_and_inside(LabelStock stock)
    {
        var flood = Samples.Many("Wwwwwwwwww", 12);
        var label = new BoxLabel(flood, flood, flood, [.. Enumerable.Repeat(new ContentLine(flood, flood), 30)], flood, Samples.Day, flood, flood, Samples.Code);

        using var pdf = new RenderedPdf(BoxLabel.Draw([label], stock));

        PaperChecks.NoWordsOverlap(pdf);
        PaperChecks.EverythingIsInside(pdf, 9);
        PaperChecks.SaysNotForSale(pdf, pdf.Pages[0]);
        PaperChecks.HoldsTheCode(pdf, pdf.Pages[0], Samples.Code);
    }

    [Fact]
    public void No_label_is_refused() => Assert.Throws<ArgumentException>(() => BoxLabel.Draw([], LabelStock.FourBySix));
}
