using ProcessorDesk.Paper.Drawing;

namespace ProcessorDesk.Paper;

/// <summary>The lower part of the batch sheet: rest, casings, stuffing, logs to be written by hand, the finished weight.</summary>
internal static class BatchAfterPaper
{
    private const double LogRow = 23;

    private static readonly Lettering Words = new(12, Bold: true);

    public static void Draw(Sheet sheet, BatchAfter after)
    {
        if (after.Rest.Length > 0)
        {
            Said(sheet, "Rest", after.Rest);
            Blanks.Draw(sheet, ("Begun", 22), ("Ended", 22), ("Temperature of the room, °F", 30), ("Initials", 18));
        }

        if (after.Casings.Length > 0)
        {
            Said(sheet, "Casings", after.Casings);
            Done(sheet, "Stuffed");
        }

        foreach (var log in after.Logs)
            Log(sheet, log);
        if (after.Casings.Length == 0)
        {
            sheet.Heading("Packing", Blanks.Height);
            Done(sheet, "Packed");
        }

        sheet.Heading("Finished weight", Blanks.Height);
        Blanks.Draw(sheet, ("Finished weight, lb", 30), ("Pieces or packs", 22), ("Day and time", 28), ("Initials", 20));
    }

    private static void Done(Sheet sheet, string done) =>
        Blanks.Draw(sheet, ($"{done} from", 18), ("to", 18), ($"Weight {done.ToLowerInvariant()}, lb", 24), ("Left in the machines, lb", 24), ("Initials", 16));

    private static void Said(Sheet sheet, string heading, string words)
    {
        sheet.Heading(heading, sheet.Canvas.Wrap(words, Words, sheet.Width).Count * Words.LineHeight + Blanks.Height);
        sheet.Paragraph(words, Words);
    }

    private static void Log(Sheet sheet, BatchLog log)
    {
        sheet.Heading(log.Heading, 5 * LogRow);
        if (log.Target.Length > 0)
            sheet.Paragraph(log.Target, Words);
        Table.Draw(sheet,
            [new Column("Time", 18, Written: true), .. log.Columns.Select(column => new Column(column, 18, Written: true)), new Column("Initials", 14, Written: true)],
            [.. Enumerable.Range(0, log.Lines).Select(IReadOnlyList<string> (_) => [.. Enumerable.Repeat("", log.Columns.Count + 2)])],
            leastRow: LogRow);
    }
}
