using ProcessorDesk.Paper.Drawing;

namespace ProcessorDesk.Paper;

/// <summary>The owner's page on keeping and cooking the meat, with the cautions.</summary>
internal static class HomeKeepingPage
{
    private static readonly Lettering Home = new(11);

    public static void Draw(Sheet sheet, bool isGame, IReadOnlyList<Caution> cautions)
    {
        sheet.NewPage();
        sheet.Heading("Keeping it", 90);
        Table.Draw(sheet,
            [new Column("", 40, Lettering: Home), new Column("Freezer, 0 °F", 25, Figures: true, Lettering: Home), new Column("Refrigerator, 40 °F", 25, Figures: true, Lettering: Home)],
            [.. HomeKeeping.Storage.Select(IReadOnlyList<string> (row) => [row.What, row.Frozen, row.Chilled])]);
        sheet.Space(3);
        sheet.Paragraph("Source: " + HomeKeeping.StorageSource, Lettering.Label);
        sheet.Heading("Cooking it: the middle must reach", 60);
        if (isGame)
            sheet.Paragraph("Yours is game: all of it to 160 °F.", new Lettering(14, Bold: true));
        Table.Draw(sheet,
            [new Column("", 55, Lettering: Home), new Column("", 45, Lettering: Home with { Bold = true }, Figures: true)],
            [.. HomeKeeping.Cooking.Select(IReadOnlyList<string> (row) => [row.Label, row.Value])]);
        sheet.Space(3);
        sheet.Paragraph("Source: " + HomeKeeping.CookingSource, Lettering.Label);
        if (cautions.Count == 0)
            return;
        sheet.Heading("Take care", 70);
        Marks.Cautions(sheet, cautions, 10);
    }
}
