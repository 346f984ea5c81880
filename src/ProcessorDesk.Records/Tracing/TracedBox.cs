using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Tickets;

namespace ProcessorDesk.Records;

/// <summary>A box of a trace, and where it is.</summary>
/// <param name="Ticket">Null where it was voided with the box.</param>
/// <param name="LeftAt">When it was handed over; null while it is here.</param>
public sealed record TracedBox(
    int Id, int Number, int JobId, Weight Net, string? Place, DateTime PackedAt, DateTime? UnpackedAt, string? UnpackedBecause, DateTime? LeftAt, string? LeftWith,
    TicketCode? Ticket, IReadOnlyList<TracedPacks> Contents)
{
    public bool IsHere => UnpackedAt is null && LeftAt is null;
}

/// <param name="AllotmentId">Of a product; null for cuts.</param>
public sealed record TracedPacks(int? AllotmentId, string Name, int Count);
