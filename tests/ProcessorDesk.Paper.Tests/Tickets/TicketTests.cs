using ProcessorDesk.Paper.Tests.Cast;
using ProcessorDesk.Paper.Tests.Rendering;
using Xunit;

namespace ProcessorDesk.Paper.Tests.Tickets;

public sealed class TicketTests
{
    public static TheoryData<string> Kinds => ["carcass", "lug", "batch", "part"];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void A_ticket_is_four_by_six_inches_and_each_has_a_page(string kind)
    {
        var (draw, codes) = Of(kind);

        using var pdf = new RenderedPdf(draw());

        Assert.Equal(codes.Count, pdf.Pages.Count);
        Assert.All(pdf.Pages, page => Assert.Equal((4.0 * 72, 6.0 * 72), (page.Width, page.Height)));
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Not_for_sale_is_at_least_three_eighths_of_an_inch_high(string kind)
    {
        using var pdf = new RenderedPdf(Of(kind).Draw());

        foreach (var page in pdf.Pages)
            PaperChecks.SaysNotForSale(pdf, page);
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void The_symbol_holds_the_code_alone_and_the_code_stands_beside_it(string kind)
    {
        var (draw, codes) = Of(kind);

        using var pdf = new RenderedPdf(draw());

        for (var i = 0; i < codes.Count; i++)
            PaperChecks.HoldsTheCode(pdf, pdf.Pages[i], codes[i]);
    }

    [Fact]
    public void A_carcass_ticket_says_what_agencies_ask()
    {
        using var pdf = new RenderedPdf(CarcassTicket.Draw([TicketSamples.Carcass]));

        var words = pdf.Pages[0].Words.Select(word => word.Text).ToList();
        foreach (var said in new[] { "Rosa", "Lindqvist", "AB-204417", "White-tail", "buck", "1042", "128.5", "27", "Nov", "2026", "Field-dressed" })
            Assert.Contains(said, words);
    }

    [Fact]
    public void A_long_name_and_a_long_tag_are_printed_in_full()
    {
        using var pdf = new RenderedPdf(CarcassTicket.Draw([TicketSamples.CarcassExtreme]));

        var text = string.Concat(pdf.Pages[0].Words.Select(word => word.Text));
        Assert.Contains(Samples.LongName.Replace(" ", "", StringComparison.Ordinal), text, StringComparison.Ordinal);
        Assert.Contains(TicketSamples.CarcassExtreme.TagId, text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_hold_stands_in_words_in_a_hatched_box()
    {
        using var free = new RenderedPdf(CarcassTicket.Draw([TicketSamples.Carcass]));
        using var held = new RenderedPdf(CarcassTicket.Draw([TicketSamples.CarcassOnHold]));

        Assert.DoesNotContain("HOLD", free.Text, StringComparison.Ordinal);
        var hold = Assert.Single(held.Pages[0].Words, word => word.Text == "HOLD:");
        using var bitmap = held.Render(0, 150);
        var pixels = new Pixels(bitmap);
        // Across the hatch, left of the word, ink and paper change many times.
        var (y, from, to) = ((int)(hold.Bottom / 72 * 150), (int)((hold.Left - 34) / 72 * 150), (int)((hold.Left - 6) / 72 * 150));
        var changes = Enumerable.Range(from, to - from).Count(x => pixels.Inked(x, y) != pixels.Inked(x + 1, y));
        Assert.True(changes >= 8, $"{changes} changes.");
    }

    [Fact]
    public void A_single_hold_is_printed_in_full_on_the_fullest_ticket()
    {
        using var pdf = new RenderedPdf(PartTicket.Draw([TicketSamples.PartExtreme]));

        var text = string.Join(' ', pdf.Pages[0].Words.Select(word => word.Text));
        Assert.Contains($"HOLD: {Samples.Pending.Reason} {Samples.Pending.Words}", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Holds_that_find_no_room_are_counted()
    {
        using var pdf = new RenderedPdf(CarcassTicket.Draw([TicketSamples.CarcassExtreme with { Holds = [.. Enumerable.Repeat(Samples.NoTag, 5)] }]));

        var text = string.Join(' ', pdf.Pages[0].Words.Select(word => word.Text));
        var boxes = pdf.Pages[0].Words.Count(word => word.Text == "HOLD:");
        Assert.InRange(boxes, 1, 4);
        Assert.Contains($"and {5 - boxes} more on hold", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Fields_that_are_all_far_too_long_never_run_into_the_code()
    {
        var flood = Samples.Many("Wwwwwwwwww", 12);
        var hold = new HoldNotice(flood, flood);

        using var pdf = new RenderedPdf(CarcassTicket.Draw([new CarcassTicket(flood, flood, flood, flood, flood, flood, flood, Samples.Day, flood, flood, Samples.Code, [hold, hold])]));
        using var part = new RenderedPdf(PartTicket.Draw([new PartTicket(flood, flood, flood, flood, flood, flood, flood, Samples.Day, Samples.Code, [hold])]));
        using var lug = new RenderedPdf(LugTicket.Draw([new LugTicket(flood, flood, flood, [flood, flood], flood, flood, Samples.Day, Samples.Code, [hold])]));

        foreach (var one in new[] { pdf, part, lug })
        {
            PaperChecks.NoWordsOverlap(one);
            PaperChecks.EverythingIsInside(one, 10);
            PaperChecks.HoldsTheCode(one, one.Pages[0], Samples.Code);
            Assert.Contains(one.Pages[0].Words, word => word.Text == "HOLD:");
        }
    }

    [Fact]
    public void A_lug_number_can_be_read_across_the_room()
    {
        using var pdf = new RenderedPdf(LugTicket.Draw([TicketSamples.Lug]));

        var number = Assert.Single(pdf.Pages[0].Words, word => word.Text == "14");
        Assert.True(CapHeights.LowestLetter(pdf, pdf.Pages[0], number) > 25, "Under 25 mm.");
    }

    [Fact]
    public void A_ticket_that_would_print_nothing_is_refused() =>
        Assert.Throws<ArgumentException>(() => LugTicket.Draw([]));

    private static (Func<byte[]> Draw, IReadOnlyList<string> Codes) Of(string kind)
    {
        CarcassTicket[] carcasses = [TicketSamples.Carcass, TicketSamples.CarcassOnHold, TicketSamples.CarcassExtreme];
        LugTicket[] lugs = [TicketSamples.Lug, TicketSamples.LugExtreme];
        PartTicket[] parts = [TicketSamples.Part, TicketSamples.PartExtreme];
        BatchTicket[] batches = [TicketSamples.Batch, TicketSamples.BatchExtreme];
        return kind switch
        {
            "carcass" => (() => CarcassTicket.Draw(carcasses), [.. carcasses.Select(ticket => ticket.Code)]),
            "lug" => (() => LugTicket.Draw(lugs), [.. lugs.Select(ticket => ticket.Code)]),
            "batch" => (() => BatchTicket.Draw(batches), [.. batches.Select(ticket => ticket.Code)]),
            "part" => (() => PartTicket.Draw(parts), [.. parts.Select(ticket => ticket.Code)]),
            _ => throw new ArgumentOutOfRangeException(nameof(kind)),
        };
    }
}
