using ProcessorDesk.Paper.Drawing;

namespace ProcessorDesk.Paper;

/// <summary>A filling of the mixer on the batch sheet: each line with its figures, a box to tick, lines for the weight and the initials.</summary>
internal static class BatchLoadPaper
{
    private const double RowHeight = 25;

    private static readonly Lettering Plain = new(11);
    private static readonly Lettering Strong = new(12, Bold: true);

    public static void Draw(Sheet sheet, BatchLoad load, string name)
    {
        // A load that a page can hold is not torn over two.
        if (Height(sheet, load, name) is var height && height <= sheet.PageHeight)
            sheet.Need(height);
        Head(sheet, load, name);
        Meat(sheet, load, name);
        sheet.Space(6);
        Ingredients(sheet, load, name);
        if (load.Cure is { } cure)
        {
            sheet.Space(8);
            sheet.Need(CureHeight(sheet, load, name));
            sheet.Y += CureBlock.Draw(sheet.Canvas, cure, name, load.MeatBlock, new Box(sheet.Left, sheet.Y, sheet.Width, 0));
        }

        Blanks.Draw(sheet, ($"{name} as weighed, lb", 26), ("Temperature of the mix, °F", 26), ("Mixed from", 16), ("to", 16), ("Initials", 16));
    }

    private static double Height(Sheet sheet, BatchLoad load, string name)
    {
        var rows = load.Meat.Count + load.AddedFat.Count + load.Ingredients.Count;
        return 60 + rows * RowHeight + 2 * 20 + 8 + CureHeight(sheet, load, name) + Blanks.Height;
    }

    private static double CureHeight(Sheet sheet, BatchLoad load, string name) =>
        load.Cure is { } cure ? CureBlock.Draw(sheet.Canvas, cure, name, load.MeatBlock, new Box(sheet.Left, 0, sheet.Width, 0), draw: false) : 0;

    private static void Head(Sheet sheet, BatchLoad load, string name)
    {
        var large = new Lettering(17, Bold: true);
        sheet.Need(2 * large.LineHeight + 3 * RowHeight);
        sheet.Space(12);
        sheet.Canvas.Text(name, large, sheet.Left, sheet.Y + large.Ascent);
        sheet.Canvas.TextEndingAt($"{load.Green} green, on {load.MeatBlock} of meat and fat", Strong, sheet.Right, sheet.Y + large.Ascent);
        sheet.Y += large.LineHeight + 1;
        sheet.Canvas.Line(sheet.Left, sheet.Y, sheet.Right, sheet.Y, 1.5);
        sheet.Space(5);
    }

    private static void Meat(Sheet sheet, BatchLoad load, string name) =>
        Table.Draw(sheet,
            Columns($"{name}: meat", new Column("Lug", 16, Figures: true, Lettering: Plain, Written: true), "Planned"),
            [
                .. load.Meat.Select(IReadOnlyList<string> (meat) => ["", $"{meat.Owner}, job {meat.JobNumber}", meat.Lug, meat.Planned, "", meat.Then, ""]),
                .. load.AddedFat.Select(IReadOnlyList<string> (fat) => ["", "Added fat: " + fat.Name, "bought in", fat.Planned, "", fat.Then, ""]),
            ],
            leastRow: RowHeight);

    private static void Ingredients(Sheet sheet, BatchLoad load, string name) =>
        Table.Draw(sheet,
            Columns($"{name}: ingredients", new Column("lb and oz", 16, Figures: true, Lettering: Plain), "Grams"),
            [.. load.Ingredients.Select(IReadOnlyList<string> (line) => ["", line.Name, line.PoundsAndOunces, line.Grams, "", line.Then, ""])],
            leastRow: RowHeight);

    /// <summary>One grid for meat and ingredients, so that planned and written figures stand under each other.</summary>
    private static IReadOnlyList<Column> Columns(string what, Column second, string amount) =>
    [
        new Column("", 4, Ticked: true, Lettering: Plain), new Column(what, 46, Lettering: Plain), second,
        new Column(amount, 18, Figures: true, Lettering: Strong), new Column("Weighed", 15, Written: true, Lettering: Plain),
        new Column("Then in mixer", 15, Figures: true, Lettering: Plain), new Column("Initials", 11, Written: true, Lettering: Plain),
    ];
}
