using ProcessorDesk.Paper.Drawing;

namespace ProcessorDesk.Paper;

/// <summary>What left now, what left before, and what is still to come.</summary>
internal static class HandOverLists
{
    private static readonly Lettering Day = new(11, Bold: true);

    public static void Draw(Sheet sheet, PickupSummary summary)
    {
        sheet.Heading("Handed over now");
        List(sheet, summary.Boxes, summary.Items, Lettering.Strong);
        if (summary.Together.Length > 0)
        {
            sheet.Space(4);
            sheet.Need(18);
            sheet.Canvas.TextEndingAt($"Together {summary.Together}", new Lettering(12, Bold: true), sheet.Right, sheet.Y + 12);
            sheet.Space(18);
        }

        StillToCome(sheet, summary.StillToCome);
        Before(sheet, summary.Before);
    }

    private static void List(Sheet sheet, IReadOnlyList<PickupBox> boxes, IReadOnlyList<PickupItem> items, Lettering strong)
    {
        List<string[]> rows =
        [
            .. boxes.Select(box => new[] { $"Box {box.Box}", string.Join('\n', box.Contents.Select(content => content.Words)), box.Code, box.NetWeight }),
            .. items.Select(item => new[] { "", new ContentLine(item.What, item.Count).Words, item.Code, item.Weight }),
        ];
        Column[] columns = [new("", 18), new("", 56, Lettering: strong), new("Ticket", 17), new("Net weight", 20, Figures: true)];
        // Without boxes the first column would stand empty.
        var first = boxes.Count > 0 ? 0 : 1;
        Table.Draw(sheet, columns[first..], [.. rows.Select(row => row[first..])]);
    }

    /// <summary>What is missing stands under a black bar, so that neither copy is signed without its being seen.</summary>
    private static void StillToCome(Sheet sheet, IReadOnlyList<StillToCome> missing)
    {
        if (missing.Count == 0)
        {
            sheet.Heading("Still to come", 18);
            sheet.Paragraph("Nothing: this is everything.", Lettering.Body);
            return;
        }

        sheet.Space(10);
        sheet.Need(70);
        sheet.Canvas.Fill(new Box(sheet.Left, sheet.Y, sheet.Width, 22));
        sheet.Canvas.Text("Still to come: not handed over yet", new Lettering(13, Bold: true, Grey: 1), sheet.Left + 8, sheet.Y + 16);
        sheet.Space(24);
        Table.Draw(sheet,
            [new Column("", 5, Ticked: true), new Column("", 50, Lettering: Lettering.Strong), new Column("", 55)],
            [.. missing.Select(IReadOnlyList<string> (one) => ["", one.What, one.Why])]);
    }

    private static void Before(Sheet sheet, IReadOnlyList<EarlierHandOver> before)
    {
        if (before.Count == 0)
            return;
        sheet.Heading("Handed over before", 60);
        foreach (var earlier in before)
        {
            sheet.Need(3 * Day.LineHeight);
            sheet.Paragraph($"{PrintedDate.Of(earlier.HandedOver)}, taken by {earlier.TakenBy}", Day);
            List(sheet, earlier.Boxes, earlier.Items, Lettering.Body);
            sheet.Space(6);
        }
    }
}
