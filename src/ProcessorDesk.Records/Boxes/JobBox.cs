using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Tickets;

namespace ProcessorDesk.Records;

/// <summary>A box of a job with what became of it.</summary>
/// <param name="Ticket">Its number on the ticket; null where the ticket was voided with the box.</param>
/// <param name="UnpackedAt">When it was taken apart again; null where it was not.</param>
/// <param name="LeftAt">When it was handed over; null while it is here.</param>
public sealed record JobBox(
    int Id, int Number, Weight Net, string? Place, DateTime PackedAt, DateTime? UnpackedAt, string? UnpackedBecause, int? HandOverId, DateTime? LeftAt, TicketCode? Ticket,
    IReadOnlyList<JobBox.Packs> Contents)
{
    public bool IsHere => UnpackedAt is null && HandOverId is null;

    public int PackCount => Contents.Sum(content => content.Count);

    /// <summary>"Ring sausage, 12 packs; cuts, 4 packs".</summary>
    public string InWords => string.Join("; ", Contents.Select(content => $"{content.Name}, {content.InWords}"));

    /// <summary>It was packed and not taken apart at a moment, wherever it was.</summary>
    public bool StoodAt(DateTime moment) => PackedAt <= moment && !(UnpackedAt <= moment);

    public bool WasHereAt(DateTime moment) => StoodAt(moment) && !(LeftAt <= moment);

    /// <param name="AllotmentId">Of a product; null for cuts.</param>
    public sealed record Packs(int? AllotmentId, string Name, int Count)
    {
        public string InWords => Count == 1 ? "1 pack" : $"{Count} packs";
    }
}
