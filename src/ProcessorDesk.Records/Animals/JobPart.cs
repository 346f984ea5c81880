using ProcessorDesk.Trade.Tickets;

namespace ProcessorDesk.Records;

/// <summary>A part that goes back with a job.</summary>
/// <param name="Tag">Of its animal.</param>
/// <param name="HandOverId">The hand-over it left with; null while it is here, and where it left alone.</param>
public sealed record JobPart(int Id, PartKind Kind, string? Note, string? Tag, TicketCode? Ticket, DateTime? GivenAt, string? GivenTo, int? HandOverId)
{
    /// <summary>"Antlers, tag TW-1001".</summary>
    public string InWords => Tag is null ? Wording.Of(Kind) : $"{Wording.Of(Kind)}, tag {Tag}";
}
