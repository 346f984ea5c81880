using ProcessorDesk.Paper.Drawing;

namespace ProcessorDesk.Paper;

internal static class PickupSummaryPaper
{
    private const double CodeSide = 84;

    private static readonly Lettering Home = new(11);

    public static byte[] Draw(IReadOnlyList<PickupSummary> summaries)
    {
        if (summaries.Count == 0)
            throw new ArgumentException("There is no summary to print.", nameof(summaries));
        using var canvas = new Canvas("Pickup summary, job " + string.Join(", ", summaries.Select(summary => summary.JobNumber)), PageSize.Letter);
        foreach (var summary in summaries)
        {
            var sheet = new Sheet(canvas, 44, $"Pickup summary, job {summary.JobNumber}, {summary.Owner}");
            Draw(sheet, summary);
            sheet.Finish();
        }

        return canvas.Save();
    }

    private static void Draw(Sheet sheet, PickupSummary summary)
    {
        Masthead.DrawWithCode(sheet, summary.Shop, "Pickup summary", summary.Code, CodeSide);
        sheet.Paragraph(summary.Owner, sheet.Canvas.Fit(summary.Owner, sheet.Width, 2, new Lettering(18, Bold: true), 12));
        sheet.Space(2);
        sheet.Facts([new Fact("Job", summary.JobNumber), new Fact("Handed over", PrintedDate.Of(summary.HandedOver))], 3, new Lettering(12, Bold: true));
        sheet.Heading("Handed over");
        Table.Draw(sheet,
            [new Column("", 60, Lettering: Lettering.Strong), new Column("Count", 22, Figures: true), new Column("Weight", 22, Figures: true)],
            [.. summary.Items.Select(IReadOnlyList<string> (item) => [item.What, item.Count, item.Weight])]);
        StillToCome(sheet, summary);
        NotForSale(sheet);
        Signature(sheet, summary);
        sheet.NewPage();
        Keeping(sheet, summary);
        if (summary.Cautions.Count == 0)
            return;
        sheet.Heading("Take care", 70);
        Marks.Cautions(sheet, summary.Cautions, 10);
    }

    private static void StillToCome(Sheet sheet, PickupSummary summary)
    {
        sheet.Heading("Still to come", 18);
        if (summary.StillToCome.Count == 0)
            sheet.Paragraph("Nothing: this is everything.", Lettering.Body);
        foreach (var text in summary.StillToCome)
            sheet.Tick(text, Lettering.Body);
    }

    private static void NotForSale(Sheet sheet)
    {
        var large = Lettering.OfCapHeight(Marks.LeastCapHeight + 2);
        const string words = "Custom processed for its owner, and not inspected. It is for the owner, the owner's household, "
            + "guests who do not pay and the owner's employees. Keep frozen. Cook thoroughly.";
        var lines = sheet.Canvas.Wrap(words, Lettering.Strong, sheet.Width - 28);
        var height = large.CapHeight + lines.Count * Lettering.Strong.LineHeight + 34;
        sheet.Space(10);
        sheet.Need(height);
        sheet.Canvas.Frame(new Box(sheet.Left, sheet.Y, sheet.Width, height), 2);
        sheet.Canvas.Text(Marks.NotForSale, large, sheet.Left + 14, sheet.Y + 13 + large.CapHeight);
        sheet.Canvas.Lines(lines, Lettering.Strong, sheet.Left + 14, sheet.Y + large.CapHeight + 22);
        sheet.Y += height;
    }

    private static void Keeping(Sheet sheet, PickupSummary summary)
    {
        sheet.Heading("Keeping it", 90);
        Table.Draw(sheet,
            [new Column("", 40, Lettering: Home), new Column("Freezer, 0 °F", 25, Figures: true, Lettering: Home), new Column("Refrigerator, 40 °F", 25, Figures: true, Lettering: Home)],
            [.. HomeKeeping.Storage.Select(IReadOnlyList<string> (row) => [row.What, row.Frozen, row.Chilled])]);
        sheet.Space(3);
        sheet.Paragraph("Source: " + HomeKeeping.StorageSource, Lettering.Label);
        sheet.Heading("Cooking it: the middle must reach", 60);
        if (summary.IsGame)
            sheet.Paragraph("Yours is game: all of it to 160 °F.", new Lettering(14, Bold: true));
        Table.Draw(sheet,
            [new Column("", 55, Lettering: Home), new Column("", 45, Lettering: Home with { Bold = true }, Figures: true)],
            [.. HomeKeeping.Cooking.Select(IReadOnlyList<string> (row) => [row.Label, row.Value])]);
        sheet.Space(3);
        sheet.Paragraph("Source: " + HomeKeeping.CookingSource, Lettering.Label);
    }

    private static void Signature(Sheet sheet, PickupSummary summary)
    {
        sheet.Need(74);
        sheet.Space(48);
        var date = sheet.Right - 130;
        sheet.Canvas.Line(sheet.Left, sheet.Y, date - 20, sheet.Y, 1);
        sheet.Canvas.Line(date, sheet.Y, sheet.Right, sheet.Y, 1);
        var who = "Received: " + (summary.Collector.Length > 0 ? summary.Collector + " for " + summary.Owner : summary.Owner);
        sheet.Canvas.Text(sheet.Canvas.Shorten(who, Lettering.Small, date - 20 - sheet.Left), Lettering.Small, sheet.Left, sheet.Y + 12);
        sheet.Canvas.Text("Date", Lettering.Small, date, sheet.Y + 12);
        sheet.Space(18);
    }
}
