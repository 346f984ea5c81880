using ProcessorDesk.Paper.Drawing;

namespace ProcessorDesk.Paper;

/// <summary>The ticket that hangs on a carcass, 4 × 6 in. Everything as printed.</summary>
/// <param name="ShopName">The shop's name.</param>
/// <param name="Owner">The owner's name in full.</param>
/// <param name="Species">"White-tail deer".</param>
/// <param name="Sex">"Buck"; may be empty.</param>
/// <param name="TagId">The official tag; "none yet" where there is none.</param>
/// <param name="JobNumber">"1042".</param>
/// <param name="Position">Which of several, or which share: "Animal 1 of 2"; may be empty.</param>
/// <param name="DateIn">The day it came in.</param>
/// <param name="ArrivalWeight">"128.5 lb".</param>
/// <param name="ArrivalState">"Field-dressed".</param>
/// <param name="Code">The ticket code, which the QR symbol holds alone.</param>
/// <param name="Holds">Open holds.</param>
public sealed record CarcassTicket(
    string ShopName,
    string Owner,
    string Species,
    string Sex,
    string TagId,
    string JobNumber,
    string Position,
    DateOnly DateIn,
    string ArrivalWeight,
    string ArrivalState,
    string Code,
    IReadOnlyList<HoldNotice> Holds)
{
    /// <summary>One PDF, one page a ticket.</summary>
    public static byte[] Draw(IReadOnlyList<CarcassTicket> tickets) =>
        TicketFrame.Draw("Carcass ticket " + string.Join(", ", tickets.Select(ticket => ticket.Code)), tickets, Draw);

    internal static void Draw(Canvas canvas, CarcassTicket ticket)
    {
        TicketFrame.Fill(canvas, ticket.ShopName, ticket.Holds,
        [
            new TicketBlock("Owner", ticket.Owner, 32, 11, 2),
            new TicketBlock("Tag", ticket.TagId, 26, 11, Ruled: true),
            new TicketBlock("", ticket.Sex.Length > 0 ? $"{ticket.Species}, {ticket.Sex}" : ticket.Species, 17, 10),
            new TicketBlock("", ticket.Position, 13, 9),
            new TicketBlock(ticket.ArrivalState, ticket.ArrivalWeight, 44, 14),
        ]);
        TicketFrame.Foot(canvas, ticket.Code, ticket.JobNumber, "Came in", ticket.DateIn);
    }
}
