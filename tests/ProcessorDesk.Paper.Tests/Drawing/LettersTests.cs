using ProcessorDesk.Paper.Tests.Cast;
using ProcessorDesk.Paper.Tests.Rendering;
using Xunit;

namespace ProcessorDesk.Paper.Tests.Drawing;

/// <summary>Names of people from everywhere must print; what cannot print must show that something is missing.</summary>
public sealed class LettersTests
{
    [Theory]
    [InlineData("José Núñez")]
    [InlineData("Zoë Łukasiewicz")]
    [InlineData("Erdős Őrsi")]
    [InlineData("Ayşe Gülşen Çağlı")]
    [InlineData("Nguyễn Thị Hường")]
    [InlineData("Ольга Щербина")]
    [InlineData("Σοφία Παππά")]
    [InlineData("Đorđe Žižić")]
    [InlineData("Åse Bjørnæs")]
    [InlineData("O’Neill – Dæmon")]
    public void A_name_with_its_own_letters_is_printed_and_reads_back(string name)
    {
        using var pdf = new RenderedPdf(CarcassTicket.Draw([TicketSamples.Carcass with { Owner = name }]));

        var words = string.Join(' ', pdf.Pages[0].Words.Select(word => word.Text));
        Assert.Contains(name, words, StringComparison.Ordinal);
        Assert.DoesNotContain('\uFFFD', words);
    }

    [Theory]
    [InlineData("Ken 山田", 2)]
    [InlineData("Sam 🦌", 1)]
    [InlineData("مریم", 4)]
    [InlineData("ready ✓", 1)]
    [InlineData("to → box", 1)]
    public void A_letter_the_font_lacks_shows_a_substitute(string name, int missing)
    {
        using var pdf = new RenderedPdf(CarcassTicket.Draw([TicketSamples.Carcass with { Owner = name }]));

        var words = string.Concat(pdf.Pages[0].Words.Select(word => word.Text));
        Assert.Equal(missing, words.Count(letter => letter == '\uFFFD'));
    }

    [Fact]
    public void The_substitute_leaves_ink()
    {
        using var pdf = new RenderedPdf(CarcassTicket.Draw([TicketSamples.Carcass with { Owner = "山" }]));

        var word = Assert.Single(pdf.Pages[0].Words, word => word.Text == "\uFFFD");
        using var bitmap = pdf.Render(0, 150);
        var pixels = new Pixels(bitmap);
        var inked = 0;
        for (var y = (int)(word.Top / 72 * 150); y < word.Bottom / 72 * 150; y++)
            for (var x = (int)(word.Left / 72 * 150); x < word.Right / 72 * 150; x++)
                inked += pixels.Inked(x, y) ? 1 : 0;
        Assert.True(inked > 200, $"{inked} dots of ink.");
    }

    [Theory]
    [InlineData("A\tB", "A B")]
    [InlineData("A\u200EB", "AB")]
    [InlineData("Jose\u0301 Nun\u0303ez", "Jose\u0301 Nun\u0303ez")]
    [InlineData("⅓ side", "1/3 side")]
    [InlineData("twenty\u2011one", "twenty-one")]
    public void What_has_a_plain_form_is_printed_in_it(string typed, string printed)
    {
        using var pdf = new RenderedPdf(CarcassTicket.Draw([TicketSamples.Carcass with { Owner = typed }]));

        Assert.Contains(printed, string.Join(' ', pdf.Pages[0].Words.Select(word => word.Text)), StringComparison.Ordinal);
    }

    [Fact]
    public void Many_papers_can_be_drawn_at_once()
    {
        var drawn = new byte[200][];

        Parallel.For(0, drawn.Length, i => drawn[i] = LugTicket.Draw([TicketSamples.Lug with { LugNumber = $"{1000 + i}" }]));

        foreach (var i in new[] { 0, 57, 101, 199 })
        {
            using var pdf = new RenderedPdf(drawn[i]);
            Assert.Contains(pdf.Pages[0].Words, word => word.Text == $"{1000 + i}");
        }

        Assert.All(drawn, pdf => Assert.InRange(pdf.Length, drawn[0].Length / 2, drawn[0].Length * 2));
    }
}
