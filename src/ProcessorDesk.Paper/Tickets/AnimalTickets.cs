using ProcessorDesk.Paper.Drawing;

namespace ProcessorDesk.Paper;

/// <summary>All that is hung on what came in: the carcass tickets, then those of the parts, one PDF for one press of the printer.</summary>
public static class AnimalTickets
{
    /// <exception cref="ArgumentException">There is no ticket at all.</exception>
    public static byte[] Draw(IReadOnlyList<CarcassTicket> carcasses, IReadOnlyList<PartTicket> parts)
    {
        string[] codes = [.. carcasses.Select(ticket => ticket.Code), .. parts.Select(ticket => ticket.Code)];
        Action<Canvas>[] pages =
        [
            .. carcasses.Select<CarcassTicket, Action<Canvas>>(ticket => canvas => CarcassTicket.Draw(canvas, ticket)),
            .. parts.Select<PartTicket, Action<Canvas>>(ticket => canvas => PartTicket.Draw(canvas, ticket)),
        ];
        return TicketFrame.Draw("Tickets " + string.Join(", ", codes), pages, (canvas, page) => page(canvas));
    }
}
