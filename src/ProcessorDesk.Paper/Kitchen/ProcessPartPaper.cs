using ProcessorDesk.Paper.Drawing;

namespace ProcessorDesk.Paper;

/// <summary>One part of a process record: the verdict, why, its source, the chart and the readings it was drawn from.</summary>
internal static class ProcessPartPaper
{
    private static readonly Lettering s_plain = new(9.5);

    public static void Draw(Sheet sheet, ProcessPart part)
    {
        var chart = part.Chart is { } drawn ? ProbeChartOnSheet.HeightOf(drawn, sheet.Width) : 0;
        sheet.Heading(part.Heading, 60 + chart);
        foreach (var fact in part.Facts)
            sheet.Paragraph(fact, s_plain);
        if (part.Source.Length > 0)
            sheet.Paragraph("Source: " + part.Source, Lettering.Label);
        sheet.Space(4);
        if (part.Chart is { } readings)
            ProbeChartOnSheet.Draw(sheet, readings);
        sheet.Space(2);
        Table.Draw(sheet,
            [new Column("When", 26, Lettering: s_plain), .. part.Columns.Select(column => new Column(column, 18, Figures: true, Lettering: s_plain)), new Column("Initials", 14, Lettering: s_plain)],
            part.Rows);
    }
}
