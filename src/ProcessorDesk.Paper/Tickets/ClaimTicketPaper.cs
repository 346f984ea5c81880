using ProcessorDesk.Paper.Drawing;

namespace ProcessorDesk.Paper;

internal static class ClaimTicketPaper
{
    private const double CodeSide = 72;

    private static readonly Lettering Plain = new(9);

    public static byte[] Draw(IReadOnlyList<ClaimTicket> tickets)
    {
        if (tickets.Count == 0)
            throw new ArgumentException("There is no ticket to print.", nameof(tickets));
        using var canvas = new Canvas("Claim ticket, job " + string.Join(", ", tickets.Select(ticket => ticket.JobNumber)), PageSize.HalfLetter);
        foreach (var ticket in tickets)
        {
            var sheet = new Sheet(canvas, 25, $"Claim ticket, job {ticket.JobNumber}, {ticket.Owner}");
            Draw(sheet, ticket);
            sheet.Finish();
        }

        return canvas.Save();
    }

    private static void Draw(Sheet sheet, ClaimTicket ticket)
    {
        Masthead.DrawWithCode(sheet, ticket.Shop, "Claim ticket", ticket.Code, CodeSide);
        Who(sheet, ticket);
        Marks.Holds(sheet, ticket.Holds, 11);
        sheet.Heading("What you left");
        Table.Draw(sheet,
            [new Column("", 44, Lettering: Plain with { Bold = true }), new Column("Tag", 29, Lettering: Plain), new Column("Came as", 24, Lettering: Plain), new Column("Weight", 21, Figures: true, Lettering: Plain)],
            [.. ticket.Left.Select(IReadOnlyList<string> (item) => [item.What, item.Tag, item.State, item.Weight])]);
        if (ticket.GiveBack.Count > 0)
        {
            sheet.Space(3);
            sheet.Paragraph("To be given back: " + string.Join(", ", ticket.GiveBack) + ".", Plain);
        }

        Order(sheet, ticket);
        PickingUp(sheet, ticket);
        Terms(sheet, ticket);
    }

    private static void Who(Sheet sheet, ClaimTicket ticket)
    {
        var large = sheet.Canvas.Fit(ticket.Owner, sheet.Width, 2, new Lettering(17, Bold: true), 11);
        sheet.Paragraph(ticket.Owner, large);
        sheet.Space(3);
        sheet.Facts([new Fact("Job", ticket.JobNumber), new Fact("Left on", PrintedDate.Of(ticket.LeftOn)), new Fact("Ready by", ticket.Promise)], 3, new Lettering(12, Bold: true));
    }

    private static void Order(Sheet sheet, ClaimTicket ticket)
    {
        sheet.Heading("What you asked for");
        Table.Draw(sheet,
            [new Column("", 70, Lettering: Plain), new Column("", 46, Lettering: Plain, Figures: true)],
            [.. ticket.Order.Select(IReadOnlyList<string> (line) => [line.Label, line.Value])]);
        sheet.Space(3);
        if (ticket.Forecast.Length > 0)
            sheet.Paragraph(ticket.Forecast, Plain);
        sheet.Space(3);
        Fact[] money = [new Fact("Deposit", ticket.Deposit), new Fact("Price", ticket.PriceRange)];
        sheet.Facts([.. money.Where(fact => fact.Value.Length > 0)], 2);
    }

    private static void PickingUp(Sheet sheet, ClaimTicket ticket)
    {
        if (ticket.OwnersPage.Length == 0)
        {
            sheet.Heading("Picking up", 26);
            sheet.Paragraph(ticket.HowToPickUp, Plain);
            return;
        }

        const double side = 74, above = 6;
        var width = sheet.Width - side;
        (string Text, Lettering Lettering)[] texts =
        [
            (ticket.HowToPickUp, Plain),
            ("Follow it from home: scan this to see where your meat is and what is owed. Whoever has this ticket can.", Plain),
            (ticket.OwnersPage, Lettering.Label),
        ];
        var height = texts.Sum(one => sheet.Canvas.Wrap(one.Text, one.Lettering, width).Count * one.Lettering.LineHeight + 3);
        sheet.Heading("Picking up", Math.Max(side - above, height));
        var top = sheet.Y;
        // In capitals, which a symbol holds in fewer and so larger modules; an address does not mind. The quiet zone may reach into the margin.
        QrCode.Draw(sheet.Canvas, ticket.OwnersPage.ToUpperInvariant(), sheet.Right - side + above, top - above, side);
        foreach (var (text, lettering) in texts)
        {
            sheet.Paragraph(text, lettering, width: width);
            sheet.Space(3);
        }

        sheet.Y = Math.Max(sheet.Y, top - above + side);
    }

    private static void Terms(Sheet sheet, ClaimTicket ticket)
    {
        if (ticket.Terms.Count == 0)
            return;
        sheet.Heading("Terms", 24);
        foreach (var term in ticket.Terms)
        {
            sheet.Paragraph(term, new Lettering(8.5));
            sheet.Space(2);
        }
    }
}
