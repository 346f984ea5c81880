using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;

namespace ProcessorDesk.Web.Pages.Find;

/// <summary>A weight of a job on its hub, struck ones too, and the box it is of.</summary>
/// <param name="Ticket">Number of the lug's or the box's ticket; null where none is out.</param>
/// <param name="Box">Null for what is not in a box, and for a box that was unpacked.</param>
public sealed record HubWeighIn(WeighedNet Net, bool Stands, long? Ticket, HubBox? Box)
{
    /// <summary>In the order they were weighed; one query.</summary>
    public static IReadOnlyList<HubWeighIn> Of(RecordsContext records, int jobId) =>
    [
        .. (from weighIn in records.WeighIns.AsNoTracking().WeighedFor(records, jobId)
            join packed in records.Boxes.Where(box => box.UnpackedAt == null) on weighIn.Id equals packed.WeighedId into boxes
            from box in boxes.DefaultIfEmpty()
            orderby weighIn.At, weighIn.Id
            select new
            {
                weighIn.Kind,
                weighIn.AnimalId,
                weighIn.JobId,
                weighIn.Net,
                Stands = weighIn.Strike == null,
                Lug = records.Tickets.Where(ticket => ticket.Kind == TicketKind.Filling && ticket.TargetId == weighIn.FillingId && ticket.VoidedAt == null)
                    .Select(ticket => (long?)ticket.Number).FirstOrDefault(),
                BoxTicket = records.Tickets.Where(ticket => ticket.Kind == TicketKind.Box && ticket.TargetId == box.Id && ticket.VoidedAt == null)
                    .Select(ticket => (long?)ticket.Number).FirstOrDefault(),
                Box = box,
                To = records.HandOvers.Where(one => one.Id == box.HandOverId).Select(one => one.To).FirstOrDefault(),
                LeftAt = records.HandOvers.Where(one => one.Id == box.HandOverId).Select(one => (DateTime?)one.At).FirstOrDefault(),
                Contents = records.BoxContents.Where(content => content.BoxId == box.Id).ToList(),
            })
            .AsSingleQuery()
            .AsEnumerable()
            .Select(one => new HubWeighIn(
                new WeighedNet(one.Kind, one.AnimalId, one.JobId, one.Net),
                one.Stands,
                one.Lug ?? one.BoxTicket,
                one.Box is null ? null : new HubBox(one.Box, one.Net, [.. one.Contents.OrderBy(content => content.Position)], one.To, one.LeftAt)))
    ];
}
