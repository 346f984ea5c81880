namespace ProcessorDesk.Paper.Drawing;

/// <summary>The head of a page for the cutting table or the kitchen: what it is about in large letters, facts below, the code at the right, a thick rule.</summary>
internal static class WorkHead
{
    private const double CodeSide = 86;

    /// <param name="facts">Each with its part of the width beside the code; the parts sum to one.</param>
    public static void Draw(Sheet sheet, string kind, string about, string code, params (Fact Fact, double Share)[] facts)
    {
        var canvas = sheet.Canvas;
        var room = sheet.Width - CodeSide - 16;
        var (top, quiet) = (sheet.Y, CodeSide * 4 / QrCode.ModulesOfTicketCode);
        Marks.Code(canvas, code, sheet.Right - CodeSide + quiet, top - quiet, CodeSide, 15);

        canvas.Text(canvas.Shorten(kind, Lettering.Strong, room), Lettering.Strong, sheet.Left, sheet.Y + Lettering.Strong.Ascent);
        sheet.Y += Lettering.Strong.LineHeight + 2;
        var large = canvas.Fit(about, room, 2, new Lettering(28, Bold: true), 14);
        sheet.Y += canvas.Lines(canvas.Wrap(about, large, room), large, sheet.Left, sheet.Y) + 4;
        var (x, height) = (sheet.Left, 0.0);
        foreach (var (fact, share) in facts)
        {
            var width = share * room - 8;
            var value = canvas.Fit(fact.Value, width, 1, new Lettering(13, Bold: true), 10);
            value = canvas.Fit(fact.Value, width, 2, value, 7);
            canvas.Text(fact.Label, Lettering.Label, x, sheet.Y + Lettering.Label.Ascent);
            height = Math.Max(height, canvas.Lines(canvas.Wrap(fact.Value, value, width), value, x, sheet.Y + Lettering.Label.LineHeight));
            x += share * room;
        }

        sheet.Y = Math.Max(sheet.Y + Lettering.Label.LineHeight + height, top - quiet + CodeSide + 15) + 4;
        canvas.Fill(new Box(sheet.Left, sheet.Y, sheet.Width, 2.25));
        sheet.Space(7);
    }
}
