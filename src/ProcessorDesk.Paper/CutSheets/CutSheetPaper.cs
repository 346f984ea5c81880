using ProcessorDesk.Paper.Drawing;

namespace ProcessorDesk.Paper;

internal static class CutSheetPaper
{
    private static readonly Lettering Group = new(14, Bold: true);
    private static readonly Lettering Instruction = new(14);

    public static byte[] Draw(IReadOnlyList<CutSheet> contents)
    {
        if (contents.Count == 0)
            throw new ArgumentException("There is no sheet to print.", nameof(contents));
        using var canvas = new Canvas("Cut sheet, job " + string.Join(", ", contents.Select(content => content.JobNumber)), PageSize.Letter);
        foreach (var content in contents)
        {
            var sheet = new Sheet(canvas, 30, $"Cut sheet, job {content.JobNumber}, revision {content.Revision}, printed {PrintedDate.Of(content.PrintedAt)}, {content.Owner}");
            Draw(sheet, content);
            sheet.Finish();
        }

        return canvas.Save();
    }

    private static void Draw(Sheet sheet, CutSheet content)
    {
        Head(sheet, content);
        Marks.Holds(sheet, content.Holds, 15);
        if (content.NoPork)
            Marks.NoPork(sheet);
        Animals(sheet, content);
        Cuts(sheet, content);
        Checklist(sheet, content);
        Asks(sheet, content);
        if (content.Note.Length > 0)
        {
            sheet.Heading("Note");
            sheet.Paragraph(content.Note, new Lettering(12));
        }

        sheet.Space(6);
        Marks.Cautions(sheet, content.Cautions, 8.5);
        LugBoxes.Draw(sheet, content.Lugs);
    }

    private static void Head(Sheet sheet, CutSheet content) =>
        WorkHead.Draw(sheet, $"Cut sheet · {content.ShopName}", content.Owner, content.Code,
            (new Fact("Job", content.JobNumber), 0.16),
            (new Fact("Revision", $"{content.Revision}"), 0.12),
            (new Fact("Promised", content.Promise.Length > 0 ? content.Promise : "no date"), 0.34),
            (new Fact("Printed", PrintedDate.Of(content.PrintedAt)), 0.38));

    private static void Animals(Sheet sheet, CutSheet content) =>
        Table.Draw(sheet,
            [
                new Column("Animal", 30, Lettering: new Lettering(12, Bold: true)), new Column("Tag", 24, Lettering: new Lettering(12, Bold: true)),
                new Column("Share", 10, Lettering: new Lettering(11)), new Column("Give back", 26, Lettering: new Lettering(11)),
                new Column("Weight", 20, Figures: true, Lettering: new Lettering(12, Bold: true)),
            ],
            [.. content.Animals.Select(IReadOnlyList<string> (animal) => [animal.What, animal.Tag, animal.Share, animal.GiveBack, animal.Weight])]);

    private static void Cuts(Sheet sheet, CutSheet content)
    {
        sheet.Heading("Cut");
        Table.Draw(sheet,
            [new Column("", 4, Ticked: true), new Column("", 27, Lettering: Group), new Column("", 54, Lettering: Instruction), new Column("", 20, Lettering: new Lettering(12), Figures: true)],
            [.. content.Cuts.Select(IReadOnlyList<string> (line) => ["", line.MuscleGroup, line.Instruction, line.Pack])]);
    }

    private static void Checklist(Sheet sheet, CutSheet content)
    {
        if (content.Checklist.Count == 0)
            return;
        sheet.Heading("Tick when done");
        const int columns = 3;
        var lettering = new Lettering(11);
        var width = (sheet.Width - 2 * 12) / columns;
        foreach (var row in content.Checklist.Chunk(columns))
        {
            var room = width - 20;
            var cells = row.Select(text => sheet.Canvas.Wrap(text, lettering, room)).ToList();
            var height = cells.Max(cell => cell.Count) * lettering.LineHeight + 4;
            sheet.Need(height);
            for (var i = 0; i < row.Length; i++)
            {
                var x = sheet.Left + i * (width + 12);
                sheet.TickBox(x, sheet.Y + lettering.Ascent, lettering);
                sheet.Canvas.Lines(cells[i], lettering, x + 20, sheet.Y);
            }

            sheet.Y += height;
        }
    }

    private static void Asks(Sheet sheet, CutSheet content)
    {
        if (content.Asks.Count == 0)
            return;
        sheet.Heading("Grind, in this order");
        Table.Draw(sheet,
            [
                new Column("", 5, Lettering: new Lettering(12, Bold: true)), new Column("", 40, Lettering: new Lettering(12, Bold: true)),
                new Column("", 34, Lettering: new Lettering(12)), new Column("", 30, Lettering: new Lettering(10), Figures: true),
            ],
            [.. content.Asks.Select(IReadOnlyList<string> (ask, i) => [$"{i + 1}", ask.Product, ask.Wanted, ask.Blend])]);
    }
}
