using ProcessorDesk.Paper.Drawing;

namespace ProcessorDesk.Paper;

/// <summary>The ticket of a batch, 4 × 6 in, that goes with it from the mixer through smokehouse and cooler. Everything as printed.</summary>
/// <param name="ShopName">The shop's name.</param>
/// <param name="BatchNumber">"31".</param>
/// <param name="Product">"Smoked ring sausage".</param>
/// <param name="Owners">Whose meat it is, each name in full; at least one.</param>
/// <param name="IsPooled">Several owners' meat together.</param>
/// <param name="NoPork">Nothing from the pig may touch this batch.</param>
/// <param name="Green">All loads together as planned: "37.14 lb".</param>
/// <param name="Planned">The day it was planned.</param>
/// <param name="Code">The ticket code, which the QR symbol holds alone.</param>
/// <param name="Holds">Open holds on the batch or on any meat in it.</param>
public sealed record BatchTicket(
    string ShopName,
    string BatchNumber,
    string Product,
    IReadOnlyList<string> Owners,
    bool IsPooled,
    bool NoPork,
    string Green,
    DateOnly Planned,
    string Code,
    IReadOnlyList<HoldNotice> Holds)
{
    /// <summary>One PDF, one page a ticket.</summary>
    public static byte[] Draw(IReadOnlyList<BatchTicket> tickets) =>
        TicketFrame.Draw("Batch ticket " + string.Join(", ", tickets.Select(ticket => ticket.Code)), tickets, Draw);

    private static void Draw(Canvas canvas, BatchTicket ticket)
    {
        TicketFrame.Fill(canvas, ticket.ShopName, ticket.Holds,
        [
            new TicketBlock("Batch", ticket.BatchNumber, 90, 26),
            new TicketBlock("", ticket.Product, 26, 10, 2, Ruled: true),
            new TicketBlock(ticket.IsPooled ? "Pooled" : "Own meat of", string.Join(", ", ticket.Owners), 22, 8, 4),
            new TicketBlock("Green", ticket.Green + (ticket.NoPork ? ". NO PORK" : ""), 20, 9),
        ]);
        TicketFrame.Foot(canvas, ticket.Code, ticket.BatchNumber, "Planned", ticket.Planned, "Batch");
    }
}
