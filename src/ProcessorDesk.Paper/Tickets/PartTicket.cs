using ProcessorDesk.Paper.Drawing;

namespace ProcessorDesk.Paper;

/// <summary>The ticket of a part to give back or to send on (antlers, cape, head for the laboratory), 4 × 6 in. Everything as printed.</summary>
/// <param name="ShopName">The shop's name.</param>
/// <param name="Part">"Antlers".</param>
/// <param name="Owner">The owner's name in full.</param>
/// <param name="TagId">The animal's official tag.</param>
/// <param name="Species">"White-tail deer".</param>
/// <param name="JobNumber">"1042".</param>
/// <param name="Instruction">Where it goes: "To the taxidermist"; may be empty.</param>
/// <param name="DateIn">The day it came in.</param>
/// <param name="Code">The ticket code, which the QR symbol holds alone.</param>
/// <param name="Holds">Open holds.</param>
public sealed record PartTicket(
    string ShopName,
    string Part,
    string Owner,
    string TagId,
    string Species,
    string JobNumber,
    string Instruction,
    DateOnly DateIn,
    string Code,
    IReadOnlyList<HoldNotice> Holds)
{
    /// <summary>One PDF, one page a ticket.</summary>
    public static byte[] Draw(IReadOnlyList<PartTicket> tickets) =>
        TicketFrame.Draw("Part ticket " + string.Join(", ", tickets.Select(ticket => ticket.Code)), tickets, Draw);

    internal static void Draw(Canvas canvas, PartTicket ticket)
    {
        TicketFrame.Fill(canvas, ticket.ShopName, ticket.Holds,
        [
            new TicketBlock("Part", ticket.Part, 44, 12, 2),
            new TicketBlock("", ticket.Instruction, 15, 9, 2, Ruled: true),
            new TicketBlock("Owner", ticket.Owner, 28, 11, 2),
            new TicketBlock("Tag", ticket.TagId, 24, 11),
            new TicketBlock("", ticket.Species, 15, 9),
        ]);
        TicketFrame.Foot(canvas, ticket.Code, ticket.JobNumber, "Came in", ticket.DateIn);
    }
}
