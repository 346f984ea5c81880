using ProcessorDesk.Paper.Drawing;

namespace ProcessorDesk.Paper;

internal static class PickupSummaryPaper
{
    private const double CodeSide = 84;

    public static byte[] Draw(IReadOnlyList<PickupSummary> summaries)
    {
        if (summaries.Count == 0)
            throw new ArgumentException("There is no summary to print.", nameof(summaries));
        using var canvas = new Canvas("Pickup summary, job " + string.Join(", ", summaries.Select(summary => summary.JobNumber)), PageSize.Letter);
        foreach (var summary in summaries)
        {
            Copy(canvas, summary, "owner's copy", isOwners: true);
            Copy(canvas, summary, "shop's copy", isOwners: false);
        }

        return canvas.Save();
    }

    private static void Copy(Canvas canvas, PickupSummary summary, string copy, bool isOwners)
    {
        var sheet = new Sheet(canvas, 44, $"Pickup summary, {copy}, job {summary.JobNumber}, {summary.Owner}");
        Head(sheet, summary, copy);
        HandOverLists.Draw(sheet, summary);
        if (isOwners)
            NotForSale(sheet);
        Signature(sheet, summary);
        if (isOwners)
            HomeKeepingPage.Draw(sheet, summary.IsGame, summary.Cautions);
        sheet.Finish();
    }

    private static void Head(Sheet sheet, PickupSummary summary, string copy)
    {
        Masthead.DrawWithCode(sheet, summary.Shop, $"Pickup summary, {copy}", summary.Code, CodeSide);
        sheet.Paragraph(summary.Owner, sheet.Canvas.Fit(summary.Owner, sheet.Width, 2, new Lettering(18, Bold: true), 12));
        sheet.Space(2);
        List<Fact> facts = [new("Job", summary.JobNumber), new("Handed over", PrintedDate.Of(summary.HandedOver)), new("Taken by", Taker(summary))];
        if (summary.Before.Count > 0)
            facts.Add(new Fact("Hand-over of this job", $"number {summary.Before.Count + 1}"));
        sheet.Facts(facts, facts.Count, new Lettering(12, Bold: true));
    }

    private static string Taker(PickupSummary summary) => summary.Collector.Length > 0 ? summary.Collector : summary.Owner;

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

    private static void Signature(Sheet sheet, PickupSummary summary)
    {
        var words = summary.StillToCome.Count > 0 ? "I took what is listed as handed over now, and was told what is still to come." : "I took what is listed as handed over now.";
        sheet.Need(Lettering.Body.LineHeight + 74);
        sheet.Space(10);
        sheet.Paragraph(words, Lettering.Body);
        sheet.Space(34);
        var date = sheet.Right - 130;
        sheet.Canvas.Line(sheet.Left, sheet.Y, date - 20, sheet.Y, 1);
        sheet.Canvas.Line(date, sheet.Y, sheet.Right, sheet.Y, 1);
        var who = "Received: " + (summary.Collector.Length > 0 ? summary.Collector + " for " + summary.Owner : summary.Owner);
        sheet.Canvas.Text(sheet.Canvas.Shorten(who, Lettering.Small, date - 20 - sheet.Left), Lettering.Small, sheet.Left, sheet.Y + 12);
        sheet.Canvas.Text("Date", Lettering.Small, date, sheet.Y + 12);
        sheet.Space(18);
    }
}
