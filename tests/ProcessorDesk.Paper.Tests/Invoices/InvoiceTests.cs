using ProcessorDesk.Paper.Tests.Cast;
using ProcessorDesk.Paper.Tests.Rendering;
using Xunit;

namespace ProcessorDesk.Paper.Tests.Invoices;

public sealed class InvoiceTests
{
    [Fact]
    public void Every_line_total_and_payment_is_printed_as_handed_in()
    {
        using var pdf = new RenderedPdf(Invoice.Draw([InvoiceSamples.Ordinary]));

        var invoice = InvoiceSamples.Ordinary;
        foreach (var line in invoice.Lines)
        {
            var printed = pdf.Text.Split('\n').Single(text => text.Contains(line.Text, StringComparison.Ordinal));
            Assert.Contains(line.Quantity, printed, StringComparison.Ordinal);
            Assert.Contains(line.Rate, printed, StringComparison.Ordinal);
            Assert.EndsWith(line.Amount, printed.TrimEnd(), StringComparison.Ordinal);
        }

        foreach (var fact in invoice.Totals.Concat(invoice.Payments).Append(new Fact("Total", invoice.Total)).Append(new Fact("To pay", invoice.Balance)))
            Assert.Contains(pdf.Text.Split('\n'), text => text.Contains(fact.Label, StringComparison.Ordinal) && text.TrimEnd().EndsWith(fact.Value, StringComparison.Ordinal));
    }

    [Fact]
    public void Amounts_stand_in_one_column_on_the_right()
    {
        using var pdf = new RenderedPdf(Invoice.Draw([InvoiceSamples.Ordinary]));

        string[] amounts = ["$190.00", "$139.28", "$85.55", "$37.50", "$36.93", "$489.26", "$507.96", "$457.96"];
        var right = amounts.Select(amount => pdf.Pages[0].Words.Single(word => word.Text == amount).Right).ToList();
        Assert.All(right, edge => Assert.InRange(edge, right[0] - 0.5, right[0] + 0.5));
    }

    [Fact]
    public void A_credit_note_says_which_invoice_it_credits()
    {
        using var pdf = new RenderedPdf(Invoice.Draw([InvoiceSamples.CreditNote]));

        Assert.Contains("Credit note 3009", pdf.Text, StringComparison.Ordinal);
        Assert.Contains("Credits invoice 3007", pdf.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("To pay", pdf.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("Yield statement", pdf.Text, StringComparison.Ordinal);
    }

    /// <summary>57.96 + 39.74 − 20.00 = 77.70; the deposit was on the first invoice and is in what is brought forward.</summary>
    [Fact]
    public void A_second_invoice_goes_on_from_the_first_and_shows_no_deposit_again()
    {
        using var pdf = new RenderedPdf(Invoice.Draw([InvoiceSamples.Second]));

        (string Label, string Value)[] account =
        [
            ("Brought forward: invoice 3007", "$57.96"), ("Invoice 3012", "$39.74"), ("Check, Mon 21 Dec 2026", "-$20.00"), ("To pay", "$77.70"),
        ];
        var lines = pdf.Text.Split('\n').ToList();
        var from = lines.FindIndex(line => line.Contains("Account of job 1042", StringComparison.Ordinal));
        Assert.True(from > lines.FindIndex(line => line.Contains("Total ", StringComparison.Ordinal)));
        foreach (var (label, value) in account)
        {
            var at = lines.FindIndex(from, line => line.Contains(label, StringComparison.Ordinal) && line.TrimEnd().EndsWith(value, StringComparison.Ordinal));
            Assert.True(at > from, $"{label} {value} is not where it belongs.");
            from = at;
        }

        Assert.DoesNotContain("Deposit", pdf.Text, StringComparison.Ordinal);
        Assert.Single(lines, line => line.Contains("To pay", StringComparison.Ordinal));
    }

    [Fact]
    public void A_deposit_greater_than_the_first_invoice_is_in_the_owners_favour()
    {
        using var pdf = new RenderedPdf(Invoice.Draw([InvoiceSamples.Second with { Account = null, Payments = [new Fact("Deposit, Fri 27 Nov 2026, cash", "-$50.00")], Balance = "-$10.26" }]));

        Assert.Contains(pdf.Text.Split('\n'), line => line.Contains("In your favour", StringComparison.Ordinal) && line.TrimEnd().EndsWith(" $10.26", StringComparison.Ordinal));
        Assert.DoesNotContain("To pay", pdf.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_first_invoice_has_no_account_but_its_own_payments()
    {
        using var pdf = new RenderedPdf(Invoice.Draw([InvoiceSamples.Ordinary]));

        Assert.DoesNotContain("Account of job", pdf.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("Brought forward", pdf.Text, StringComparison.Ordinal);
        Assert.Contains("Deposit, Fri 27 Nov 2026, cash", pdf.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Forty_lines_keep_their_head_on_every_page_and_none_is_lost()
    {
        using var pdf = new RenderedPdf(Invoice.Draw([InvoiceSamples.Extreme]));

        for (var i = 1; i <= 40; i++)
            Assert.Contains($"Line {i}:", pdf.Text, StringComparison.Ordinal);
        foreach (var page in pdf.Pages.Where(page => page.Words.Any(word => word.Text == "Line")))
            Assert.Contains(page.Words, word => word.Text == "Quantity");
        foreach (var page in pdf.Pages)
            Assert.Equal(
                page.Words.Count(word => word.Text == "Line"),
                page.Words.Count(word => word.Text == "packed"));
    }

    [Fact]
    public void The_yield_statement_names_each_animal_the_range_and_its_source()
    {
        using var pdf = new RenderedPdf(Invoice.Draw([InvoiceSamples.Ordinary]));

        foreach (var said in new[] { "tag AB-204417", "tag AB-204418", "224.5 lb", "168.5 lb", "yours 92.75 lb", "91.6 to 123.9 lb", "Michigan State University Extension", "inside the extreme range" })
            Assert.Contains(said, pdf.Text, StringComparison.Ordinal);
        foreach (var step in InvoiceSamples.Ordinary.Yield!.Way)
            Assert.Contains(pdf.Text.Split('\n'), text => text.Contains(step.Name, StringComparison.Ordinal) && text.TrimEnd().EndsWith(step.Printed, StringComparison.Ordinal));
    }

    [Fact]
    public void Without_a_published_range_the_statement_says_so_in_the_callers_words()
    {
        var account = InvoiceSamples.Ordinary.Yield! with { Expected = null, Verdict = "No range is published for this.", Way = [] };

        using var pdf = new RenderedPdf(Invoice.Draw([InvoiceSamples.Ordinary with { Yield = account }]));

        Assert.Contains("No range is published for this.", pdf.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("Source of the range", pdf.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("Where the weight went", pdf.Text, StringComparison.Ordinal);
    }
}
