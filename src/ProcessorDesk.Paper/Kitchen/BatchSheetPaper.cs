using ProcessorDesk.Paper.Drawing;
using ProcessorDesk.Trade.Curing;

namespace ProcessorDesk.Paper;

internal static class BatchSheetPaper
{
    private const string Practice = "common practice, no source";

    private static readonly Lettering Plain = new(11);

    public static byte[] Draw(IReadOnlyList<BatchSheet> sheets)
    {
        if (sheets.Count == 0)
            throw new ArgumentException("There is no batch sheet to print.", nameof(sheets));
        if (sheets.FirstOrDefault(IsWrong) is { } wrong)
            throw new ArgumentException($"Batch {wrong.BatchNumber}: it has no load, or its loads do not have the cure the batch calls for.", nameof(sheets));
        using var canvas = new Canvas("Batch sheet " + string.Join(", ", sheets.Select(content => content.BatchNumber)), PageSize.Letter);
        foreach (var content in sheets)
        {
            var sheet = new Sheet(canvas, 30, $"Batch sheet {content.BatchNumber}, {content.Product}, printed {PrintedDate.Of(content.PrintedAt)}");
            Draw(sheet, content);
            sheet.Finish();
        }

        return canvas.Save();
    }

    /// <summary>A cured product without its cure must not look like a sheet one can mix by.</summary>
    private static bool IsWrong(BatchSheet content) =>
        content.Loads.Count == 0 || content.Loads.Any(load => (load.Cure?.Lines.Count > 0) != content.IsCured);

    private static void Draw(Sheet sheet, BatchSheet content)
    {
        WorkHead.Draw(sheet, $"Batch sheet · {content.ShopName}", content.Product, content.Code,
            (new Fact("Batch", content.BatchNumber), 0.15),
            (new Fact("Planned for", content.PlannedFor.Length > 0 ? content.PlannedFor : "no day"), 0.3),
            (new Fact("Formula", content.Formula), 0.2),
            (new Fact("Printed", PrintedDate.Of(content.PrintedAt)), 0.35));
        Marks.Holds(sheet, content.Holds, 15);
        if (content.NoPork)
            Marks.NoPork(sheet);
        Owners(sheet, content);
        Allergens(sheet, content);
        Cautions(sheet, content);
        Loads(sheet, content);
        for (var i = 0; i < content.Loads.Count; i++)
            BatchLoadPaper.Draw(sheet, content.Loads[i], Name(content, i));
        BatchAfterPaper.Draw(sheet, content.After);
    }

    private static void Owners(Sheet sheet, BatchSheet content)
    {
        sheet.Heading(content.IsPooled ? "Pooled batch: each of these owners agreed" : "Own batch: one owner's meat alone");
        Table.Draw(sheet,
            [new Column("Owner", 60, Lettering: Plain with { Bold = true }), new Column("Job", 20, Lettering: Plain), new Column("Lean planned", 20, Figures: true, Lettering: Plain)],
            [.. content.Owners.Select(IReadOnlyList<string> (owner) => [owner.Name, owner.JobNumber, owner.Lean])]);
    }

    private static string Name(BatchSheet content, int load) => content.Loads.Count == 1 ? "The load" : $"Load {load + 1} of {content.Loads.Count}";

    /// <summary>What is ahead, to be ticked off as each load is mixed.</summary>
    private static void Loads(Sheet sheet, BatchSheet content)
    {
        sheet.Heading("What is to be mixed");
        List<IReadOnlyList<string>> rows = [.. content.Loads.Select(IReadOnlyList<string> (load, i) =>
            ["", Name(content, i), load.MeatBlock, string.Join(", ", load.Cure?.Lines.Select(line => line.Grams) ?? []), load.Green])];
        Table.Draw(sheet,
            [
                new Column("", 4, Ticked: true, Lettering: Plain), new Column("", 30, Lettering: Plain with { Bold = true }), new Column("Meat and fat", 20, Figures: true, Lettering: Plain),
                new Column(content.IsCured ? "Cure" : "", 28, Figures: true, Lettering: Plain), new Column("Green", 20, Figures: true, Lettering: Plain with { Bold = true }),
            ],
            rows);
        sheet.Space(4);
        sheet.Canvas.TextEndingAt($"Together {content.Green} green", new Lettering(12, Bold: true), sheet.Right, sheet.Y + 12);
        sheet.Space(18);
    }

    private static void Allergens(Sheet sheet, BatchSheet content)
    {
        sheet.Space(6);
        sheet.Paragraph(
            content.Allergens.Count > 0 ? "Allergens: " + string.Join(", ", content.Allergens) : "Allergens: none named in this formula.",
            new Lettering(12, Bold: true));
    }

    private static void Cautions(Sheet sheet, BatchSheet content)
    {
        List<Caution> cautions = [.. content.Cautions];
        if (content.IsCured)
            cautions.AddRange(CuringCautions.All.Select(caution => new Caution("", caution.Text, caution.Source == Practice ? "" : caution.Source)));
        if (cautions.Count == 0)
            return;
        sheet.Heading("Take care", 50);
        Marks.Cautions(sheet, cautions, 8.5);
        if (content.IsCured)
            sheet.Paragraph("Cautions that name no source are common practice.", Lettering.Label);
    }
}
