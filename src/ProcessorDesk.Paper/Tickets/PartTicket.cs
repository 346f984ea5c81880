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

    private static void Draw(TicketFrame frame, PartTicket ticket)
    {
        frame.Value("Part", ticket.Part, 40, 16, 2);
        frame.Value("", ticket.Instruction, 14, 9, 2);
        frame.Rule();
        frame.Value("Owner", ticket.Owner, 22, 12, 2);
        frame.Value("Tag", ticket.TagId, 22, 11);
        frame.Holds(ticket.Holds);
        frame.Foot(ticket.Code, [new Fact("Job", ticket.JobNumber), new Fact(PrintedDate.Of(ticket.DateIn), ticket.Species), new Fact("", ticket.ShopName)]);
    }
}
