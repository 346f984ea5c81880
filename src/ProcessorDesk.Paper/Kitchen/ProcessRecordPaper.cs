using ProcessorDesk.Paper.Drawing;

namespace ProcessorDesk.Paper;

internal static class ProcessRecordPaper
{
    private const string Guide =
        "Figures and verdicts here are a guide. Your inspector's and your state's rules, and the shop's own written process, go before them. No verdict says that meat may be eaten.";

    private static readonly Lettering s_plain = new(9.5);
    private static readonly Lettering s_strong = new(9.5, Bold: true);

    public static byte[] Draw(IReadOnlyList<ProcessRecord> records)
    {
        if (records.Count == 0)
            throw new ArgumentException("There is no process record to print.", nameof(records));
        using var canvas = new Canvas("Process record " + string.Join(", ", records.Select(content => content.BatchNumber)), PageSize.Letter);
        foreach (var content in records)
        {
            var sheet = new Sheet(canvas, 36, $"Process record of batch {content.BatchNumber}, {content.Product}, printed {PrintedDate.Of(content.PrintedAt)}");
            Draw(sheet, content);
            sheet.Finish();
        }

        return canvas.Save();
    }

    private static void Draw(Sheet sheet, ProcessRecord content)
    {
        WorkHead.Draw(sheet, $"Process record · {content.ShopName}", content.Product, content.Code,
            (new Fact("Batch", content.BatchNumber), 0.14), (new Fact("Formula", content.Formula), 0.18),
            (new Fact("Standing", content.State), 0.38), (new Fact("Printed", PrintedDate.Of(content.PrintedAt)), 0.3));
        Marks.Holds(sheet, content.Holds);
        sheet.Paragraph(Guide, new Lettering(9, Bold: true));
        Owners(sheet, content);
        Loads(sheet, content.Loads);
        foreach (var part in content.Parts)
            ProcessPartPaper.Draw(sheet, part);
        Sentences(sheet, "What the shop had set", content.Rules);
        Sentences(sheet, "Smokehouse programme", content.Programme);
        Endings(sheet, content.Endings);
        Steps(sheet, content.Steps);
        if (content.Balance.Count > 0)
        {
            sheet.Heading("Where the weight went");
            Table.Draw(sheet, [new Column("", 70, Lettering: s_plain), new Column("Weight", 30, Figures: true, Lettering: s_plain)], [.. content.Balance.Select(IReadOnlyList<string> (line) => [line.Label, line.Value])]);
        }

        if (content.Cautions.Count > 0)
        {
            sheet.Heading("Take care", 50);
            Marks.Cautions(sheet, content.Cautions, 8.5);
        }

        sheet.Heading("Looked through", Blanks.Height);
        Blanks.Draw(sheet, ("Name", 40), ("Day and time", 30), ("Initials", 16));
    }

    private static void Owners(Sheet sheet, ProcessRecord content)
    {
        sheet.Heading(content.Owners.Count > 1 ? "Whose meat it is: pooled, each of them agreed" : "Whose meat it is");
        var pieces = content.Owners.Any(owner => owner.Pieces.Length > 0);
        Table.Draw(sheet,
            [
                new Column("Owner", 44, Lettering: s_strong), new Column("Job", 14, Lettering: s_plain), new Column("Green, as drawn", 18, Figures: true, Lettering: s_plain),
                new Column("Finished", 18, Figures: true, Lettering: s_strong), new Column(pieces ? "Pieces" : "", 10, Figures: true, Lettering: s_plain),
            ],
            [.. content.Owners.Select(IReadOnlyList<string> (owner) => [owner.Name, owner.JobNumber, owner.Green, owner.Finished, owner.Pieces])]);
    }

    private static void Loads(Sheet sheet, IReadOnlyList<ProcessLoad> loads)
    {
        sheet.Heading("Loads as mixed, each with its cure");
        Table.Draw(sheet,
            [
                new Column("Load", 7, Lettering: s_strong), new Column("Mixed", 26, Lettering: s_plain), new Column("Meat and fat", 14, Figures: true, Lettering: s_plain),
                new Column("Cure weighed in", 28, Lettering: s_plain), new Column("Check", 26, Lettering: s_plain), new Column("Limit and source", 34, Lettering: s_plain),
            ],
            [.. loads.Select(IReadOnlyList<string> (load) => [load.Number, load.Mixed, load.Block, load.Cure, load.Check, load.Limit])]);
    }

    private static void Sentences(Sheet sheet, string heading, IReadOnlyList<string> lines)
    {
        if (lines.Count == 0)
            return;
        sheet.Heading(heading);
        foreach (var line in lines)
            sheet.Paragraph(line, s_plain);
    }

    private static void Endings(Sheet sheet, IReadOnlyList<ProcessEnding> endings)
    {
        if (endings.Count == 0)
            return;
        sheet.Heading("What was done about it");
        Table.Draw(sheet,
            [
                new Column("What", 24, Lettering: s_strong), new Column("Whose name", 24, Lettering: s_plain), new Column("Date", 16, Lettering: s_plain),
                new Column("Reference, in the manager's words", 44, Lettering: s_plain), new Column("Written down", 24, Lettering: s_plain),
            ],
            [.. endings.Select(IReadOnlyList<string> (one) => [one.What, one.Name, one.On, one.Reference, one.Written])]);
    }

    private static void Steps(Sheet sheet, IReadOnlyList<ProcessStep> steps)
    {
        sheet.Heading("Steps");
        Table.Draw(sheet,
            [new Column("Step", 30, Lettering: s_strong), new Column("When", 28, Lettering: s_plain), new Column("Initials", 12, Lettering: s_plain), new Column("", 44, Lettering: s_plain)],
            [.. steps.Select(IReadOnlyList<string> (step) => [step.What, step.At, step.By, step.Note])]);
    }
}
