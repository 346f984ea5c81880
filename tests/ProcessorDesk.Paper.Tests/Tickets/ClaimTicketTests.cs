using ProcessorDesk.Paper.Tests.Cast;
using ProcessorDesk.Paper.Tests.Rendering;
using Xunit;

namespace ProcessorDesk.Paper.Tests.Tickets;

public sealed class ClaimTicketTests
{
    [Fact]
    public void An_ordinary_claim_ticket_is_one_half_letter_page()
    {
        using var pdf = new RenderedPdf(ClaimTicket.Draw([TicketSamples.Claim]));

        var page = Assert.Single(pdf.Pages);
        Assert.Equal((5.5 * 72, 8.5 * 72), (page.Width, page.Height));
        PaperChecks.HoldsTheCode(pdf, page, Samples.Code);
    }

    [Fact]
    public void It_says_what_was_left_what_was_asked_and_when_it_is_ready()
    {
        using var pdf = new RenderedPdf(ClaimTicket.Draw([TicketSamples.Claim]));

        foreach (var said in new[]
        {
            "Rosa Lindqvist", "1042", "Fri 27 Nov 2026", "Fri 18 Dec 2026", "AB-204417", "AB-204418", "128.5 lb", "96.0 lb",
            "Smoked ring sausage", "20 lb finished", "the rest", "$50.00 paid in cash", "antlers, heart", "Expect about 107.8 lb",
        })
            Assert.Contains(said, pdf.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void It_holds_the_owners_link_beside_the_shops_code_where_the_shop_gives_one_out()
    {
        using var pdf = new RenderedPdf(ClaimTicket.Draw([TicketSamples.ClaimWithLink]));

        foreach (var dpi in new[] { 150, 203, 300 })
        {
            Assert.Equal(Samples.Code, Assert.Single(QrReading.On(pdf, 0, dpi, every: false, to: 0.4)).Payload);
            Assert.Equal("HTTPS://DESK.EXAMPLE.COM/OWNER/1042-7K2M9QXA4RT0BC3D", Assert.Single(QrReading.On(pdf, 0, dpi, every: false, from: 0.4)).Payload);
        }

        Assert.Contains("Follow it from home", pdf.Text, StringComparison.Ordinal);
        Assert.Single(pdf.Pages);
    }

    [Fact]
    public void Twelve_asks_and_six_terms_go_on_over_the_pages_with_nothing_lost()
    {
        using var pdf = new RenderedPdf(ClaimTicket.Draw([TicketSamples.ClaimExtreme]));

        Assert.True(pdf.Pages.Count > 1);
        for (var i = 1; i <= 12; i++)
            Assert.Contains($"Ask {i}:", pdf.Text, StringComparison.Ordinal);
        for (var i = 1; i <= 6; i++)
            Assert.Contains($"{i}. Whatever", pdf.Text, StringComparison.Ordinal);
        Assert.Contains($"Page {pdf.Pages.Count} of {pdf.Pages.Count}", pdf.Text, StringComparison.Ordinal);
        Assert.Contains("HOLD: Tag missing", pdf.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_tickets_in_one_file_count_their_own_pages()
    {
        using var pdf = new RenderedPdf(ClaimTicket.Draw([TicketSamples.Claim, TicketSamples.Claim with { Code = "B1X-94T" }]));

        Assert.Equal(2, pdf.Pages.Count);
        PaperChecks.HoldsTheCode(pdf, pdf.Pages[1], "B1X-94T");
        Assert.DoesNotContain("of 2", pdf.Text, StringComparison.Ordinal);
    }
}
