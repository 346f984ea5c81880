using ProcessorDesk.Paper.Drawing;

namespace ProcessorDesk.Paper;

/// <summary>The ticket of a lug filling, 4 × 6 in. Everything as printed.</summary>
/// <param name="ShopName">The shop's name.</param>
/// <param name="LugNumber">"14".</param>
/// <param name="Owner">The owner's name in full.</param>
/// <param name="Tags">The official tags of the animals in it.</param>
/// <param name="JobNumber">"1042".</param>
/// <param name="Contents">"Lean trim"; may be empty.</param>
/// <param name="Opened">The day the filling was opened.</param>
/// <param name="Code">The ticket code, which the QR symbol holds alone.</param>
/// <param name="Holds">Open holds on any animal in it.</param>
public sealed record LugTicket(
    string ShopName,
    string LugNumber,
    string Owner,
    IReadOnlyList<string> Tags,
    string JobNumber,
    string Contents,
    DateOnly Opened,
    string Code,
    IReadOnlyList<HoldNotice> Holds)
{
    /// <summary>One PDF, one page a ticket.</summary>
    public static byte[] Draw(IReadOnlyList<LugTicket> tickets) =>
        TicketFrame.Draw("Lug ticket " + string.Join(", ", tickets.Select(ticket => ticket.Code)), tickets, Draw);

    private static void Draw(Canvas canvas, LugTicket ticket)
    {
        TicketFrame.Fill(canvas, ticket.ShopName, ticket.Holds,
        [
            new TicketBlock("Lug", ticket.LugNumber, 120, 30),
            new TicketBlock("", ticket.Contents, 17, 9, Ruled: true),
            new TicketBlock("Owner", ticket.Owner, 28, 11, 2),
            new TicketBlock(ticket.Tags.Count == 1 ? "Tag" : "Tags", string.Join(", ", ticket.Tags), 22, 8, 3),
        ]);
        TicketFrame.Foot(canvas, ticket.Code, ticket.JobNumber, "Opened", ticket.Opened);
    }
}
