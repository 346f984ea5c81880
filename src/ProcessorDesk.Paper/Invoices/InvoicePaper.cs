using ProcessorDesk.Paper.Drawing;
using ProcessorDesk.Trade.Yields;

namespace ProcessorDesk.Paper;

internal static class InvoicePaper
{
    private static readonly Lettering Total = new(20, Bold: true);

    public static byte[] Draw(IReadOnlyList<Invoice> invoices)
    {
        if (invoices.Count == 0)
            throw new ArgumentException("There is no invoice to print.", nameof(invoices));
        using var canvas = new Canvas(string.Join(", ", invoices.Select(Title)), PageSize.Letter);
        foreach (var invoice in invoices)
        {
            var sheet = new Sheet(canvas, 48, $"{Title(invoice)}, {PrintedDate.Of(invoice.Date)}, job {invoice.JobNumber}, {invoice.Owner}");
            Draw(sheet, invoice);
            sheet.Finish();
        }

        return canvas.Save();
    }

    private static string Title(Invoice invoice) =>
        invoice.Credits is null ? $"Invoice {invoice.Number}" : $"Credit note {invoice.Number}";

    private static void Draw(Sheet sheet, Invoice invoice)
    {
        List<string> below = [PrintedDate.Of(invoice.Date), $"Job {invoice.JobNumber}"];
        if (invoice.Credits is not null)
            below.Insert(0, $"Credits invoice {invoice.Credits}");
        Masthead.Draw(sheet, invoice.Shop, Title(invoice), below);
        sheet.Paragraph(invoice.Owner, new Lettering(14, Bold: true), width: sheet.Width * 0.7);
        foreach (var line in invoice.OwnerLines)
            sheet.Paragraph(line, Lettering.Body, width: sheet.Width * 0.7);
        sheet.Space(12);
        Lines(sheet, invoice);
        Sums(sheet, invoice);
        foreach (var words in new[] { invoice.TaxWords, invoice.Note }.Where(words => words.Length > 0))
        {
            sheet.Space(6);
            sheet.Paragraph(words, Lettering.Small);
        }

        if (invoice.Yield is { } yield)
            Yield(sheet, yield);
    }

    private static void Lines(Sheet sheet, Invoice invoice)
    {
        var taxed = invoice.Lines.Any(line => line.Tax.Length > 0);
        List<Column> columns = [new("", 52), new("Quantity", 17, Figures: true), new("Rate", 18, Figures: true)];
        if (taxed)
            columns.Add(new Column("Tax", 8, Figures: true));
        columns.Add(new Column("Amount", 17, Figures: true));
        Table.Draw(sheet, columns, [.. invoice.Lines.Select(IReadOnlyList<string> (line) => taxed
            ? [line.Text, line.Quantity, line.Rate, line.Tax, line.Amount]
            : [line.Text, line.Quantity, line.Rate, line.Amount])]);
    }

    private static void Sums(Sheet sheet, Invoice invoice)
    {
        sheet.Space(4);
        foreach (var fact in invoice.Totals)
            Sum(sheet, fact.Label, fact.Value, Lettering.Body);
        var strong = new Lettering(12, Bold: true);
        Sum(sheet, "Total", invoice.Total, strong, ruled: true);
        if (invoice.Account is { } account)
        {
            Account(sheet, invoice, account, strong);
            return;
        }

        foreach (var payment in invoice.Payments)
            Sum(sheet, payment.Label, payment.Value, Lettering.Body);
        // A deposit may be more than a first hand-over costs.
        var (label, left) = invoice.Balance.StartsWith('-') ? ("In your favour", invoice.Balance[1..]) : ("To pay", invoice.Balance);
        Sum(sheet, invoice.Credits is null ? label : "Credited", left, Total, ruled: true);
    }

    /// <summary>From what was before to what is left, so that an owner can add it up.</summary>
    private static void Account(Sheet sheet, Invoice invoice, JobAccount account, Lettering strong)
    {
        sheet.Space(10);
        sheet.Need(80);
        Sum(sheet, $"Account of job {invoice.JobNumber}", "", strong);
        Sum(sheet, account.BroughtForward.Label, account.BroughtForward.Value, Lettering.Body, ruled: true);
        Sum(sheet, Title(invoice), invoice.Total, Lettering.Body);
        foreach (var payment in account.PaymentsSince)
            Sum(sheet, payment.Label, payment.Value, Lettering.Body);
        Sum(sheet, account.Balance.Label, account.Balance.Value, Total, ruled: true);
    }

    private static void Sum(Sheet sheet, string label, string value, Lettering lettering, bool ruled = false)
    {
        var left = sheet.Left + sheet.Width * 0.4;
        var room = sheet.Right - left - sheet.Canvas.Measure(value, lettering) - 14;
        var small = lettering.Size > 14 ? lettering with { Size = 14 } : lettering;
        var lines = sheet.Canvas.Wrap(label, small, room);
        var height = Math.Max(lettering.LineHeight, lines.Count * small.LineHeight) + (ruled ? 6 : 2);
        sheet.Need(height);
        if (ruled)
            sheet.Canvas.Line(left, sheet.Y + 1, sheet.Right, sheet.Y + 1, 1.25);
        var baseline = sheet.Y + lettering.Ascent + (ruled ? 4 : 0);
        sheet.Canvas.Lines(lines, small, left, baseline - small.Ascent);
        sheet.Canvas.TextEndingAt(value, lettering, sheet.Right, baseline);
        sheet.Y += height;
    }

    private static void Yield(Sheet sheet, YieldAccount account)
    {
        sheet.NewPage();
        sheet.Space(8);
        sheet.Paragraph("Yield statement", new Lettering(22, Bold: true));
        sheet.Space(10);
        List<IReadOnlyList<string>> rows = [.. account.Animals.Select(Cells)];
        if (account.Together is not null)
            rows.Add(Cells(account.Together));
        // Many stages need the width for their figures.
        var (set, names) = account.Stages.Count > 4 ? (new Lettering(8), 24) : (Lettering.Body, 40);
        Table.Draw(sheet,
            [new Column("", names, Lettering: set), .. account.Stages.Select(stage => new Column(stage, (100.0 - names) / account.Stages.Count, Figures: true, Lettering: set))],
            rows, lastStrong: account.Together is not null);
        sheet.Space(6);
        if (account.Expected is { } expected)
        {
            sheet.Need(110);
            sheet.Paragraph(expected.Words, Lettering.Body);
            RangePicture.Draw(sheet, expected);
            sheet.Paragraph(account.Verdict, Lettering.Strong);
            sheet.Paragraph("Source of the range: " + expected.Source, Lettering.Label);
        }
        else
        {
            sheet.Paragraph(account.Verdict, Lettering.Strong);
        }

        if (account.Way.Count == 0)
            return;
        sheet.Heading("Where the weight went", WayRow.HeightOf(10) * Math.Min(account.Way.Count, 12));
        WayOnSheet.Draw(sheet, account.Way);
    }

    private static IReadOnlyList<string> Cells(YieldRow row) => [row.Animal, .. row.Weights];
}
