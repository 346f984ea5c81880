using ProcessorDesk.Paper.Drawing;

namespace ProcessorDesk.Paper;

internal static class TraceSheetPaper
{
    public static byte[] Draw(TraceSheet trace)
    {
        using var canvas = new Canvas($"Trace, {trace.What}", PageSize.Letter);
        var sheet = new Sheet(canvas, 44, $"Trace of {trace.What}, {trace.Traced}");
        Masthead.Draw(sheet, trace.Shop, "Trace", [trace.Traced, $"by {trace.By}"]);
        sheet.Paragraph(trace.What, canvas.Fit(trace.What, sheet.Width, 2, new Lettering(18, Bold: true), 12));
        sheet.Space(4);
        sheet.Facts(trace.Facts, trace.Facts.Count, new Lettering(12, Bold: true));
        Marks.Holds(sheet, trace.Holds, 11);
        ToTell(sheet, trace.ToTell);
        Where(sheet, trace);
        Backwards(sheet, trace);
        Lots(sheet, trace.Lots);
        foreach (var batch in trace.Batches)
            Batch(sheet, batch);
        sheet.Heading("Take care", 70);
        Marks.Cautions(sheet, trace.Cautions, 10);
        sheet.Finish();
        return canvas.Save();
    }

    private static void ToTell(Sheet sheet, IReadOnlyList<OwnerToTell> owners)
    {
        sheet.Heading("Who has to be told", 60);
        if (owners.Count == 0)
            sheet.Paragraph("Nobody: no owner's meat is in it.", Lettering.Body);
        Table.Draw(sheet,
            [new("Owner", 26, Lettering: Lettering.Strong), new("Job", 9), new("Phone", 17), new("Boxes with it", 20), new("Called: when, by whom, what was said", 42, Written: true)],
            [.. owners.Select(IReadOnlyList<string> (one) => [one.Owner, one.Job, one.Phone, one.Boxes, one.IsTold || one.Called.Length == 0 ? one.Called : "Not told yet. " + one.Called])],
            leastRow: 24);
    }

    private static void Where(Sheet sheet, TraceSheet trace)
    {
        sheet.Heading("Where it is now", 50);
        foreach (var still in trace.Still)
            sheet.Paragraph(still, Lettering.Body);
        if (trace.Boxes.Count == 0)
            sheet.Paragraph("No box has any of it.", Lettering.Body);
        Table.Draw(sheet,
            [new("Box", 30, Lettering: Lettering.Strong), new("Ticket", 12), new("What is in it", 27), new("Net", 13, Figures: true), new("Where", 34)],
            [.. trace.Boxes.Select(IReadOnlyList<string> (box) => [box.Box, box.Code, box.Contents, box.Net, box.Where])]);
        Sums(sheet, trace.BoxSums);
    }

    private static void Backwards(Sheet sheet, TraceSheet trace)
    {
        if (trace.Animals.Count > 0)
        {
            sheet.Heading("Backwards: the animals", 50);
            Table.Draw(sheet,
                [new("Animal", 30, Lettering: Lettering.Strong), new("Owner", 30), new("Came in", 24), new("Disease test, holds", 32)],
                [.. trace.Animals.Select(IReadOnlyList<string> (one) => [one.Animal, one.Owners, one.CameIn, one.DiseaseTest])]);
        }

        if (trace.Lugs.Count == 0)
            return;
        sheet.Heading("Lugs, to the last division", 50);
        Table.Draw(sheet,
            [new("Lug", 28, Lettering: Lettering.Strong), new("Animals", 24), new("Lean in", 12, Figures: true), new("Where it went", 50)],
            [.. trace.Lugs.Select(IReadOnlyList<string> (one) => [$"{one.Lug}\n{one.Whose}", one.Animals, one.Lean, one.Went])]);
    }

    private static void Lots(Sheet sheet, IReadOnlyList<LotTraced> lots)
    {
        if (lots.Count == 0)
            return;
        sheet.Heading("Lots of what was weighed in", 50);
        Table.Draw(sheet,
            [new("Lot", 34, Lettering: Lettering.Strong), new("From", 38), new("Where it went", 44)],
            [.. lots.Select(IReadOnlyList<string> (one) => [one.Lot, one.From, one.Went])]);
    }

    private static void Batch(Sheet sheet, BatchTraced batch)
    {
        sheet.Heading(batch.Batch, 90);
        sheet.Paragraph(batch.State, Lettering.Body);
        sheet.Space(3);
        List("What is in it", batch.In);
        Sums(sheet, batch.Sums);
        if (batch.Back.Count > 0)
            List("Went back to", batch.Back);

        void List(string head, IReadOnlyList<Fact> rows) =>
            Table.Draw(sheet, [new(head, 80), new("", 20, Figures: true)], [.. rows.Select(IReadOnlyList<string> (row) => [row.Label, row.Value])]);
    }

    private static void Sums(Sheet sheet, IReadOnlyList<Fact> sums) =>
        Table.Draw(sheet, [new("", 80, Lettering: Lettering.Strong), new("", 20, Figures: true, Lettering: Lettering.Strong)], [.. sums.Select(IReadOnlyList<string> (row) => [row.Label, row.Value])]);
}
